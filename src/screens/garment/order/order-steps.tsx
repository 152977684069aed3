import { useEffect, useRef, useState } from 'preact/hooks';
import { garmentOrderWords as words } from '#words/garment/garment-order-words.ts';
import { isMade } from '../../../garment/next/next.ts';
import type { WorkLine } from '../../../garment/next/work-lines.ts';
import { homeOf } from '../../../garment/record/home.ts';
import type { GarmentStep } from '../../../garment/work-out/told.ts';
import { sideName } from '../said/names.ts';
import { stepWords } from '../said/say.ts';
import { movesOf, type StepMove, sideTogether } from './order-moves.ts';
import type { OrderProps } from './order-props.ts';

type Props = OrderProps & { line: WorkLine };

/** The steps of a work: how far each is, and what can be said of it. */
export function OrderSteps(props: Props) {
  const { line, onAct, onNote } = props;
  const { steps } = line;
  const [open, setOpen] = useState<string>();
  const unmade = steps.filter(({ made }) => made === 0);
  const allBefore = () => {
    const homes = unmade.map(({ home }) => home);
    onAct({ do: 'make before', homes, id: crypto.randomUUID(), now: Date.now() });
  };
  return (
    <>
      {steps.map((step) => (
        <StepLine
          {...props}
          key={step.home}
          step={step}
          isOpen={open === step.home}
          onOpen={() => setOpen(open === step.home ? undefined : step.home)}
        />
      ))}
      <button type="button" class="whole" onClick={() => onNote(homeOf(line.id))}>
        {words.noteWhole(line.name)}
      </button>
      {unmade.length > 1 && (
        <button type="button" class="whole" onClick={allBefore}>
          {words.whole(line.name)}
        </button>
      )}
    </>
  );
}

type LineProps = Props & { step: GarmentStep; isOpen: boolean; onOpen: () => void };

function StepLine(props: LineProps) {
  const { state, step, isOpen, onOpen } = props;
  const line = useRef<HTMLButtonElement>(null);
  const place = state.answer.steps.findIndex(({ home }) => home === step.home) + 1;
  const own = words.stages[step.step.stage];
  const stage = step.stage === step.step.stage ? own : words.among(own, words.stages[step.stage]);
  return (
    <>
      <button type="button" class="step" aria-expanded={isOpen} ref={line} onClick={onOpen}>
        <span>{words.nth(place, stepWords(state.answer, step))}</span>
        <small>
          {stage} · {stateSaid(props)}
        </small>
      </button>
      {isOpen && (
        <div class="deeds">
          <StepMoves {...props} onGone={() => line.current?.focus()} />
          {deedsFor(props).map(([face, press]) => (
            <button type="button" class="plain" key={face} onClick={press}>
              {face}
            </button>
          ))}
        </div>
      )}
    </>
  );
}

/** Brings the step before, or after, those of other works; each press says where it is then. */
function StepMoves({ state, step, onAct, onGone }: LineProps & { onGone: () => void }) {
  const [done, setDone] = useState<StepMove>();
  const [alone, setAlone] = useState(false);
  const side = sideTogether(state, step);
  const moves = movesOf(state, step, alone && side !== undefined);
  const isGone = done !== undefined && !moves.some(({ key }) => key === done.key);
  useEffect(() => {
    // The way that was pressed is no longer there.
    if (isGone) onGone();
  }, [done, isGone]);
  return (
    <>
      {moves.map((one) => (
        <button
          type="button"
          class="plain"
          key={one.key}
          onClick={() => {
            onAct(one.action);
            setDone(one);
            if (one.key === 'back') setAlone(false);
          }}
        >
          {one.face}
        </button>
      ))}
      {side !== undefined && (
        <button type="button" class="plain" onClick={() => setAlone(!alone)}>
          {alone ? words.withOthers : words.byItself(sideName(side))}
        </button>
      )}
      <p class="unseen" aria-live="polite">
        {done?.said}
      </p>
    </>
  );
}

function stateSaid({ state, step }: LineProps): string {
  const { home, made, of, passed } = step;
  if (state.answer.sound.before.has(home)) return words.before;
  if (isMade(step)) return words.made;
  if (passed) return words.passed;
  if (made > 0) return words.partly(made, of ?? made);
  return state.answer.values.get(home)?.ok ? words.open : words.waits;
}

type Deed = readonly [face: string, press: () => void];

function deedsFor({ state, step, onAct, onInHand, onNote }: LineProps): Deed[] {
  const { home, made, passed } = step;
  const now = Date.now();
  const before = state.answer.sound.before.get(home);
  const pass = (over: boolean) => onAct({ do: 'pass', home, over, now });
  const go = () => {
    if (passed) pass(false);
    onInHand(home);
  };
  const open = !isMade(step);
  const deeds: readonly (Deed | false | undefined)[] = [
    open && [words.go, go],
    open && (passed ? [words.takeUp, () => pass(false)] : [words.pass, () => pass(true)]),
    made === 0 && [
      words.sayBefore,
      () => onAct({ do: 'make before', homes: [home], id: crypto.randomUUID(), now }),
    ],
    before && [words.notBefore, () => onAct({ do: 'unmake', fact: before.id, now })],
    [words.note, () => onNote(home)],
  ];
  return deeds.filter((deed): deed is Deed => Array.isArray(deed));
}
