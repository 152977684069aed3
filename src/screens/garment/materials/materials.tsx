import type { FunctionComponent } from 'preact';
import { useState } from 'preact/hooks';
import { garmentMaterialsWords as words } from '#words/garment/garment-materials-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { adopt } from '../../../controls/adopt.ts';
import { NotDone } from '../../../controls/not-done.tsx';
import { Rich } from '../../../controls/rich.tsx';
import type { Action } from '../../../garment/actions/act.ts';
import type { MaterialSaying } from '../../../garment/actions/material.ts';
import type { State } from '../../../garment/actions/state.ts';
import {
  type MaterialNow,
  type Materials,
  materialsOf,
} from '../../../garment/materials/materials.ts';
import css from '../measures/measures.css?inline';
import { NameEntry } from '../parts/name-entry.tsx';
import { type Telling, workTroubleSaid } from '../said/told-words.ts';
import workCss from '../works/garment-work.css?inline';
import type { MaterialProps } from './material-one.tsx';
import materialsCss from './materials.css?inline';
import { materialAmount, materialName, materialNote } from './materials-said.ts';
import { moneyText } from './materials-text.ts';

adopt(workCss);
adopt(css);
adopt(materialsCss);

interface Props {
  state: State;
  bench: Bench;
  /** Why the last thing wasn't done, in words. */
  said: string | undefined;
  /** Where the disk did not take it: tries again now. */
  onAgain?: (() => void) | undefined;
  /** One of them, opened: fetched when it is wanted. */
  One: FunctionComponent<MaterialProps>;
  onAct: (action: Action) => void;
  /** To the lay of a cloth. */
  onLay: (id: string) => void;
  onDone: () => void;
}

/** What the maker can add. */
const ADDED = ['cloth', 'interfacing', 'tape', 'other'] as const;

/** Everything to have at hand for a garment, to be ticked when it is there. */
export function MaterialsScreen(props: Props) {
  const { state, bench, said, onAgain, One, onAct, onLay, onDone } = props;
  const [over, setOver] = useState<{ one: string } | 'add'>();
  const telling = { answer: state.answer, bench };
  const materials = materialsOf(state.record, state.answer);
  const open = typeof over === 'object' && materials.all.find(({ id }) => id === over.one);
  const back = () => setOver(undefined);
  const say = (saying: MaterialSaying) => onAct({ do: 'material', ...saying, now: Date.now() });
  const add = (name: string, kind: (typeof ADDED)[number] = 'cloth') => {
    const ranks = materials.all.map((one) => one.said.rank ?? 0);
    const id = crypto.randomUUID();
    const one = kind === 'other' && { more: 1 };
    say({ id, add: { name, kind, rank: Math.max(0, ...ranks) + 1, ...one } });
    setOver({ one: id });
  };
  return (
    <div class="bench garment-work measures materials" data-hand={bench.hand}>
      <NotDone said={said} onAgain={onAgain} />
      {open ? (
        <One
          key={open.id}
          one={open}
          cloths={materials.all.filter(({ kind }) => kind === 'cloth')}
          telling={telling}
          onSay={say}
          onLay={onLay}
          onBack={back}
        />
      ) : (
        <List
          {...{ materials, telling }}
          name={state.record.name}
          onSay={say}
          onOpen={(one) => setOver({ one })}
        />
      )}
      {over === 'add' && (
        <NameEntry
          first=""
          deed={words.addDo}
          hint={words.addHint}
          kinds={ADDED.map((kind) => [kind, words.kinds[kind]] as const)}
          onName={add}
          onLeave={back}
        />
      )}
      {!open && over !== 'add' && (
        <nav class="actions" aria-label={words.title}>
          <button type="button" onClick={onDone}>
            {words.done}
          </button>
          <button type="button" onClick={() => setOver('add')}>
            {words.add}
          </button>
        </nav>
      )}
    </div>
  );
}

interface ListProps {
  materials: Materials;
  telling: Telling;
  name: string;
  onSay: (saying: MaterialSaying) => void;
  onOpen: (id: string) => void;
}

function List({ materials, telling, name, onSay, onOpen }: ListProps) {
  const { all, unknown, unsound } = materials;
  return (
    <div class="reading">
      <header>
        <h1>{words.title}</h1>
        <span>{name}</span>
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <section class="scroll" tabIndex={0} aria-label={words.title}>
        {unknown.map((one) => (
          <p class="said warning" key={one.work}>
            {workTroubleSaid(telling, one)}
          </p>
        ))}
        {unsound.length > 0 && <p class="said warning">{words.unsound(unsound.length)}</p>}
        {all.length === 0 && <p class="said">{words.none}</p>}
        <ul class="numbers" aria-label={words.list}>
          {all.map((one) => (
            <li key={one.id}>
              <Tick one={one} telling={telling} onSay={onSay} />
              <button type="button" class="number" onClick={() => onOpen(one.id)}>
                <span>
                  {materialName(telling, one)}
                  <small>
                    <Rich text={materialNote(telling, one)} />
                  </small>
                </span>
                <b>
                  <Rich text={materialAmount(telling, one)} />
                </b>
              </button>
            </li>
          ))}
        </ul>
        <Total {...materials} telling={telling} />
      </section>
    </div>
  );
}

interface TickProps extends Pick<ListProps, 'telling' | 'onSay'> {
  one: MaterialNow;
}

/** Ticked, all that is to be bought of it is there; where it isn't known how much, there is nothing to tick. */
function Tick({ one, telling, onSay }: TickProps) {
  const { id, ticked, buy, unsure } = one;
  const there = ticked ? undefined : buy;
  return (
    <input
      type="checkbox"
      class="tick"
      checked={ticked}
      aria-label={words.isThere(materialName(telling, one))}
      disabled={unsure.length > 0 || buy === 0}
      onChange={() => onSay({ id, set: { there } })}
    />
  );
}

/** What it all costs; nothing is said of money where no price is typed. */
function Total({ all, cents, left, without, telling }: Materials & { telling: Telling }) {
  if (all.every((one) => one.cents === undefined)) return null;
  const money = (of: number) => moneyText(of, telling.bench);
  return (
    <p class="said total">
      <b>{words.total(money(cents))}</b>
      {' · '}
      {words.line([words.left(money(left)), without > 0 ? words.without(without) : ''])}
    </p>
  );
}
