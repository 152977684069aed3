import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBeCount, mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import type { Mark, Run } from '../run.ts';

/** The most groups, and the most in one. */
const MOST = 60;

/** Fasteners in groups of two or three down an edge. Lengths in 1/8000 mm. */
export interface GroupsInput {
  opening: Length;
  /** From each end of it to the nearest fastener. */
  top: Length;
  bottom: Length;
  groups: number;
  each: number;
  /** From one to the next of a group. */
  within: Length;
}

/** Where they lie. */
export interface Groups {
  run: Run;
  count: number;
  /** From a group's last to the next one's first; of one group, from it to where each end is kept free. */
  between: ExactLength;
}

/**
 * Groups evenly down an edge: between = (room − groups × (each − 1) × within) ÷ (groups − 1); one group
 * lies in the middle of the room (derived here). With one in each it is a plain row.
 *
 * Problems: no opening, ends below nothing or past it, counts under 1 or over 60, no room between groups.
 */
export function grouped(input: GroupsInput): Outcome<Groups> {
  return answerUnless(groupsProblems(input), () => {
    const { opening, top, bottom, groups, each, within } = input;
    const long = (each - 1) * within;
    const room = opening - top - bottom;
    const free = room - groups * long;
    if (free < 0 || (groups > 1 && free === 0)) {
      const needed = exactLength(groups * long);
      return refused({ kind: 'does-not-fit', field: 'within', room: exactLength(room), needed });
    }
    const between = exactLength(groups === 1 ? free / 2 : free / (groups - 1));
    const first = groups === 1 ? top + between : top;
    const marks = Array.from({ length: groups * each }, (_, i): Mark => {
      const group = Math.floor(i / each);
      const at = exactLength(first + group * (long + between) + (i % each) * within);
      return { at, label: String(i + 1), kind: 'closure' };
    });
    const run: Run = { datum: 'top-edge', length: opening, marks };
    return { ok: true, value: { run, count: marks.length, between } };
  });
}

function groupsProblems({ opening, top, bottom, groups, each, within }: GroupsInput): Problem[] {
  const needed = exactLength(top + bottom);
  const ends = opening > 0 && needed >= opening && (groups > 1 || each > 1 || needed > opening);
  return [
    ...mustBePositive('opening', opening),
    ...mustNotBeNegative('top', top),
    ...mustNotBeNegative('bottom', bottom),
    ...mustBeCount('groups', groups, 1, MOST),
    ...mustBeCount('each', each, 1, MOST),
    ...(each > 1 ? mustBePositive('within', within) : []),
    ...(ends ? [{ kind: 'ends-too-long', field: 'top', room: opening, needed } as const] : []),
  ];
}
