import { type Bench, tapeStep } from '../calculation/bench.ts';
import type { Calculation, Draft, NamedRun } from '../calculation/calculation.ts';
import { isFollowKey, isOfPlan, type Made, readMade, recordOf } from '../calculation/made.ts';
import { benchUnit } from '../lengths/unit.ts';
import { NO_RUN, withItsUnit } from './as-made.ts';
import { wasKey } from './draft.ts';
import type { Kept } from './garment.ts';
import { isMeasuredTwice } from './in-the-way.ts';
import { marksOf } from './plan.ts';
import { plannedAnew, withMeasures } from './planned-anew.ts';

/**
 * What is kept of a draft: what was typed, where its marks are planned, and what
 * was made of them, with what has been kept of that already.
 */
export function keptOf(
  calculation: Calculation,
  draft: Draft,
  bench: Bench,
  before: Kept | undefined,
): Pick<Kept, 'calculation' | 'draft' | 'runs'> {
  const work = calculation.work(draft, bench);
  const old = before?.runs ?? [];
  const planned = work.ok
    ? work.answer.runs.map((named, i) => {
        const { was, now } = measuresOf(draft, i, named);
        return plannedAnew(withMeasures(old[i], was, now), marksOf(named), tapeStep(bench));
      })
    : [];
  // A run the calculation no longer has stays as long as something of it is made.
  const beyond = old
    .slice(planned.length)
    .map((run) => (work.ok && Object.keys(run.made).length === 0 ? NO_RUN : run));
  const runs = beyond.some((run) => run !== NO_RUN) ? [...planned, ...beyond] : planned;
  return { calculation: calculation.id, draft: typedIn(calculation, draft), runs };
}

/** Whether a mark measured in this draft since it was opened was measured otherwise elsewhere. */
export function isMeasuredElsewhere(
  calculation: Calculation,
  draft: Draft,
  bench: Bench,
  before: Kept | undefined,
): boolean {
  const work = calculation.work(draft, bench);
  const runs = work.ok ? work.answer.runs : [];
  return runs.some((named, i) => {
    const { was, now } = measuresOf(draft, i, named);
    return isMeasuredTwice(before?.runs[i], was, now);
  });
}

/** What was measured of a run when it was opened, and what is now. */
function measuresOf(draft: Draft, i: number, { run }: NamedRun): { was: Made; now: Made } {
  const was = madeIn(readMade(draft[wasKey(i)] ?? ''), draft);
  const now = isOfPlan(draft, i, run) ? madeIn(recordOf(draft, i, run).made, draft) : was;
  return { was, now };
}

/** What was measured, with its unit: in an old address it may have none. */
function madeIn(made: Made, draft: Draft): Made {
  const unit = benchUnit(draft.u);
  return new Map([...made].map(([label, typed]) => [label, withItsUnit(typed, unit)]));
}

/** The draft without what is not typed: where it is kept and what it was there, what is measured, which mark is next. */
export function typedIn(calculation: Calculation, draft: Draft): Draft {
  const fields = new Set(calculation.fields(draft).map(({ key }) => key));
  const pairs = Object.entries(draft).filter(
    ([key]) => fields.has(key) || !(isFollowKey(key) || /^(kept|seen|counting)$/.test(key)),
  );
  return Object.fromEntries(pairs);
}
