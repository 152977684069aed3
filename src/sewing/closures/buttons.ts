import {
  type ExactLength,
  exactLength,
  type Length,
  UNITS_PER_INCH,
} from '../../lengths/length.ts';
import { mustBePositive } from '../length-checks.ts';
import { answerUnless, type Outcome } from '../problem.ts';
import { COMMON_BUTTON_LINES, LINES_PER_INCH } from '../sources/sizes.ts';

/** A size buttons are sold in: its number of button lines (1/40 in) and its exact diameter. */
export interface ButtonSize {
  lines: number;
  diameter: Length;
}

/** The sizes commonly sold, smallest first. */
export const BUTTON_SIZES: readonly ButtonSize[] = COMMON_BUTTON_LINES.value.map((lines) => ({
  lines,
  diameter: ((lines * UNITS_PER_INCH) / LINES_PER_INCH.value) as Length,
}));

/** The size sold nearest to a diameter. */
export interface NearestButton {
  size: ButtonSize;
  /** How much wider than asked for the size is; less than nothing when narrower. */
  wider: ExactLength;
}

/** The common size nearest to a diameter; midway between two, the smaller. */
export function nearestButton(diameter: Length): Outcome<NearestButton> {
  return answerUnless(mustBePositive('diameter', diameter), () => {
    const off = (size: ButtonSize) => Math.abs(size.diameter - diameter);
    const size = BUTTON_SIZES.reduce((best, next) => (off(next) < off(best) ? next : best));
    return { ok: true, value: { size, wider: exactLength(size.diameter - diameter) } };
  });
}
