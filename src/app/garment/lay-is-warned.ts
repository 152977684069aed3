import type { Standing } from './lay-warned.tsx';

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
