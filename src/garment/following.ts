import { madeOf } from './as-made.ts';
import type { Garment, Kept, KeptRun } from './garment.ts';

/** A run as it is followed: the labels of its marks in order, and what is made of it. */
export interface FollowedRun {
  labels: readonly string[];
  kept: KeptRun | undefined;
}

/** A mark of one of several runs that are followed one after another, both from 0. */
export interface FollowedMark {
  run: number;
  mark: number;
}

/** Every mark of every run, in order. */
function allOf(runs: readonly FollowedRun[]): FollowedMark[] {
  return runs.flatMap(({ labels }, run) => labels.map((_, mark) => ({ run, mark })));
}

function isMade(runs: readonly FollowedRun[], { run, mark }: FollowedMark): boolean {
  const followed = runs[run];
  return madeOf(followed?.kept, followed?.labels[mark] ?? '') !== undefined;
}

/** The next mark that is not made, after one or from the first; undefined when none is left. */
export function nextToMake(
  runs: readonly FollowedRun[],
  after?: FollowedMark,
): FollowedMark | undefined {
  const isLater = ({ run, mark }: FollowedMark) =>
    !after || run > after.run || (run === after.run && mark > after.mark);
  return allOf(runs).find((one) => isLater(one) && !isMade(runs, one));
}

/** The mark just before one, made or not; from the end the last one. The first stays itself. */
export function markBefore(
  runs: readonly FollowedRun[],
  here: FollowedMark | undefined,
): FollowedMark | undefined {
  const all = allOf(runs);
  if (!here) return all.at(-1);
  const at = all.findIndex(({ run, mark }) => run === here.run && mark === here.mark);
  return all[Math.max(0, at - 1)];
}

/** How many marks there are in all, and how many of them are made. */
export function countMade(runs: readonly FollowedRun[]): { marks: number; made: number } {
  const all = allOf(runs);
  return { marks: all.length, made: all.filter((one) => isMade(runs, one)).length };
}

/** Whether what is said of a mark is not in the garment as it is on the disk. */
export function isBeingKept(stored: Garment, kept: Kept, run: number, label: string): boolean {
  const there = [...stored.kept, ...stored.takenOff].find(({ id }) => id === kept.id);
  return madeOf(there?.runs[run], label) !== madeOf(kept.runs[run], label);
}
