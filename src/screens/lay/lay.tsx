import type { ComponentChildren, FunctionComponent } from 'preact';
import { useState } from 'preact/hooks';
import { layWords as words } from '#words/garment/garment-lay-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { adopt } from '../../controls/adopt.ts';
import { NotDone } from '../../controls/not-done.tsx';
import css from './lay.css?inline';
import type { DrawingProps } from './lay-drawing.tsx';
import type { Fall, FoundProps, LaySums } from './lay-found.tsx';
import type { PlacesProps } from './lay-places.tsx';
import { type LayShown, movedOnCloth, type Place } from './lay-shown.ts';

adopt(css);

export interface LayProps {
  bench: Bench;
  /** Why the last thing wasn't done, in words. */
  said: string | undefined;
  /** Where the disk did not take it: tries again now. */
  onAgain?: (() => void) | undefined;
  /** All that is laid on, by id and name, and which of them this is. */
  cloths: readonly (readonly [id: string, name: string])[];
  cloth: string;
  /** What is in the way, or to be known. */
  warnings: ComponentChildren;
  lay: LayShown | undefined;
  /** What it takes, what to buy, how well it uses the cloth; undefined where no length may be told. */
  sums: LaySums | undefined;
  looking: boolean;
  /** How the length fell; the last is the best. */
  fell: readonly Fall[];
  canLook: boolean;
  /** Fetched when they are wanted. */
  Drawing: FunctionComponent<DrawingProps>;
  Found: FunctionComponent<FoundProps>;
  Places: FunctionComponent<PlacesProps>;
  /** What can be said of the cloth, with the way back; undefined where there is none. */
  ofCloth: ((onBack: () => void) => ComponentChildren) | undefined;
  /** The lay on paper; nothing while there is none whose length may be told. */
  ofPaper: (onBack: () => void) => ComponentChildren;
  /** What other cloth would take. */
  ofOthers: (onBack: () => void) => ComponentChildren;
  onCloth: (id: string) => void;
  onStart: () => void;
  onStop: () => void;
  /** A piece is put by so much elsewhere, in mm, and stays. */
  onPut: (key: string, by: Place) => void;
  onLetGo: (key: string) => void;
  onDone: () => void;
}

/** The pieces of a garment on one of its cloths: found, looked at, and followed place by place. */
export function LayScreen(props: LayProps) {
  const { bench, lay, Drawing, Places, onPut } = props;
  const [wanted, setOver] = useState<Over>();
  const [current, setCurrent] = useState<string>();
  // What it was of may be gone since: another tab took it away.
  const gone = (wanted === 'places' && !lay) || (wanted === 'cloth' && !props.ofCloth);
  const over = gone ? undefined : wanted;
  const back = () => setOver(undefined);
  // Nothing may move under the hand, and one search at a time.
  const open = (what: Over) => {
    if (what !== 'cloth') props.onStop();
    setOver(what);
  };
  const pick = (key: string) => {
    setCurrent(key);
    open('places');
  };
  const put = (key: string, by: Place) => {
    const piece = lay?.pieces.find((one) => one.key === key);
    if (!lay || !piece) return;
    // Elsewhere it may be another in the list.
    setCurrent(key);
    onPut(key, movedOnCloth(piece, lay, by));
  };
  if (over === 'cloth' && props.ofCloth) return <>{props.ofCloth(back)}</>;
  const paper = over === 'paper' && props.ofPaper(back);
  if (paper) return <>{paper}</>;
  return (
    <div class="lay" data-hand={bench.hand}>
      <header>
        <h1>{words.title}</h1>
        <Cloths {...props} />
      </header>
      <NotDone as="lay-said" said={props.said} onAgain={props.onAgain} />
      <div class="lay-warnings" role="status">
        {props.warnings}
      </div>
      {lay && over !== 'others' && (
        <Drawing
          lay={lay}
          bench={bench}
          current={over === 'places' ? (current ?? lay.pieces[0]?.key) : undefined}
          onPick={pick}
          onPut={put}
          onPaper={props.sums && (() => open('paper'))}
        />
      )}
      {over === 'places' && lay && (
        <Places {...props} {...{ lay, current }} onPick={pick} onPut={put} onBack={back} />
      )}
      {over === 'others' && props.ofOthers(back)}
      {(over === undefined || over === 'paper') && <Search {...props} onOver={open} />}
    </div>
  );
}

function Cloths({ cloths, cloth, onCloth }: LayProps) {
  if (cloths.length < 2) return <span>{cloths[0]?.[1]}</span>;
  return (
    <select
      aria-label={words.cloths}
      value={cloth}
      onChange={({ currentTarget }) => onCloth(currentTarget.value)}
    >
      {cloths.map(([id, name]) => (
        <option key={id} value={id}>
          {name}
        </option>
      ))}
    </select>
  );
}

/** What is open over the search. */
type Over = 'cloth' | 'places' | 'others' | 'paper';
type SearchProps = LayProps & { onOver: (over: Over) => void };

/** What was found so far, and the keys of the search. */
function Search(props: SearchProps) {
  const { bench, lay, sums, looking, fell, canLook, Found } = props;
  const { onOver, onStart, onStop, onDone } = props;
  const none = looking ? words.looking : canLook ? words.notYet : '';
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <section class="lay-found" tabIndex={0} aria-label={words.found} aria-live="polite">
        {lay ? <Found {...{ bench, sums, fell }} /> : <p class="sums">{none}</p>}
      </section>
      <nav class="actions" aria-label={words.title}>
        <button type="button" onClick={onDone}>
          {words.done}
        </button>
        <button type="button" disabled={!props.ofCloth} onClick={() => onOver('cloth')}>
          {words.cloth}
        </button>
        <button type="button" disabled={!canLook} onClick={() => onOver('others')}>
          {words.others}
        </button>
        <button type="button" disabled={!lay} onClick={() => onOver('places')}>
          {words.places}
        </button>
        {looking ? (
          <button type="button" class="main" onClick={onStop}>
            {words.stop}
          </button>
        ) : (
          <button type="button" class="main" disabled={!canLook} onClick={onStart}>
            {lay ? words.goOn : words.start}
          </button>
        )}
      </nav>
    </>
  );
}
