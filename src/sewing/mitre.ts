import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import { mustBePositive } from './length-checks.ts';
import { answerUnless, type Outcome, refused } from './problem.ts';
import { MITRE_TRIM } from './sources/hems.ts';

/** Corners sharper or blunter than this are not mitred. Ours, no source. */
const SHARPEST = 20;
const BLUNTEST = 160;

/** A corner of two hems: where to mark the raw edges, from the raw corner. */
export interface Mitre {
  side: Length;
  /** Along the bottom edge. */
  alongBottom: ExactLength;
  /** Up the side edge. */
  upSide: ExactLength;
  /** How far outside the stitching to trim. */
  trim: Length;
}

/**
 * The mitre of two hems of unequal depth whose fold lines meet at an angle.
 *
 * With depth a at the bottom, b at the side and the angle φ: the marks are
 * 2(b + a·cos φ)/sin φ along the bottom and 2(a + b·cos φ)/sin φ up the side; at
 * a right angle 2b and 2a. The marks are laid on each other and the seam runs
 * from them to the finished corner. Derived here; with double turns, measure
 * after the first turns are pressed.
 *
 * @param angle between the fold lines, in degrees, 20 to 160
 * Source of the trim: Hand Sewing Lessons, model 7; McGlauflin, Handicraft for Girls.
 */
export function mitre(bottom: Length, side: Length, angle: number): Outcome<Mitre> {
  if (!(angle >= SHARPEST && angle <= BLUNTEST)) {
    const range = { least: SHARPEST, most: BLUNTEST };
    return refused({ kind: 'out-of-range', field: 'angle', given: angle, ...range });
  }
  const problems = [...mustBePositive('depth', bottom), ...mustBePositive('side', side)];
  return answerUnless(problems, () => {
    const sine = Math.sin((angle * Math.PI) / 180);
    const cosine = Math.cos((angle * Math.PI) / 180);
    const alongBottom = (side + bottom * cosine) / sine;
    const upSide = (bottom + side * cosine) / sine;
    if (alongBottom <= 0 || upSide <= 0) {
      // On so blunt a corner the deeper hem passes the other one's end.
      const most = exactLength(-Math.min(bottom, side) / cosine);
      const [field, given] =
        bottom > side ? (['depth', bottom] as const) : (['side', side] as const);
      return refused({ kind: 'too-long', field, most, given });
    }
    return {
      ok: true,
      value: {
        side,
        alongBottom: exactLength(2 * alongBottom),
        upSide: exactLength(2 * upSide),
        trim: MITRE_TRIM.value,
      },
    };
  });
}
