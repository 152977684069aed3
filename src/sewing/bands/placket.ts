import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome } from '../problem.ts';

/** An opening that is bound by strips. Lengths in 1/8000 mm. */
export interface PlacketInput {
  /** Of one strip round both edges, or of a lap and a facing. */
  way: 'lap' | 'strips';
  open: ExactLength;
  /** Finished, of the strip that is folded. */
  width: Length;
  seam: Length;
  /** Beyond each end of the opening. */
  extra: Length;
}

/** Strips as they are cut. */
export interface Placket {
  long: ExactLength;
  wide: ExactLength;
  /** The second strip, of the same length: single, turned under once. */
  facing?: ExactLength;
}

/**
 * Strips of an opening. One strip round both edges is 2 openings + 2 extras long; a lap and its facing are
 * one opening + 2 extras each. What is folded is 2 widths + 2 seams wide, a facing one width + 2 seams.
 *
 * Source: a sewing book of 1944 (`LAP_STRIP`, `TWO_STRIPS`) for lengths; widths are geometry.
 * Problems: an opening or width of nothing, a seam or extra below nothing.
 */
export function placket(input: PlacketInput): Outcome<Placket> {
  const { way, open, width, seam, extra } = input;
  const problems = [
    ...mustBePositive('width', width),
    ...mustNotBeNegative('seam', seam),
    ...mustNotBeNegative('extra', extra),
  ];
  return answerUnless(problems, () => {
    const openings = way === 'lap' ? 2 : 1;
    const one = {
      long: exactLength(openings * open + 2 * extra),
      wide: exactLength(2 * width + 2 * seam),
    };
    return {
      ok: true,
      value: way === 'lap' ? one : { ...one, facing: exactLength(width + 2 * seam) },
    };
  });
}
