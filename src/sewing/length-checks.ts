import { type ExactLength, type Length, LONGEST } from '../lengths/length.ts';
import type { Problem } from './problem.ts';

/** What is wrong with a length that must be more than nothing. */
export function mustBePositive(field: string, given: Length): Problem[] {
  return given <= 0 ? [{ kind: 'not-positive', field, given }] : mustNotBeTooLong(field, given);
}

/** The same of a length that may be left out. */
export function mustBePositiveIfGiven(field: string, given: Length | undefined): Problem[] {
  return given === undefined ? [] : mustBePositive(field, given);
}

/** What is wrong with a length that may be nothing but not less. */
export function mustNotBeNegative(field: string, given: Length): Problem[] {
  return given < 0 ? [{ kind: 'negative', field, given }] : mustNotBeTooLong(field, given);
}

/** What is wrong with a number that must be whole, from the least to the most. */
export function mustBeCount(field: string, given: number, least: number, most: number): Problem[] {
  if (!Number.isInteger(given)) return [{ kind: 'not-whole', field, given }];
  if (given < least) return [{ kind: 'too-few', field, least, most, given }];
  return given > most ? [{ kind: 'too-many', field, least, most, given }] : [];
}

/** What is wrong with a length that must be from the least to the most. */
export function mustBeWithin(
  field: string,
  given: Length,
  least: ExactLength,
  most: ExactLength,
): Problem[] {
  if (given < least) return [{ kind: 'too-short', field, least, most, given }];
  return given > most ? [{ kind: 'too-long', field, least, most, given }] : [];
}

/** Above `LONGEST` the sums would no longer be exact. */
function mustNotBeTooLong(field: string, given: Length): Problem[] {
  return given > LONGEST ? [{ kind: 'too-long', field, most: LONGEST, given }] : [];
}
