import { useState } from 'preact/hooks';
import { measuresWords as words } from '#words/garment/garment-measures-words.ts';
import { adopt } from '../../../controls/adopt.ts';
import { NotDone } from '../../../controls/not-done.tsx';
import { later } from '../../../controls/parts.tsx';
import { Rich } from '../../../controls/rich.tsx';
import { pendingOf } from '../../../garment/actions/typing.ts';
import { homeOf } from '../../../garment/record/home.ts';
import { quantityName } from '../said/names.ts';
import workCss from '../works/garment-work.css?inline';
import { addQuantity, measuresIn } from './add-quantity.ts';
import { type MeasureKind, MeasureName } from './measure-name.tsx';
import { MeasureOne } from './measure-one.tsx';
import css from './measures.css?inline';
import type { MeasureDeed, MeasuresProps } from './measures-props.ts';
import { quantityNumber, quantitySource } from './quantity-words.ts';

adopt(workCss);
adopt(css);

/** What is open over the list. */
type Over = { one: string; deed: MeasureDeed } | { add: 'number' | 'sum' | 'body' } | undefined;

const Choose = later(() => import('./measure-choose.tsx').then((part) => part.MeasureChoose));

/** The numbers of a garment itself: where each is from, and all that is done with them. */
export function Measures(props: MeasuresProps) {
  const { state, bench, onAct, onDone, said, onAgain } = props;
  const [over, setOver] = useState<Over>(() => typedNow(props));
  const back = () => setOver(undefined);
  const body = over && 'add' in over && over.add === 'body';
  const choose = (measure: string, names: readonly string[]) => {
    const ids = names.map((name, i) => {
      const more = { body: true, measure } as const;
      return addQuantity({ state, bench, onAct }, { name, kind: 'length', after: i, more });
    });
    setOver(ids[0] === undefined ? undefined : { one: ids[0], deed: 'type' });
  };
  // One that was taken off, here or in another tab, leaves the list.
  const isOpen = over && 'one' in over && state.answer.sound.quantities.has(over.one);
  return (
    <div class="bench garment-work measures" data-hand={bench.hand}>
      <NotDone said={said} onAgain={onAgain} />
      {body ? (
        <Choose there={measuresIn(state)} onChoose={choose} onLeave={back} />
      ) : isOpen ? (
        <MeasureOne {...props} key={over.one} id={over.one} first={over.deed} onBack={back} />
      ) : (
        <List {...props} onOpen={(one) => setOver({ one, deed: 'look' })} />
      )}
      {over && 'add' in over && over.add !== 'body' && (
        <Add {...props} what={over.add} onAdded={setOver} onLeave={back} />
      )}
      {!isOpen && !(over && 'add' in over) && (
        <nav class="actions" aria-label={words.title}>
          <button type="button" onClick={onDone}>
            {words.done}
          </button>
          <button type="button" onClick={() => setOver({ add: 'body' })}>
            {words.addBody}
          </button>
          <button type="button" onClick={() => setOver({ add: 'number' })}>
            {words.add}
          </button>
          <button type="button" onClick={() => setOver({ add: 'sum' })}>
            {words.addSum}
          </button>
        </nav>
      )}
    </div>
  );
}

/** A number that was being typed when the page was left goes on being typed. */
function typedNow({ state, first }: MeasuresProps): Over {
  const place = pendingOf(state.record)?.place;
  if (place && 'quantity' in place) return { one: place.quantity, deed: 'type' };
  return first === undefined ? undefined : { one: first, deed: 'type' };
}

function List({ state, bench, onOpen, Laid }: MeasuresProps & { onOpen: (id: string) => void }) {
  const { answer, record } = state;
  const all = [...answer.sound.quantities];
  return (
    <div class="reading">
      <header>
        <h1>{words.title}</h1>
        <span>{record.name}</span>
      </header>
      <ul class="scroll numbers" aria-label={words.list}>
        {all.length === 0 && <li class="said">{words.none}</li>}
        {all.map(([id, quantity]) => (
          <li key={id}>
            <button type="button" class="number" onClick={() => onOpen(id)}>
              <span>
                {quantityName({ answer }, id)}
                <small>
                  <Rich text={quantitySource({ answer, bench }, id, quantity)} />
                  {quantity.lay !== undefined && <Laid {...{ state, bench, lay: quantity.lay }} />}
                </small>
              </span>
              <b>
                <Rich text={quantityNumber(quantity, answer.values.get(homeOf(id)), bench)} />
              </b>
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

interface AddProps extends MeasuresProps {
  what: 'number' | 'sum';
  onAdded: (over: Over) => void;
  onLeave: () => void;
}

/** A new number, still to be typed; or a sum, to be taken together. */
function Add({ what, onAdded, onLeave, ...props }: AddProps) {
  const add = (name: string, kind: MeasureKind) => {
    const id = addQuantity(props, { name, kind });
    onAdded({ one: id, deed: what === 'sum' ? 'sum' : 'type' });
  };
  return (
    <MeasureName
      first=""
      deed={words.make}
      kinds={what === 'number'}
      onName={add}
      onLeave={onLeave}
    />
  );
}
