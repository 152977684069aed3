import { useState } from 'preact/hooks';
import { measuresWords as words } from '#words/garment/garment-measures-words.ts';
import { tapeStep } from '../../../calculation/bench.ts';
import { later } from '../../../controls/parts.tsx';
import { Rich } from '../../../controls/rich.tsx';
import { previewOf } from '../../../garment/actions/typing.ts';
import type { Saying } from '../../../garment/actions/works.ts';
import { homeOf } from '../../../garment/record/home.ts';
import { isBodyMeasure } from '../../../sewing/sources/body-measures.ts';
import { BeforeAfter } from '../parts/before-after.tsx';
import { MeasureEntry } from '../parts/measure-entry.tsx';
import { quantityName } from '../said/names.ts';
import type { Do } from '../works/use-typing.ts';
import { measuresIn } from './add-quantity.ts';
import { MeasureDeeds } from './measure-deeds.tsx';
import { MeasureName } from './measure-name.tsx';
import { MeasureTyping } from './measure-typing.tsx';
import type { MeasureDeed, MeasuresProps } from './measures-props.ts';
import { quantityNumber, quantitySource } from './quantity-words.ts';

const Choose = later(() => import('./measure-choose.tsx').then((part) => part.MeasureChoose));
const Guide = later(() => import('./measure-guide.tsx').then((part) => part.MeasureGuide));
const Odd = later(() => import('./odd-asked.tsx').then((part) => part.OddAsked));

interface Props extends MeasuresProps {
  id: string;
  first: MeasureDeed;
  onBack: () => void;
}

/** One number of the garment: what it is, where it is from, and what can be done with it. */
export function MeasureOne({ id, first, onBack, ...props }: Props) {
  const { state, bench, onAct } = props;
  const [deed, setDeed] = useState<MeasureDeed>(first);
  const quantity = state.answer.sound.quantities.get(id);
  if (!quantity) return null;
  const answer = previewOf(state);
  const onDo: Do = (one) => onAct({ ...one, now: Date.now() } as Parameters<typeof onAct>[0]);
  const look = () => setDeed('look');
  const name = quantityName({ answer }, id);
  const { measure } = quantity;
  const say = (set: Saying['set']) => {
    onDo({ do: 'say', of: 'quantities', ids: [id], set });
    look();
  };
  if (deed === 'which') {
    const isIt = (which: string) => say({ measure: which, body: true });
    return <Choose there={measuresIn(state)} which onChoose={isIt} onLeave={look} />;
  }
  return (
    <>
      <div class="reading one">
        <h1>{name}</h1>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
        <section class="scroll" tabIndex={0} aria-label={name}>
          <p class="measure">
            <Rich text={quantityNumber(quantity, answer.values.get(homeOf(id)), bench)} />
          </p>
          <p class="said from">
            <Rich text={quantitySource({ answer, bench }, id, quantity)} />
            {quantity.lay !== undefined && <props.Laid {...{ state, bench, lay: quantity.lay }} />}
          </p>
          <BeforeAfter state={state} work={id} bench={bench} />
          {deed === 'look' && measure !== undefined && (
            <Odd {...{ answer, id, bench }} onRight={() => say({ final: true })} />
          )}
          {deed !== 'sum' && isBodyMeasure(measure) && <Guide id={measure} />}
        </section>
      </div>
      {deed === 'look' && <MeasureDeeds {...props} {...{ id, name, onBack }} onDeed={setDeed} />}
      {(deed === 'type' || deed === 'sum') && (
        <MeasureTyping {...{ state, id, bench, onDo }} sum={deed === 'sum'} onDone={look} />
      )}
      {deed === 'measure' && (
        <MeasureEntry
          label={words.measuring(name)}
          deed={words.keep}
          kind={quantity.kind === 'count' ? 'count' : 'length'}
          bench={bench}
          onKeep={(measured) => {
            const tape = tapeStep(bench);
            onDo({ do: 'measure', quantity: id, measured, tape, id: crypto.randomUUID() });
            look();
          }}
          onLeave={look}
        />
      )}
      {deed === 'rename' && (
        <MeasureName
          first={quantity.name}
          deed={words.rename}
          kinds={false}
          onName={(to) => say({ name: to })}
          onLeave={look}
        />
      )}
    </>
  );
}
