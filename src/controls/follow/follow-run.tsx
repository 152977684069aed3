import type { ComponentChildren, ComponentProps } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { spoken } from '#words/common/spoken.ts';
import { followWords } from '#words/controls/follow-words.ts';
import { type Bench, tapeStep } from '../../calculation/bench.ts';
import type { NamedRun } from '../../calculation/calculation.ts';
import { onTape, wordOf } from '../../calculation/tape-text.ts';
import type { ExactLength } from '../../lengths/length.ts';
import { type MarkedMark, type MarkedRun, markOut } from '../../sewing/marks.ts';
import { adopt } from '../adopt.ts';
import { useAfterPaint } from '../after-paint.ts';
import { RunTape } from '../run-tape.tsx';
import { steady } from '../steady.tsx';
import { useLoaded } from '../use-loaded.ts';
import css from './follow.css?inline';
import { Big, MadeLine, stepOf } from './follow-big.tsx';
import { useMarkKeys, useTurn } from './follow-keys.ts';
import { NextKey } from './follow-next.tsx';
import { useMeasures } from './use-measures.ts';

adopt(css);

const SteadyTape = steady(RunTape);

/** What following asks of the phone. */
export interface FollowServices {
  speak(words: string): void;
  /** Keeps the screen on until the returned function is called. */
  keepAwake(): () => void;
}

interface Props {
  /** With its marks where they were made. */
  named: NamedRun;
  /** Which mark, from 0; as many as there are marks when all are made. */
  at: number;
  /** What was measured of the mark, as typed; empty when as planned, undefined when nothing is said. */
  made: string | undefined;
  /** What was measured of it anew, read off a tape: to be asked about. */
  asked?: string | undefined;
  /** Where a sewn mark was planned: the run has it where it is. */
  planned?: ExactLength | undefined;
  bench: Bench;
  services: FollowServices;
  /** What is said before the first mark of a run, aloud too. */
  before?: string | undefined;
  /** Changes with every mark that is gone to. */
  turn: string;
  /** Under the heading, and under the number. */
  of?: ComponentChildren;
  notes?: ComponentChildren;
  /** Further things to do with this mark. */
  actions?: ComponentChildren;
  /** What the large key says. */
  nextWords: string;
  onNext: () => void;
  onBack: () => void;
  onPick: (at: number) => void;
  /** A mark was measured; empty when it is as planned after all, undefined when nothing is said of it. */
  onMeasured: (label: string, typed: string | undefined) => void;
  /** Reads a mark's measure off a tape, where that is possible. */
  onTape?: ((label: string) => void) | undefined;
  onLeave: () => void;
}

/** One mark of a run, huge; the whole lower half is the key for the next. */
export function FollowRun(props: Props) {
  const { named, at, bench, services } = props;
  const step = tapeStep(bench);
  const marked = useMemo(() => markOut(named.run, step), [named.run, step]);
  const count = marked.marks.length;
  const mark = marked.marks[Math.min(at, count - 1)] as MarkedMark;
  const [measuring, setMeasuring] = useState(false);
  const measures = useMeasures(props, mark.label);
  const latest = useRef(props);
  latest.current = props;
  const pick = useMemo(() => (index: number) => latest.current.onPick(index), []);
  const here = useAfterPaint(Math.min(at, count - 1));
  const say = () => services.speak(sentence(props, marked));
  useEffect(() => services.keepAwake(), [services.keepAwake]);
  useTurn(props.turn, () => {
    navigator.vibrate?.(30);
    if (bench.voice === 'on') say();
  });
  useMarkKeys(!measuring && measures.asked === undefined, props.onNext, props.onBack);

  return (
    <div class="follow" data-hand={bench.hand}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <main tabIndex={0}>
        <h1>
          {at < count ? followWords.place(named.item, mark.label, count) : followWords.all(count)}
        </h1>
        {props.of}
        <Big mark={mark} at={at} marked={marked} bench={bench}>
          <MadeLine {...props} mark={mark} />
        </Big>
        {props.notes}
        <SteadyTape named={named} bench={bench} here={here} onPick={pick} />
      </main>
      {measuring || measures.asked !== undefined ? (
        <Measuring
          measures={measures}
          bench={bench}
          item={followWords.one(named.item, mark.label)}
          made={props.made ?? ''}
          onDone={() => setMeasuring(false)}
          onTape={props.onTape && (() => props.onTape?.(mark.label))}
        />
      ) : (
        <>
          <div class="actions">
            <button type="button" onClick={props.onLeave}>
              {followWords.leave}
            </button>
            <button type="button" onClick={say}>
              {followWords.speak}
            </button>
            <button type="button" onClick={() => setMeasuring(true)}>
              {followWords.otherwise}
            </button>
            <button type="button" onClick={props.onBack}>
              {followWords.back}
            </button>
            {measures.undo && (
              <button type="button" class="main" onClick={measures.undo.deed}>
                {followWords.undo(measures.undo.first)}
              </button>
            )}
            {props.actions}
          </div>
          <NextKey words={props.nextWords} onNext={props.onNext} />
        </>
      )}
    </div>
  );
}

/** What a measure is typed on is fetched when the first one is wanted; till then there is a way back. */
function Measuring(props: ComponentProps<Awaited<ReturnType<typeof loadMeasure>>>) {
  const loaded = useLoaded(loadMeasure);
  if (loaded.state === 'here') return <loaded.value {...props} />;
  return (
    <div class="actions">
      <button type="button" onClick={props.onDone}>
        {followWords.cancel}
      </button>
    </div>
  );
}

const loadMeasure = () => import('./measure.tsx').then((part) => part.Measure);

function sentence({ named, at, bench, before }: Props, marked: MarkedRun): string {
  const mark = marked.marks[at];
  if (!mark) return followWords.all(marked.marks.length);
  const [step, back] = at > 0 ? stepOf(mark, bench) : [];
  const item = followWords.one(named.item, mark.label);
  const said = followWords.say(item, wordOf(mark, bench), onTape(mark.at, bench), step, back);
  return spoken(before === undefined ? said : `${before} ${said}`);
}
