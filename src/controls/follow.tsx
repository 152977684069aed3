import { useMemo } from 'preact/hooks';

import { markOut } from '../sewing/marks.ts';
import { followWords } from '../words/follow-words.ts';
import { type Bench, tapeStep } from './bench.ts';
import type { Calculation, Draft, NamedRun } from './calculation.ts';
import { FollowRun, type FollowServices } from './follow-run.tsx';
import { type Made, madeKey, readMade, writeMade } from './made.ts';
import { onTape } from './tape-text.ts';

export interface FollowProps {
  calculation: Calculation;
  draft: Draft;
  bench: Bench;
  services: FollowServices;
  onDraft: (draft: Draft) => void;
  onLeave: () => void;
  /** Reads a tape for what is named, such as `made:3`. */
  onTape: (into: string) => void;
}

/** The marks of a calculation, run after run; where each run has come to is in the draft. */
export function Follow(props: FollowProps) {
  const { calculation, draft, bench, onLeave } = props;
  const work = useMemo(() => calculation.work(draft, bench), [calculation, draft, bench]);
  const runs = work.ok ? work.answer.runs : NO_RUNS;
  const withMarks = runs.flatMap(({ run }, i) => (run.marks.length > 0 ? [i] : []));
  const run = withMarks.find((i) => String(i) === draft.run) ?? withMarks[0];
  const named = run === undefined ? undefined : runs[run];
  if (run === undefined || !named) {
    return (
      <main class="follow">
        <p class="warning">{followWords.nothing}</p>
        <button type="button" class="next" onClick={onLeave}>
          {followWords.leave}
        </button>
      </main>
    );
  }
  const others = withMarks.filter((i) => i !== run).map((i) => ({ i, name: runs[i]?.name ?? '' }));
  const next = others.find(({ i }) => i > run);
  return <Followed {...props} run={run} named={named} others={others} next={next} />;
}

const NO_RUNS: readonly NamedRun[] = [];

interface OtherRun {
  i: number;
  name: string;
}

interface FollowedProps extends FollowProps {
  run: number;
  named: NamedRun;
  others: readonly OtherRun[];
  /** What is followed once all of this run is marked. */
  next: OtherRun | undefined;
}

function Followed(props: FollowedProps) {
  const { run, named, others, next, draft, bench, services, onDraft, onLeave } = props;
  const { marks } = named.run;
  const count = marks.length;
  const atKey = run === 0 ? 'at' : `at-${run + 1}`;
  const at = placeOf(draft[atKey], count);
  const key = madeKey(run);
  const made = readMade(draft[key] ?? '');
  const go = (to: number) =>
    onDraft({ ...draft, [atKey]: String(Math.max(0, Math.min(to, count))) });
  const turnTo = ({ i }: OtherRun) => onDraft({ ...draft, run: String(i) });
  const atEnd = next ? followWords.goOn(next.name) : followWords.restart;
  return (
    <FollowRun
      named={named}
      at={at}
      made={made.get(marks[Math.min(at, count - 1)]?.label ?? '')}
      bench={bench}
      services={services}
      turn={`${run}.${at}`}
      of={others.length > 0 && <p class="say">{named.name}</p>}
      actions={
        <>
          <Respace {...props} made={made} at={at} />
          {others.map((other) => (
            <button type="button" key={other.i} onClick={() => turnTo(other)}>
              {other.name}
            </button>
          ))}
        </>
      }
      nextWords={at >= count ? atEnd : followWords.next}
      onNext={() => (at < count ? go(at + 1) : next ? turnTo(next) : go(0))}
      onBack={() => go(at - 1)}
      onPick={go}
      onMeasured={(label, typed) => onDraft({ ...draft, [key]: writeMade(made, label, typed) })}
      onLeave={onLeave}
      onTape={(label) => props.onTape(`made:${label}`)}
    />
  );
}

/** Offered once something was made elsewhere than planned: the rest spaced around it. */
function Respace(props: FollowProps & { named: NamedRun; made: Made; at: number }) {
  const { calculation, named, made, at, draft, bench, onDraft } = props;
  const around = calculation.around;
  if (made.size === 0 || !around) return null;
  const { marks } = markOut(named.run, tapeStep(bench));
  const done = marks
    .filter((mark, i) => i < at || made.has(mark.label))
    .map((mark) => made.get(mark.label) ?? onTape(mark.at, bench));
  return (
    <button type="button" class="main" onClick={() => onDraft(around(draft, done, marks.length))}>
      {followWords.respace}
    </button>
  );
}

/** A place kept in an address: a whole number from 0 to the number of marks, else the first. */
function placeOf(typed: string | undefined, count: number): number {
  const at = Number(typed ?? 0);
  return Number.isInteger(at) && at >= 0 ? Math.min(at, count) : 0;
}
