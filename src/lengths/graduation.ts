import { type ExactLength, type Length, length, settled } from './length.ts';

/** The smallest divisions a tape in hand may have, largest first in each system. */
export const METRIC_GRADUATIONS = ['1mm', '0.5mm'] as const;
export const INCH_GRADUATIONS = ['1/8in', '1/16in', '1/32in'] as const;

export type MetricGraduation = (typeof METRIC_GRADUATIONS)[number];
export type InchGraduation = (typeof INCH_GRADUATIONS)[number];
export type Graduation = MetricGraduation | InchGraduation;

/** The length of each graduation. */
export const STEP: Readonly<Record<Graduation, Length>> = {
  '1mm': length(8000),
  '0.5mm': length(4000),
  '1/8in': length(25_400),
  '1/16in': length(12_700),
  '1/32in': length(6350),
};

/**
 * The graduation nearest to an exact length; midway goes to the even one.
 *
 * Source of the rule for midway: NIST Handbook 44 (2007) §10.3, "nearest mark,
 * exactly midway to the even one".
 */
export function toGraduation(exact: ExactLength, step: Length): Length {
  const steps = settled(exact) / step;
  const below = Math.floor(steps);
  const part = steps - below;
  const up = part > 0.5 || (part === 0.5 && below % 2 !== 0);
  return length((below + (up ? 1 : 0)) * step);
}

/**
 * The last graduation that is no more than an exact length: for what is "at most".
 * What is on a graduation but for the noise of dividing is on it.
 */
export function downToGraduation(exact: ExactLength, step: Length): Length {
  return length(Math.floor(settled(exact) / step) * step);
}

/**
 * The first graduation that is no less than an exact length: for what is "at least",
 * to cut or to buy. What is on a graduation but for the noise of dividing is on it.
 */
export function upToGraduation(exact: ExactLength, step: Length): Length {
  return length(Math.ceil(settled(exact) / step) * step);
}
