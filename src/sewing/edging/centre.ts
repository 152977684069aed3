import { type ExactLength, exactLength, type Length, LONGEST } from '../../lengths/length.ts';
import { type HolePlace, middleOf, placeAt } from '../hole-place.ts';
import { holeRun } from '../hole-run.ts';
import { mustBeCount, mustBePositiveIfGiven } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';
import type { Run } from '../run.ts';

/** The most holes that are counted on one row. */
const MOST_HOLES = 2000;

export interface CountInput {
  /** Holes counted from one end. */
  count: number;
  /** Holes counted from the other end, when that was done too. */
  other?: number | undefined;
  /** Hole to hole, when known. */
  pitch?: Length | undefined;
  /** From the first hole to the last, measured, when it was. */
  measured?: Length | undefined;
}

/** Why a count may be wrong. */
export type CountDoubt =
  /** The two ends were counted differently. */
  | { kind: 'ends-differ'; count: number; other: number }
  /** Count, pitch and length don't agree; the count that would, where any does. */
  | {
      kind: 'length-differs';
      expected: ExactLength;
      measured: Length;
      likelier: number | undefined;
    };

export interface Counted {
  count: number;
  centre: HolePlace;
  /** Ends of the 2, 4 and 8 equal parts, by eighths: index 0 is 1/8, 3 the centre. */
  eighths: readonly HolePlace[];
  /** From first to last hole at the pitch given. */
  length: ExactLength | undefined;
  doubts: readonly CountDoubt[];
  /** The holes as marks from the first, when the pitch is known. */
  run: Run | undefined;
}

/**
 * The middle of a row of holes by counting: of n holes hole (n + 1)/2 when n is
 * odd, otherwise between n/2 and n/2 + 1; quarters and eighths likewise at
 * 1 + (n − 1)·k/8. A count is doubted when the two ends differ, or when pitch and
 * measured length are half a pitch or more apart from it (derived here).
 *
 * Problems: fewer than two holes, more than 2,000, no whole number, a pitch or a
 * length of nothing, a row longer than any.
 */
export function centreByCount(input: CountInput): Outcome<Counted> {
  return answerUnless(countProblems(input), () => {
    const { count, pitch } = input;
    const eighths = Array.from({ length: 7 }, (_, i) => placeAt(count, i + 1));
    return {
      ok: true,
      value: {
        count,
        centre: middleOf(count),
        eighths,
        length: pitch === undefined ? undefined : exactLength((count - 1) * pitch),
        doubts: doubtsOf(input),
        run: pitch === undefined ? undefined : holeRun(count, pitch),
      },
    };
  });
}

function doubtsOf({ count, other, pitch, measured }: CountInput): CountDoubt[] {
  const doubts: CountDoubt[] = [];
  if (other !== undefined && other !== count) doubts.push({ kind: 'ends-differ', count, other });
  if (pitch !== undefined && measured !== undefined) {
    const expected = exactLength((count - 1) * pitch);
    const off = (measured - expected) / pitch;
    if (Math.abs(off) >= 0.5) {
      // Rounded away from the count: midway it is another one that is likelier, not the same.
      const holes = count + Math.sign(off) * Math.round(Math.abs(off));
      const likelier = holesProblems('count', holes).length === 0 ? holes : undefined;
      doubts.push({ kind: 'length-differs', expected, measured, likelier });
    }
  }
  return doubts;
}

function countProblems({ count, other, pitch, measured }: CountInput): Problem[] {
  const alone = [
    ...holesProblems('count', count),
    ...(other === undefined ? [] : holesProblems('other', other)),
    ...mustBePositiveIfGiven('pitch', pitch),
    ...mustBePositiveIfGiven('measured', measured),
  ];
  if (alone.length > 0 || pitch === undefined) return alone;
  const most = exactLength(LONGEST / (count - 1));
  return pitch > most ? [{ kind: 'too-long', field: 'pitch', most, given: pitch }] : [];
}

function holesProblems(field: string, given: number): Problem[] {
  return mustBeCount(field, given, 2, MOST_HOLES);
}
