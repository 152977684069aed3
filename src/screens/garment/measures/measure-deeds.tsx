import { useState } from 'preact/hooks';
import { measuresWords as words } from '#words/garment/garment-measures-words.ts';
import { NotDone } from '../../../controls/not-done.tsx';
import type { Action } from '../../../garment/actions/act.ts';
import { unmake } from '../../../garment/actions/make.ts';
import { remove, takersOf } from '../../../garment/actions/remove.ts';
import { homeOf } from '../../../garment/record/home.ts';
import { Deed } from '../parts/deed.tsx';
import { isTaken } from '../said/quantity-text.ts';
import { refusedSaid, slotName } from '../said/refused-words.ts';
import type { MeasureDeed, MeasuresProps } from './measures-props.ts';
import { measureOf, quantityNumber } from './quantity-words.ts';

interface Props extends MeasuresProps {
  id: string;
  /** What the number is called. */
  name: string;
  onDeed: (deed: MeasureDeed) => void;
  onBack: () => void;
}

/** All that can be done with a number of the garment, under the thumb: what is mostly done stays in sight. */
export function MeasureDeeds(props: Props) {
  const { state, id, name, onAct, onRead, onDeed, onBack } = props;
  const [refused, setRefused] = useState<string | undefined>();
  const { answer } = state;
  const quantity = answer.sound.quantities.get(id);
  if (!quantity) return null;
  const fact = measureOf(answer, id);
  const ofLength = quantity.kind === 'length';
  // What a lay is long is found by laying, again and again.
  const laid = quantity.lay !== undefined;
  const measures = quantity.kind !== 'run' && !laid && !isTaken(quantity.parts);
  const turn = (key: 'final' | 'body') => {
    const set = { [key]: quantity[key] ? undefined : (true as const) };
    onAct({ do: 'say', of: 'quantities', ids: [id], set, now: Date.now() });
  };
  return (
    <div class="beneath">
      <div class="deeds">
        {measures && (
          <Deed
            words={fact === undefined ? words.measure : words.measureAgain}
            onPress={() => onDeed('measure')}
          />
        )}
        {measures && ofLength && onRead && <Deed words={words.readIt} onPress={() => onRead(id)} />}
        {fact !== undefined && <Forget {...props} fact={fact} />}
        <Deed words={words.rename} onPress={() => onDeed('rename')} />
        <Deed
          words={words.isFinal}
          hint={words.finalHint}
          on={quantity.final === true}
          onPress={() => turn('final')}
        />
        <Deed
          words={words.isBody}
          hint={words.bodyHint}
          on={quantity.body === true}
          onPress={() => turn('body')}
        />
        {ofLength && !laid && (
          <Deed words={words.which} hint={words.whichHint} onPress={() => onDeed('which')} />
        )}
        <TakeOff {...props} onRefused={setRefused} />
      </div>
      <NotDone said={refused} />
      <nav class="actions" aria-label={name}>
        <button type="button" onClick={onBack}>
          {words.done}
        </button>
        {fact === undefined && !laid && (
          <button type="button" class="main" onClick={() => onDeed('type')}>
            {words.type}
          </button>
        )}
      </nav>
    </div>
  );
}

/** Takes the measure back, with what it is then. */
function Forget({ state, id, bench, fact, onAct }: Props & { fact: string }) {
  const { answer } = unmake(state, fact, state.record.changed).state;
  const quantity = answer.sound.quantities.get(id);
  const then = answer.values.get(homeOf(id));
  const action: Action = { do: 'unmake', fact, now: Date.now() };
  const said =
    quantity && then?.ok ? words.forget(quantityNumber(quantity, then, bench)) : words.forgetBare;
  return <Deed words={said} onPress={() => onAct(action)} />;
}

/** Takes it off, where nothing takes it; says who does. */
function TakeOff(props: Props & { onRefused: (why: string | undefined) => void }) {
  const { state, id, bench, onAct, onBack, onRefused } = props;
  const telling = { answer: state.answer, bench };
  const names = [...new Set(takersOf(state, id).map((slot) => slotName(telling, slot)))];
  const press = () => {
    const now = Date.now();
    const { refused } = remove(state, id, now);
    onRefused(refused && refusedSaid(telling, refused));
    if (refused) return;
    onAct({ do: 'remove', quantity: id, now });
    onBack();
  };
  return (
    <>
      {names.length > 0 && <p class="said">{words.takenBy(names)}</p>}
      <Deed words={words.remove} onPress={press} />
    </>
  );
}
