import { useMemo } from 'preact/hooks';
import { followWords } from '#words/controls/follow-words.ts';
import { followedRun } from '../../calculation/as-made.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Calculation, NamedRun } from '../../calculation/calculation.ts';
import {
  type FollowRecord,
  readMade,
  recordOf,
  withoutRefused,
  withRecord,
  writeMade,
} from '../../calculation/made.ts';
import type { Page, PageState } from '../../calculation/page.ts';
import { Rich } from '../rich.tsx';
import { useRespacing } from './follow-respacing.tsx';
import { FollowRun, type FollowServices } from './follow-run.tsx';

export interface FollowProps {
  calculation: Calculation;
  state: PageState;
  bench: Bench;
  services: FollowServices;
  onState: (state: PageState) => void;
  onLeave: () => void;
  /** Reads a tape for what is named, such as `made:3`. */
  onTape: (into: string) => void;
}

/** The marks of a calculation, run after run; where each run has come to is in its state. */
export function Follow(props: FollowProps) {
  const { calculation, bench, onLeave } = props;
  const { draft, page } = props.state;
  const work = useMemo(() => calculation.work(draft, bench), [calculation, draft, bench]);
  const runs = work.ok ? work.answer.runs : NO_RUNS;
  const withMarks = runs.flatMap(({ run }, i) => (run.marks.length > 0 ? [i] : []));
  const run = withMarks.find((i) => String(i) === page.run) ?? withMarks[0];
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
  const { run, others, next, bench, services, onLeave } = props;
  const { draft, page } = props.state;
  const onPage = (to: Page) => props.onState({ draft, page: to });
  const plan = props.named;
  const named = useMemo(() => followedRun(plan, page, run, bench), [plan, page, run, bench]);
  const { marks } = named.run;
  const count = marks.length;
  const record = recordOf(page, run, plan.run);
  const { made } = record;
  const at = placeOf(record.at, count);
  const label = marks[Math.min(at, count - 1)]?.label ?? '';
  const spacing = useRespacing({ ...props, named, made, at });
  const set = (changed: { at?: number; made?: string }) =>
    onPage({ ...withRecord(page, run, plan.run, changed), ...(page.asked && { asked: '' }) });
  const go = (to: number) => set({ at: Math.max(0, Math.min(to, count)) });
  const turnTo = ({ i }: OtherRun) => onPage({ ...page, run: String(i) });
  const atEnd = next ? followWords.goOn(next.name) : followWords.restart;
  return (
    <FollowRun
      named={named}
      at={at}
      made={made.get(label)}
      asked={readMade(page.asked ?? '').get(label)}
      bench={bench}
      services={services}
      turn={`${run}.${at}`}
      of={others.length > 0 && <p class="say">{named.name}</p>}
      notes={
        <>
          {spacing.said}
          <Refused record={record} item={named.item} />
        </>
      }
      actions={
        <>
          {spacing.offer}
          {record.refused.size > 0 && (
            <button type="button" onClick={() => onPage(withoutRefused(page, run, plan.run))}>
              {followWords.forget}
            </button>
          )}
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
      onMeasured={(label, typed = '') => set({ made: writeMade(made, label, typed) })}
      onLeave={onLeave}
      onTape={(label) => props.onTape(`made:${label}`)}
    />
  );
}

/** What was measured on another plan: said, as it doesn't count on this one. */
function Refused({ record, item }: { record: FollowRecord; item: string }) {
  const measures = [...record.refused.values()].flatMap((made) =>
    [...made].map(([label, typed]) => followWords.refusedMark(label, typed)),
  );
  if (measures.length === 0) return null;
  return (
    <p class="say warning">
      <Rich text={followWords.refused(item, measures.join(', '))} />
    </p>
  );
}

/** A place kept in an address: a whole number from 0 to the number of marks, else the first. */
function placeOf(typed: string | undefined, count: number): number {
  const at = Number(typed ?? 0);
  return Number.isInteger(at) && at >= 0 ? Math.min(at, count) : 0;
}
