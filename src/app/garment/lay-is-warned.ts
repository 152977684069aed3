import type { LaidOf } from '../../garment/record/cloth-lay.ts';
import { boxOf } from '../../lay/outline.ts';
import type { Lay, LayTask } from '../../lay/task.ts';
import type { CutOutlines } from '../lay/cut-outlines.ts';
import { seenIn } from '../lay/lay-task.ts';
import { inMm } from '../lay/lay-units.ts';
import type { Standing } from './lay-warned.tsx';

/** A curve's corners lie this far outside of it at either end, in mm. */
const NOTHING = 1.1;

/** Pieces whose shape of their own isn't as large as the garment cuts them, by id. */
export function otherSized({ pieces }: Pick<LaidOf, 'pieces'>, cut: CutOutlines): string[] {
  return Object.entries(pieces).flatMap(([id, { along, across, fold }]) => {
    const own = cut.get(id);
    if (!own?.ok) return [];
    const { x0, x1, y0, y1 } = boxOf(own.value.exact);
    const long = Math.abs(x1 - x0 - inMm(along)) > NOTHING;
    const wide = Math.abs(y1 - y0 - inMm(fold ? across / 2 : across)) > NOTHING;
    return long || wide ? [id] : [];
  });
}

/** Less of the cloth than this, in mm, lies bare before the first piece of any lay. */
const BARE = 100;

/** How much of the cloth, from its cut end on, flaws leave no room on, in mm; 0 where it is little. */
export function lostToFlaws(task: LayTask, lay: Lay): number {
  if (!task.flaws?.length) return 0;
  const bare = Math.min(...seenIn(task, lay).map(({ outline }) => boxOf(outline).x0));
  return Number.isFinite(bare) && bare > Math.max(BARE, task.repeat?.along ?? 0) ? bare : 0;
}

/** Whether something is in the way of a lay, or to be known of it: only then its words are fetched. */
export function isWarned({
  one,
  now,
  outcome,
  faults,
  ended,
  missing,
  other,
  lost,
}: Standing): boolean {
  // Needs that aren't laid, as bias strips, are told of as well.
  const all = now.needs.size === one.needs.length && now.of?.repeat === undefined;
  const plain =
    other.length === 0 &&
    lost === 0 &&
    outcome?.ok === true &&
    outcome.wasted.length === 0 &&
    faults.length === 0;
  return !(now.of && all && (plain || !outcome) && !missing && !ended && !now.stale);
}
