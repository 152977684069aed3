import type { ComponentChildren, RefObject } from 'preact';
import { useState } from 'preact/hooks';
import { garmentHomeWords as words } from '#words/garment/garment-home-words.ts';
import { type Bench, tapeStep } from '../../../calculation/bench.ts';
import { useLanding } from '../../../controls/use-landing.ts';
import type { Action } from '../../../garment/actions/act.ts';
import { shownOn } from '../../../garment/actions/make.ts';
import type { State } from '../../../garment/actions/state.ts';
import { type Next, nextOf } from '../../../garment/next/next.ts';
import { stepsMade, workLines } from '../../../garment/next/work-lines.ts';
import { readHome } from '../../../garment/record/home.ts';
import { readLength } from '../../../lengths/read-length.ts';
import { Checks, useChecks } from './checks.tsx';
import './home-style.ts';
import type { HomeWay } from './home-way.ts';
import { Key } from './key.tsx';
import { LastPress } from './last-press.tsx';
import { Lines } from './lines.tsx';
import { MeasureStep } from './measure-step.tsx';
import { canBeRead } from './missing-way.ts';
import { BeforeNextCut } from './next-cut.tsx';
import { StepMore } from './step-more.tsx';
import { useTogether } from './use-together.ts';

interface Props {
  state: State;
  bench: Bench;
  /** The step that was in hand last. */
  inHand: string | undefined;
  /** How much is not on the disk yet. */
  waiting: number;
  /** What went wrong, in words. */
  said: string | undefined;
  /** Where the disk did not take what was done: tries again now. */
  onAgain: (() => void) | undefined;
  /** What the next step lacks, in words. */
  missing: (next: Extract<Next, { kind: 'missing' }>) => string;
  /** What the app says by itself. */
  news?: ComponentChildren;
  /** The drawing of the work in hand. */
  drawing: ComponentChildren;
  /** What is noted at the work in hand and at its next step. */
  notes?: ComponentChildren;
  onAct: (action: Action) => void;
  onInHand: (home: string) => void;
  onGo: (way: HomeWay) => void;
  onSpeak: (words: string) => void;
}

/** The open garment: what is made, the work in hand, and the next number under the thumb. */
export function GarmentHome(props: Props) {
  const { state, bench, inHand, onAct, onInHand, onGo } = props;
  const { answer, record } = state;
  const next = nextOf(answer, inHand);
  const tape = tapeStep(bench);
  const together = useTogether(answer, next, tape);
  const checks = useChecks(answer, next);
  const [more, setMore] = useState<'more' | 'measure'>();
  const done = () => setMore(undefined);
  // Where what had the focus has gone, as at the start, a screen reader is at the garment's name.
  const heading = useLanding({}) as RefObject<HTMLHeadingElement>;
  const home = next.kind === 'step' || next.kind === 'missing' ? next.step.home : undefined;
  const at = readHome(next.kind === 'decide' ? next.home : (home ?? '')).id;
  const make = (measured?: number) => {
    if (next.kind !== 'step') return;
    done();
    const shown = shownOn(tape, answer.nodes.get(next.step.home), next.value);
    const also = together.also.map((step) => step.home);
    onInHand(next.step.home);
    onAct({
      ...{ do: 'make', home: next.step.home, id: crypto.randomUUID(), tape, shown },
      ...(measured === undefined ? also.length > 0 && { also } : { measured }),
      now: Date.now(),
    });
  };
  const press = () => {
    if (next.kind === 'step') return checks.first ? checks.show() : make();
    onGo(wayOf(next));
  };
  if (more === 'measure' && next.kind === 'step') {
    return (
      <MeasureStep
        {...{ answer, next, bench }}
        onKeep={keepMeasured}
        onCancel={() => setMore(undefined)}
      />
    );
  }
  const { made, of } = stepsMade(answer);
  return (
    <div class="in-hand" data-hand={bench.hand}>
      <header>
        <h1 tabIndex={-1} ref={heading}>
          <button type="button" class="name" onClick={() => onGo({ to: 'garments' })}>
            {record.name}
          </button>
        </h1>
        {of > 0 && <p>{words.made(made, of)}</p>}
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <main tabIndex={0} aria-label={words.works}>
        {props.news}
        {checks.shown && !more && next.kind === 'step' ? (
          <Checks
            {...{ answer, next, bench, onAct }}
            onWork={(work) => onGo({ to: 'work', work })}
          />
        ) : more === 'more' && next.kind === 'step' ? (
          <StepMore
            {...{ state, next, bench, together, onAct, onInHand, onGo }}
            onDone={done}
            onMeasure={() => setMore('measure')}
            onSpeak={props.onSpeak}
          />
        ) : (
          <>
            <Lines {...{ state, bench, at, onAct, onInHand, onGo }} lines={workLines(answer)}>
              {props.drawing}
              {props.notes}
            </Lines>
            <BeforeNextCut {...{ answer, next, bench, onAct }} />
            {answer.steps.length > 1 && (
              <button type="button" class="to-order" onClick={() => onGo({ to: 'order' })}>
                {words.ordered}
              </button>
            )}
          </>
        )}
      </main>
      <LastPress {...props} />
      <Key
        {...{ answer, next, bench }}
        also={together.also}
        missing={next.kind === 'missing' ? props.missing(next) : ''}
        checkFirst={checks.first}
        onMore={() => setMore((was) => (was ? undefined : 'more'))}
        onPress={press}
        onRead={readOf(next)}
      />
      <nav class="bar" aria-label={words.bar}>
        {BAR.map(([to, face, name]) => (
          <button type="button" key={to} aria-label={name} onClick={() => onGo({ to })}>
            {face}
          </button>
        ))}
      </nav>
    </div>
  );

  function keepMeasured(text: string) {
    const read = readLength(text, bench.unit, bench.decimalMark);
    if (text.trim() === '') make();
    else if (read.ok) make(Math.round(read.value));
  }

  function readOf(of: Next): (() => void) | undefined {
    const reads = of.kind === 'missing' && canBeRead(answer, of);
    return reads ? () => onGo({ to: 'missing', step: of.step.home, read: true }) : undefined;
  }
}

const BAR = [
  ['add', words.add, undefined],
  ['measures', words.measures, undefined],
  ['convert', words.convert, words.convertName],
  ['tape', words.tape, undefined],
  ['sheet', words.sheet, words.sheetName],
] as const;

function wayOf(next: Exclude<Next, { kind: 'step' }>): HomeWay {
  switch (next.kind) {
    case 'decide':
      return { to: 'decide', home: next.home };
    case 'missing':
      return { to: 'missing', step: next.step.home };
    case 'all made':
      return { to: 'garments' };
    case 'nothing yet':
      return { to: 'add' };
  }
}
