import { upToGraduation } from '../../lengths/graduation.ts';
import { exactLength, LONGEST, length } from '../../lengths/length.ts';
import { type Material, type Price, WHOLE } from '../record/material.ts';

/**
 * What is to be had for so much to be left: with what is spare, and before it shrinks. Cloth that
 * loses a share s of its length is bought at L/(1 − s), not at L(1 + s). Lengths in 1/8000 mm.
 *
 * Source: derived; 3 yd at 5 % are 3.158, 4 yd at 10 % are 4.444.
 */
export function withSpare(net: number, { spare = 0, shrinksAlong = 0 }: Material): number {
  return (net * (WHOLE + spare)) / (WHOLE - shrinksAlong);
}

/** How wide cloth is once it is washed. */
export function washedWidth(width: number, { shrinksAcross = 0 }: Material): number {
  return (width * (WHOLE - shrinksAcross)) / WHOLE;
}

/**
 * What is bought: up to whole numbers, and up to what the shop sells. Never to the nearest: 1 1/4 yd
 * sold by 10 cm are 1.2 m, where a printed envelope has 1.1 and is 4 cm short.
 *
 * @param unit so long or so many; undefined where it is sold as it comes
 * @returns a whole number of 1/8000 mm, or of things; undefined where it is more than can be reckoned
 */
export function upToUnit(amount: number, unit = 1): number | undefined {
  const most = amount + unit;
  if (!(most <= 2 * LONGEST)) return undefined;
  return upToGraduation(exactLength(amount), length(unit));
}

/** What so much costs, in whole hundredths and never less than it does. */
export function costOf(amount: number, { cents, per }: Price): number {
  const over = BigInt(cents) * BigInt(amount);
  const under = BigInt(per);
  return Number((over + under - 1n) / under);
}
