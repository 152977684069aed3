import { useEffect, useRef } from 'preact/hooks';
import { exampleWords } from '#words/garment/example-words.ts';
import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import { NotDone } from '../../../controls/not-done.tsx';
import { steady } from '../../../controls/steady.tsx';
import type { Dimensioned } from '../../../drawing/dimension.ts';
import type { Refused } from '../../../garment/actions/state.ts';
import { laysTaken } from '../../../garment/materials/lays-taken.ts';
import { isUntouched } from '../../../garment/work-out/untouched.ts';
import { BeforeAfter } from '../parts/before-after.tsx';
import { numberName, workName } from '../said/names.ts';
import { refusedSaid, slotName } from '../said/refused-words.ts';
import { DrawingRoom } from './drawing-room.tsx';
import { DrawnWork } from './drawn-work.tsx';
import { endsSaid } from './ends-said.ts';
import type { SaysStale } from './says-stale.ts';
import type { WorkDrawn, WorkInHand } from './use-work.ts';
import { WorkAnswer } from './work-answer.tsx';
import { GivesList, Row } from './work-gives.tsx';
import { labelFor } from './work-labels.ts';
import { totalOf } from './work-numbers.ts';
import { conflictsOf, type Lacks, madeOf } from './work-said.ts';

/** The id of the sentence that says what a work lacks. */
export const LACKS_ID = 'work-lacks';

interface Props {
  hand: WorkInHand;
  drawn: WorkDrawn;
  refused: Refused | undefined;
  unkept: string | undefined;
  onAgain: (() => void) | undefined;
  lacks: Lacks | undefined;
  /** Says how what is made otherwise goes on. */
  onDecide: ((home: string) => void) | undefined;
  Stale: SaysStale;
}

/** What is read of an open work: what it gives next, what becomes of others, its drawing. */
export function WorkReading({ drawn, ...props }: Props) {
  const { hand } = props;
  const scroller = useScrolledUp(hand.typing.field?.field.key);
  return (
    <main class="reading">
      <Head hand={hand} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <section class="scroll" ref={scroller} tabIndex={0} aria-label={words.answer}>
        <Said {...props} />
        <Beside hand={hand} drawn={drawn} />
        <Below hand={hand} />
      </section>
    </main>
  );
}

const Head = steady(({ hand: { state, id, side } }: { hand: WorkInHand }) => {
  const { made, of, before } = madeOf(state, id, side);
  return (
    <header>
      <h1>{workName({ answer: state.answer, here: id }, id)}</h1>
      {of > 0 && <span>{words.made(made, of, before)}</span>}
    </header>
  );
});

/** What is to be said: why something wasn't done, the number, what is to be minded and decided. */
const Said = steady((props: Omit<Props, 'drawn'>) => {
  const { hand, refused, unkept, onAgain, lacks, onDecide, Stale } = props;
  const { state, id, side, bench, open, pending, planned, headline, gives } = hand;
  const telling = { answer: state.answer, bench, here: id };
  const conflicts = open ? conflictsOf(telling, open) : [];
  const asPlanned = planned?.ok ? planned.answer : undefined;
  return (
    <>
      <NotDone as="refused" said={unkept} onAgain={onAgain} />
      <NotDone as="refused" said={refused && refusedSaid(telling, refused)} />
      <WorkAnswer
        headline={headline}
        bench={bench}
        // It is said of the plan: once something is made, the numbers speak for themselves.
        sentence={madeOf(state, id, side).made === 0 ? asPlanned?.sentence : undefined}
        lacks={lacks && { ...lacks, id: LACKS_ID, soft: pending || lacks.soft }}
        warnings={[
          ...(!pending && isUntouched(state.answer, id) ? [exampleWords.said] : []),
          ...conflicts.map(({ said }) => said),
          // What is being typed never alarms.
          ...(pending ? [] : endsSaid(telling, gives)),
          ...(asPlanned?.warnings ?? []),
        ]}
      />
      {open?.fields.flatMap(({ field, taken }) =>
        laysTaken(state.answer.sound, taken).map((lay) => (
          <Stale key={`${field.key} ${lay}`} {...{ state, bench, lay }} field={field.label} />
        )),
      )}
      {onDecide &&
        conflicts.map(({ home }) => (
          <p class="last" key={home}>
            <span>{numberName(telling, home)}</span>
            <button type="button" onClick={() => onDecide(home)}>
              {words.decide}
            </button>
          </p>
        ))}
    </>
  );
});

/** Under the drawing: its rows, and all that it gives where that is wanted. */
const Below = steady(({ hand }: { hand: WorkInHand }) => {
  const { bench, gives, awaited, more } = hand;
  if (awaited) return null;
  const rows = gives.filter(({ output }) => output.kind === 'run');
  return (
    <>
      {rows.map((row) => (
        <Row
          key={row.home}
          row={row}
          bench={bench}
          onMade={(fact) => hand.show({ of: 'made', home: row.home, fact })}
        />
      ))}
      {more && (
        <GivesList
          gives={gives}
          bench={bench}
          totalOf={(one) => totalOf(one, hand.state.answer, hand.sides)}
          onTouch={hand.touch}
          onTakeOff={() => hand.show({ of: 'off' })}
          onAs={() => hand.show({ of: 'as' })}
        />
      )}
    </>
  );
});

/** What scrolls is at its top, where the answer is, when a field begins to be typed into. */
function useScrolledUp(at: string | undefined) {
  const scroller = useRef<HTMLElement>(null);
  useEffect(() => {
    if (at !== undefined && scroller.current) scroller.current.scrollTop = 0;
  }, [at]);
  return scroller;
}

/** Below the number: what it changes elsewhere, the last change to be taken back, the drawing. */
function Beside({ hand, drawn }: { hand: WorkInHand; drawn: WorkDrawn }) {
  const { state, id, bench, pending, rested, last, typing, touch } = hand;
  const { picture, open, gives } = drawn;
  const at = typing.field?.field.key;
  return (
    <>
      {pending && rested && <BeforeAfter state={state} work={id} bench={bench} />}
      {!pending && last && (
        <p class="last">
          <span>{slotName({ answer: state.answer, here: id }, last.slot)}</span>
          <button type="button" onClick={() => hand.onDo({ do: 'undo', change: last.change })}>
            {words.undo}
          </button>
        </p>
      )}
      <DrawingRoom awaited={hand.awaited}>
        {picture && open && <InPlace drawing={picture} {...{ at, open, gives, onTouch: touch }} />}
      </DrawingRoom>
    </>
  );
}

type InPlaceProps = Parameters<typeof labelFor>[1] & { drawing: Dimensioned };

/** The drawing with all that can be touched on it; laid out anew only where it is another. */
const InPlace = steady(({ drawing, open, gives, at, onTouch }: InPlaceProps) => (
  <DrawnWork drawing={drawing} labelOf={(one) => labelFor(one, { open, gives, at, onTouch })} />
));
