/**
 * Lengths as whole numbers of 1/8000 mm.
 *
 * That step holds both tapes exactly: a thousandth of a millimetre is 8 units,
 * a sixty-fourth of an inch 3175, a button line 5080. Adding and subtracting
 * lengths never leaves a stray fraction.
 */

declare const measure: unique symbol;
declare const whole: unique symbol;

/**
 * A length in 1/8000 mm that may hold a fraction of a unit: what is left when
 * a length has been divided. Nothing rounds it before it is shown or marked.
 */
export type ExactLength = number & { readonly [measure]: 'length' };

/** A length that is a whole number of 1/8000 mm: everything typed or marked. */
export type Length = ExactLength & { readonly [whole]: true };

/** Units in one millimetre. */
export const UNITS_PER_MM = 8000;

/**
 * Units in one inch: 25.4 × 8000.
 *
 * Source: one inch is 25.4 mm, from one yard = 0.9144 m exactly since 1 July
 * 1959 (US National Bureau of Standards, Circular 572, addendum of 22 Jan 1960).
 */
export const UNITS_PER_INCH = 203_200;

/** The longest length the app takes: one kilometre. Sums stay exact below it. */
export const LONGEST = (1_000_000 * UNITS_PER_MM) as Length;

/** No length at all. */
export const ZERO = 0 as Length;

/**
 * A whole number of units as a length.
 * @throws RangeError when `units` is not a whole number: that is a bug, not input.
 */
export function length(units: number): Length {
  if (!Number.isSafeInteger(units)) {
    throw new RangeError(`not a length: ${units}`);
  }
  return (units + 0) as Length; // + 0 turns −0 into 0
}

/**
 * Units with a fraction as an exact length.
 * @throws RangeError when `units` is not finite.
 */
export function exactLength(units: number): ExactLength {
  if (!Number.isFinite(units)) throw new RangeError(`not a length: ${units}`);
  return (units + 0) as ExactLength;
}

/**
 * The same length without the noise a division leaves in a `number`: seven
 * sevenths of a length are that length again. Noise is under a hundred-thousandth
 * of a unit; what is left of a true division by a count is never so small.
 */
export function settled(value: ExactLength): ExactLength {
  const half = Math.round(2 * value) / 2; // halves too: midway between odd steps
  return exactLength(Math.abs(value - half) < 1e-5 ? half : value);
}

/** Millimetres as the nearest length. `mm(12.5)` is 1.25 cm. */
export function mm(millimetres: number): Length {
  return length(Math.round(millimetres * UNITS_PER_MM));
}

/** Inches as the nearest length. `inches(1.375)` is 1 3/8 in. */
export function inches(value: number): Length {
  return length(Math.round(value * UNITS_PER_INCH));
}

/** A length as a plain number of millimetres, for drawing. */
export function toMm(value: ExactLength): number {
  return value / UNITS_PER_MM;
}

/** A length as a plain number of inches. */
export function toInches(value: ExactLength): number {
  return value / UNITS_PER_INCH;
}
