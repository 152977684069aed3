import { type ExactLength, exactLength, type Length, settled, ZERO } from '../../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import type { Mark, Run } from '../run.ts';
import { MITRE_TRIM } from '../sources/mitres.ts';
import { foldShare, thickestFor } from './hem-folds.ts';

/** Corners sharper or blunter than this are not mitred. Ours, no source. */
const SHARPEST = 20;
const BLUNTEST = 160;

/** Layers inside the fold at the hem line. */
const LAYERS = { once: 0, twice: 0, equal: 1 } as const;

export interface MitreInput {
  /** Of the hem at the bottom, finished. */
  depth: Length;
  /** Of the hem at the side, finished. */
  side: Length;
  /** Between the fold lines, in degrees, 20 to 160. */
  angle: number;
  /** From the inner edge of both hems to their stitching. */
  edgeStitch: Length;
  /** Of the cloth, when it is to be reckoned with. */
  thickness: Length;
  /** How both hems are turned; equal is twice, the first turn as deep as the hem. */
  turned: 'once' | 'twice' | 'equal';
}

/** A corner of two hems: where to mark the raw edges, from the raw corner. */
export interface Mitre {
  /** Along the bottom edge. */
  alongBottom: ExactLength;
  /** Up the side edge. */
  upSide: ExactLength;
  /** From each raw edge (or first fold) to its fold line: the depth, and half of what the fold adds. */
  foldLines: { bottom: ExactLength; side: ExactLength };
  /** What half the last fold adds, for the thickness of the cloth. */
  halfFold: ExactLength;
  /** Both raw edges from the raw corner: where the other hem folds, and the mark. */
  runs: { bottom: Run; side: Run };
  /** How far outside the stitching to trim. */
  trim: Length;
}

/**
 * The mitre of two hems of unequal depth whose fold lines meet at an angle.
 *
 * With a from the raw edge to the fold line at the bottom, b at the side (each the
 * depth, and half of what its fold adds for thick cloth) and the angle φ: the marks are
 * 2(b + a·cos φ)/sin φ along the bottom and 2(a + b·cos φ)/sin φ up the side; at
 * a right angle 2b and 2a. The marks are laid on each other and the seam runs
 * from them to the finished corner. The side's fold line leaves the bottom edge
 * b/sin φ from the raw corner, the bottom's leaves the side a/sin φ from it.
 * Derived here; with double turns, measure after the first turns are pressed.
 *
 * Problems: an angle out of range, nothing or less in a depth, stitching beyond a
 * hem's depth, cloth too thick to be folded so, and on a blunt corner a hem so deep that it passes the other one's end.
 *
 * Source of the trim: Hand Sewing Lessons, model 7; McGlauflin, Handicraft for Girls.
 */
export function mitre(input: MitreInput): Outcome<Mitre> {
  return answerUnless(mitreProblems(input), () => {
    const { angle } = input;
    const halfFold = exactLength(foldShare(input.thickness, LAYERS[input.turned]) / 2);
    const [bottom, side] = [input.depth + halfFold, input.side + halfFold];
    const sine = Math.sin((angle * Math.PI) / 180);
    const cosine = Math.cos((angle * Math.PI) / 180);
    const alongBottom = place((2 * (side + bottom * cosine)) / sine);
    const upSide = place((2 * (bottom + side * cosine)) / sine);
    if (alongBottom <= 0 || upSide <= 0) {
      const under = exactLength(-Math.min(bottom, side) / cosine - halfFold);
      const [field, given] =
        bottom > side ? (['depth', input.depth] as const) : (['side', input.side] as const);
      return refused({ kind: 'not-under', field, under, given });
    }
    return {
      ok: true,
      value: {
        ...{ alongBottom, upSide },
        foldLines: { bottom: exactLength(bottom), side: exactLength(side) },
        halfFold,
        runs: {
          bottom: edgeRun(place(side / sine), alongBottom),
          side: edgeRun(place(bottom / sine), upSide),
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

function mitreProblems({
  depth,
  side,
  angle,
  edgeStitch,
  thickness,
  turned,
}: MitreInput): Problem[] {
  const alone = [
    ...mustBePositive('depth', depth),
    ...mustBePositive('side', side),
    ...mustNotBeNegative('edgeStitch', edgeStitch),
    ...mustNotBeNegative('thickness', thickness),
  ];
  if (!(angle >= SHARPEST && angle <= BLUNTEST)) {
    const range = { least: SHARPEST, most: BLUNTEST };
    alone.push({ kind: 'out-of-range', field: 'angle', given: angle, ...range });
  }
  if (alone.length > 0) return alone;
  const under = Math.min(depth, side) as Length;
  if (edgeStitch >= under) {
    return [{ kind: 'not-under', field: 'edgeStitch', under, given: edgeStitch }];
  }
  const most = thickestFor(under, turned === 'once' ? ZERO : under);
  return thickness > most ? [{ kind: 'too-long', field: 'thickness', most, given: thickness }] : [];
}
