import { type ExactLength, exactLength, length } from '../lengths/length.ts';
import { type Outcome, refused } from './problem.ts';
import type { Mark, Run } from './run.ts';

/**
 * A run with marks where they were really made, each with its plan beside it; in the
 * order of the plan, whatever was made where. A sewn mark stays where it is: it was
 * measured already. The very same run when nothing of it was made elsewhere.
 *
 * @param made where each was measured from the datum, by label
 */
export function runAsMade(run: Run, made: ReadonlyMap<string, ExactLength>): Run {
  const moved = run.marks.map((mark) => markAsMade(mark, made.get(mark.label)));
  if (moved.every((mark, i) => mark === run.marks[i])) return run;
  const last = Math.max(run.length, ...moved.map(({ at }) => Math.ceil(at)));
  return { ...run, length: length(last), marks: moved };
}

function markAsMade(mark: Mark, at: ExactLength | undefined): Mark {
  if (at === undefined || mark.kind === 'sewn') return mark;
  return { ...mark, at, planned: mark.at };
}

/** The places of a run's marks in the order they lie in, each an index of the run's own order. */
export function placeOrder({ marks }: Run): readonly number[] {
  const order = marks.map((_, i) => i);
  return order.sort((a, b) => (marks[a]?.at ?? 0) - (marks[b]?.at ?? 0));
}

/** The run with its marks in the order they lie in: the very same where they do already. */
export function inPlaceOrder(run: Run): Run {
  const { marks } = run;
  if (marks.every((mark, i) => mark.at >= (marks[i - 1]?.at ?? mark.at))) return run;
  return { ...run, marks: placeOrder(run).flatMap((i) => marks[i] ?? []) };
}

/** The least from one mark to the next one; undefined of fewer than two. */
export function leastStep(run: Run): ExactLength | undefined {
  const steps = stepsIn(run);
  return steps.length === 0 ? undefined : exactLength(Math.min(...steps));
}

/**
 * The widest from one mark to the next one.
 * @param field the one that decides how many there are: one mark alone has no steps
 */
export function widestStep(run: Run, field: string): Outcome<ExactLength> {
  const steps = stepsIn(run);
  if (steps.length > 0) return { ok: true, value: exactLength(Math.max(...steps)) };
  return refused({ kind: 'too-few', field, least: 2, given: run.marks.length });
}

function stepsIn(run: Run): number[] {
  const places = inPlaceOrder(run).marks.map(({ at }) => at);
  return places.slice(1).map((at, i) => at - (places[i] ?? 0));
}
