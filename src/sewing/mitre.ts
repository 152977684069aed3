import { type ExactLength, exactLength, type Length, settled } from '../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from './length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from './problem.ts';
import type { Mark, Run } from './run.ts';
import { MITRE_TRIM } from './sources/hems.ts';

/** Corners sharper or blunter than this are not mitred. Ours, no source. */
const SHARPEST = 20;
const BLUNTEST = 160;

export interface MitreInput {
  /** Of the hem at the bottom, finished. */
  depth: Length;
  /** Of the hem at the side, finished. */
  side: Length;
  /** Between the fold lines, in degrees, 20 to 160. */
  angle: number;
  /** From the inner edge of both hems to their stitching. */
  edgeStitch: Length;
}

/** A corner of two hems: where to mark the raw edges, from the raw corner. */
export interface Mitre {
  /** Along the bottom edge. */
  alongBottom: ExactLength;
  /** Up the side edge. */
  upSide: ExactLength;
  /** Both raw edges from the raw corner: where the other hem folds, and the mark. */
  runs: { bottom: Run; side: Run };
  /** How far outside the stitching to trim. */
  trim: Length;
}

/**
 * The mitre of two hems of unequal depth whose fold lines meet at an angle.
 *
 * With depth a at the bottom, b at the side and the angle φ: the marks are
 * 2(b + a·cos φ)/sin φ along the bottom and 2(a + b·cos φ)/sin φ up the side; at
 * a right angle 2b and 2a. The marks are laid on each other and the seam runs
 * from them to the finished corner. The side's fold line leaves the bottom edge
 * b/sin φ from the raw corner, the bottom's leaves the side a/sin φ from it.
 * Derived here; with double turns, measure after the first turns are pressed.
 *
 * Problems: an angle out of range, nothing or less in a depth, stitching beyond a
 * hem's depth, and on a blunt corner a hem so deep that it passes the other one's end.
 *
 * Source of the trim: Hand Sewing Lessons, model 7; McGlauflin, Handicraft for Girls.
 */
export function mitre(input: MitreInput): Outcome<Mitre> {
  return answerUnless(mitreProblems(input), () => {
    const { depth: bottom, side, angle } = input;
    const sine = Math.sin((angle * Math.PI) / 180);
    const cosine = Math.cos((angle * Math.PI) / 180);
    const alongBottom = (2 * (side + bottom * cosine)) / sine;
    const upSide = (2 * (bottom + side * cosine)) / sine;
    if (alongBottom <= 0 || upSide <= 0) {
      const under = exactLength(-Math.min(bottom, side) / cosine);
      const [field, given] =
        bottom > side ? (['depth', bottom] as const) : (['side', side] as const);
      return refused({ kind: 'not-under', field, under, given });
    }
    return {
      ok: true,
      value: {
        alongBottom: place(alongBottom),
        upSide: place(upSide),
        runs: {
          bottom: edgeRun(place(side / sine), place(alongBottom)),
          side: edgeRun(place(bottom / sine), place(upSide)),
        },
        trim: MITRE_TRIM.value,
      },
    };
  });
}

/** Sine and cosine of a right angle leave a little that is no length. */
function place(units: number): ExactLength {
  return settled(exactLength(units));
}

/** On a blunt corner the mark may come before the fold. */
function edgeRun(fold: ExactLength, mitreMark: ExactLength): Run {
  const places = [
    { at: fold, kind: 'press' },
    { at: mitreMark, kind: 'mitre' },
  ] as const;
  const marks = [...places]
    .sort((one, other) => one.at - other.at)
    .map((place, i): Mark => ({ ...place, label: String(i + 1) }));
  return { datum: 'raw-corner', length: Math.ceil(Math.max(fold, mitreMark)) as Length, marks };
}

function mitreProblems({ depth, side, angle, edgeStitch }: MitreInput): Problem[] {
  const alone = [
    ...mustBePositive('depth', depth),
    ...mustBePositive('side', side),
    ...mustNotBeNegative('edgeStitch', edgeStitch),
  ];
  if (!(angle >= SHARPEST && angle <= BLUNTEST)) {
    const range = { least: SHARPEST, most: BLUNTEST };
    alone.push({ kind: 'out-of-range', field: 'angle', given: angle, ...range });
  }
  if (alone.length > 0) return alone;
  const under = Math.min(depth, side) as Length;
  return edgeStitch >= under
    ? [{ kind: 'not-under', field: 'edgeStitch', under, given: edgeStitch }]
    : [];
}
