import { edited, withKept } from './changes.ts';
import type { Garment, Kept } from './garment.ts';

/** Why what was done while following is refused. */
export type FollowRefusal =
  /** What was followed is no longer on the garment, nor among what was taken off it. */
  | 'gone'
  /** It has another plan by now: its marks lie elsewhere. */
  | 'replanned';

/**
 * A garment with what was done of one thing kept on it, while its marks were followed.
 * What is made belongs to the plan it was made by, and is refused by another one. Where
 * it was taken off meanwhile, what is made is kept with it there.
 *
 * @param seen what was followed, as it was seen
 */
export function followedChange(
  garment: Garment,
  seen: Kept,
  by: (kept: Kept) => Kept,
  changed: number,
): Garment | FollowRefusal {
  const on = garment.kept.find(({ id }) => id === seen.id);
  const place = garment.takenOff.map(({ id }) => id).lastIndexOf(seen.id);
  const now = on ?? garment.takenOff[place];
  if (!now) return 'gone';
  // What storage took without saying so comes a second time.
  const done = by(seen);
  if (!samePlan(seen, done) && samePlan(now, done)) return garment;
  if (!samePlan(now, seen)) return 'replanned';
  if (on) return withKept(garment, by(on), changed);
  const takenOff = garment.takenOff.map((old, i) => (i === place ? by(old) : old));
  return edited(garment, { takenOff }, changed);
}

/** Whether both are worked out of the same typing. */
function samePlan(one: Kept, other: Kept): boolean {
  const [a, b] = [Object.entries(one.draft), Object.entries(other.draft)];
  return (
    one.calculation === other.calculation &&
    a.length === b.length &&
    a.every(([key, typed]) => other.draft[key] === typed)
  );
}
