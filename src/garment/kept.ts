import { type Bench, tapeStep } from '../calculation/bench.ts';
import type { Calculation, NamedRun } from '../calculation/calculation.ts';
import {
  isFollowKey,
  isOfPlan,
  type Made,
  readMade,
  recordOf,
  wasKey,
} from '../calculation/made.ts';
import { type Held, heldOf, type Page, type PageState } from '../calculation/page.ts';
import { benchUnit } from '../lengths/unit.ts';
import { NO_RUN, withItsUnit } from './as-made.ts';
import type { Kept } from './garment.ts';
import { isMeasuredTwice } from './in-the-way.ts';
import { marksOf } from './plan.ts';
import { plannedAnew, withMeasures } from './planned-anew.ts';

/**
 * What is kept of a page: what was typed, where its marks are planned, and what
 * was made of them, with what has been kept of that already.
 */
export function keptOf(
  calculation: Calculation,
  state: PageState,
  bench: Bench,
  before: Kept | undefined,
): Pick<Kept, 'calculation' | 'draft' | 'runs'> {
  const work = calculation.work(state.draft, bench);
  const old = before?.runs ?? [];
  const planned = work.ok
    ? work.answer.runs.map((named, i) => {
        const { was, now } = measuresOf(state.page, i, named);
        return plannedAnew(withMeasures(old[i], was, now), marksOf(named), tapeStep(bench));
      })
    : [];
  // A run the calculation no longer has stays as long as something of it is made.
  const beyond = old
    .slice(planned.length)
    .map((run) => (work.ok && Object.keys(run.made).length === 0 ? NO_RUN : run));
  const runs = beyond.some((run) => run !== NO_RUN) ? [...planned, ...beyond] : planned;
  return { calculation: calculation.id, draft: typedIn(state), runs };
}

/** Whether a mark measured on this page since it was opened was measured otherwise elsewhere. */
export function isMeasuredElsewhere(
  calculation: Calculation,
  state: PageState,
  bench: Bench,
  before: Kept | undefined,
): boolean {
  const work = calculation.work(state.draft, bench);
  const runs = work.ok ? work.answer.runs : [];
  return runs.some((named, i) => {
    const { was, now } = measuresOf(state.page, i, named);
    return isMeasuredTwice(before?.runs[i], was, now);
  });
}

/** What was measured of a run when it was opened, and what is now. */
function measuresOf(page: Page, i: number, { run }: NamedRun): { was: Made; now: Made } {
  const was = madeIn(readMade(page[wasKey(i)] ?? ''), page);
  const now = isOfPlan(page, i, run) ? madeIn(recordOf(page, i, run).made, page) : was;
  return { was, now };
}

/** What was measured, with its unit: in an old address it may have none. */
function madeIn(made: Made, page: Page): Made {
  const unit = benchUnit(page.u);
  return new Map([...made].map(([label, typed]) => [label, withItsUnit(typed, unit)]));
}

/** What was typed, without where it is kept and what it was there, what is measured, which mark is next. */
export function typedIn({ draft, page }: PageState): Held {
  const pairs = Object.entries(page).filter(
    ([key]) => !(isFollowKey(key) || /^(kept|seen|counting)$/.test(key)),
  );
  return heldOf({ draft, page: Object.fromEntries(pairs) });
}
