import { mmPerUnit, type TapeUnit } from '../graduations/tape-unit.ts';
import {
  CM_DIGITS,
  CM_ZONE,
  CM_ZONE_FAR,
  CM_ZONE_WITH_DIGITS,
  FAR_INCHES,
  FAR_NUMBERS,
  HALVES_DIGITS,
} from './limits.ts';

/** What a scale counts in. */
export interface ScaleUnit {
  readonly unit: TapeUnit;
  /** Nothing else fits; else the person is to be asked. */
  readonly sure: boolean;
  /** Millimetres from one printed number to the next. */
  readonly mmPerNumber: number;
}

/**
 * What a scale with `subdivisions` graduations per number counts in, if its numbers rise by
 * `step`; null if no tape or rule is printed like that.
 *
 * @param digitShare height of the digits as a share of the distance between numbers.
 * @param zoneTicks length of the shortest lines in graduations.
 */
export function unitOf(
  subdivisions: number,
  step: number,
  digitShare: number,
  zoneTicks: number,
): ScaleUnit | null {
  const scale = (unit: TapeUnit, sure: boolean, mmPerNumber: number) => ({
    unit,
    sure,
    mmPerNumber,
  });
  switch (`${step}/${subdivisions}`) {
    case '1/4':
    case '1/8':
    case '1/16':
    case '1/32':
    case '1/64':
      return scale('inch', true, mmPerUnit.inch);
    case '1/10':
      return scale('cm', sureCentimetres(digitShare, zoneTicks), 10);
    case '1/20':
      return scale('cm', digitShare > HALVES_DIGITS, 10);
    case '1/2':
    case '1/5':
      return scale('cm', false, 10);
    case '10/10':
      // Ten lines from 10 to 20: millimetres on a rule, but centimetres on a stake.
      return scale('mm', false, 10);
    case '10/20':
      return scale('mm', true, 10);
    case '10/100':
      return scale('cm', true, 100);
    case '10/2':
    case '10/5':
      return scale('mm', false, 10);
    case '5/50':
      return scale('cm', true, 50);
    case '2/20':
      return scale('cm', false, 20);
    case '2/16':
    case '2/32':
      return scale('inch', true, 2 * mmPerUnit.inch);
    default:
      return null;
  }
}

/**
 * Ten graduations a number: centimetres, not inches in tenths? Tenths of an inch are 2.5 times as
 * wide, and print is much the same size, so that their short lines and digits look small.
 * The limits have no source: they part the two on photographs of tapes and rules.
 */
export function sureCentimetres(digitShare: number, zoneTicks: number): boolean {
  return zoneTicks > CM_ZONE || (digitShare > CM_DIGITS && zoneTicks > CM_ZONE_WITH_DIGITS);
}

/**
 * Ten graduations a number, and so many numbers so far on that no rule in tenths of an inch is as long,
 * on short lines that would be longer than those of such a rule, too: two signs that are weak alone.
 */
export function tooFarForTenths(values: Iterable<number>, zoneTicks: number): boolean {
  const different = new Set(values);
  return (
    different.size >= FAR_NUMBERS && Math.max(...different) > FAR_INCHES && zoneTicks > CM_ZONE_FAR
  );
}
