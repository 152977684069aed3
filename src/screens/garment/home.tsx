import type { ComponentChildren, RefObject } from 'preact';
import { useState } from 'preact/hooks';
import { garmentHomeWords as words } from '#words/garment-home-words.ts';
import { type Bench, tapeStep } from '../../calculation/bench.ts';
import { useLanding } from '../../controls/use-landing.ts';
import type { Action } from '../../garment/actions/act.ts';
import { shownOn } from '../../garment/actions/make.ts';
import type { State } from '../../garment/actions/state.ts';
import { afterNext, type Next, nextOf } from '../../garment/next/next.ts';
import { stepsMade, workLines } from '../../garment/next/work-lines.ts';
import { readHome } from '../../garment/record/home.ts';
import { readLength } from '../../lengths/read-length.ts';
import { Checks, useChecks } from './checks.tsx';
import './home-style.ts';
import { Key } from './key.tsx';
import { Lines } from './lines.tsx';
import { MeasureStep } from './measure-step.tsx';
import { numberOf } from './say.ts';
import { StepMore } from './step-more.tsx';

/** Where home leads. */
export type HomeWay =
  | { to: 'garments' | 'add' | 'measures' | 'convert' | 'tape' }
  | { to: 'work'; work: string }
  | { to: 'decide'; home: string }
  /** A number that is missing: of a quantity, or in a work. */
  | { to: 'missing'; step: string };

interface Props {
  state: State;
  bench: Bench;
  /** The step that was in hand last. */
  inHand: string | undefined;
  /** How much is not on the disk yet. */
  waiting: number;
  /** What went wrong, in words. */
  said: string | undefined;
  /** What the next step lacks, in words. */
  missing: (next: Extract<Next, { kind: 'missing' }>) => string;
  /** What the app says by itself. */
  news?: ComponentChildren;
  /** The drawing of the work in hand. */
  drawing: ComponentChildren;
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
  const checks = useChecks(answer, next);
  const [more, setMore] = useState<'more' | 'measure'>();
  // Where what had the focus has gone, as at the start, a screen reader is at the garment's name.
  const heading = useLanding({}) as RefObject<HTMLHeadingElement>;
  const home = next.kind === 'step' || next.kind === 'missing' ? next.step.home : undefined;
  const at = readHome(next.kind === 'decide' ? next.home : (home ?? '')).id;
  const make = (measured?: number) => {
    if (next.kind !== 'step') return;
    setMore(undefined);
    const kind = answer.nodes.get(next.step.home)?.kind ?? 'length';
    const tape = tapeStep(bench);
    const shown = shownOn(tape, kind, next.value);
    onInHand(next.step.home);
    onAct({
      ...{ do: 'make', home: next.step.home, id: crypto.randomUUID(), tape, shown },
      ...(measured !== undefined && { measured }),
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
          <Checks answer={answer} next={next} bench={bench} onAct={onAct} />
        ) : more === 'more' && next.kind === 'step' ? (
          <StepMore
            {...{ state, next, bench, onAct }}
            onDone={() => setMore(undefined)}
            onMeasure={() => setMore('measure')}
            onPassOver={passOver(next.step.home)}
            onOpen={() => onGo({ to: 'work', work: at })}
            onSpeak={props.onSpeak}
          />
        ) : (
          <Lines lines={workLines(answer)} answer={answer} bench={bench} at={at} onGo={onGo}>
            {props.drawing}
          </Lines>
        )}
      </main>
      <LastPress {...props} />
      <Key
        {...{ answer, next, bench }}
        missing={next.kind === 'missing' ? props.missing(next) : ''}
        checkFirst={checks.first}
        onMore={() => setMore((was) => (was ? undefined : 'more'))}
        onPress={press}
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

  function passOver(home: string): (() => void) | undefined {
    const after = afterNext(answer, home);
    return after === undefined
      ? undefined
      : () => {
          setMore(undefined);
          onInHand(after);
        };
  }
}

const BAR = [
  ['add', words.add, undefined],
  ['measures', words.measures, undefined],
  ['convert', words.convert, words.convertName],
  ['tape', words.tape, undefined],
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

/** What was made last, with the way back; or what went wrong. */
function LastPress({ state, bench, waiting, said, onAct }: Props) {
  const last = [...state.log].reverse().find(({ press }) => press);
  const fact = last?.edits
    .map(({ slot, after }) => (slot[0] === 'facts' && slot.length === 2 ? after : undefined))
    .find((one) => one !== undefined) as
    | { home: string; shown: number; measured?: number }
    | undefined;
  if (said !== undefined) {
    return (
      <p class="last warning" role="alert">
        {said}
      </p>
    );
  }
  if (!last || last !== state.log.at(-1) || !fact) return null;
  const kind = state.answer.nodes.get(fact.home)?.kind;
  const back = () => onAct({ do: 'back one', now: Date.now() });
  return (
    <p class="last">
      {waiting > 0
        ? words.keeping
        : words.justMade(numberOf(kind, fact.measured ?? fact.shown, bench))}
      {' · '}
      <button type="button" onClick={back}>
        {words.backOne}
      </button>
    </p>
  );
}
