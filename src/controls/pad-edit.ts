import type { Bench } from '../calculation/bench.ts';
import { STEP } from '../lengths/graduation.ts';
import { length } from '../lengths/length.ts';
import { readLength } from '../lengths/read-length.ts';
import { type Shown, showExact, shownText } from '../lengths/show-length.ts';
import type { BenchUnit } from '../lengths/unit.ts';

/**
 * What each pad key does to the text of a field.
 *
 * Every key edits the last number of the text and nothing before it, so a sum
 * keeps what was typed. A key that would make no sense there does nothing.
 */

/**
 * The last number of a text, what stands before it, and the unit written after it. How sure it
 * was when it was read off a photo (`± 0.2`) is left out: once changed it is so no longer.
 */
export interface Tail {
  head: string;
  number: string;
  unit: string;
}

const TAIL =
  /^(?<head>(?:.*[+−×÷;(]\s?|.*\))?)(?<number>[\d.,/⁄\s¼½¾⅐-⅞-]*?)(?: ± ?[\d.,]+)?(?<unit>\s*(?:mm|cm|m|in|ft|yd|L)?)$/u;

/** More than any sum at the bench: only an address holds such a text, and TAIL would be slow on it. */
const LONGEST = 999;

/** Splits a text before its last number; a text of another shape is all head. */
export function tailOf(text: string): Tail {
  const found = text.length > LONGEST ? undefined : TAIL.exec(text)?.groups;
  return { head: text, number: '', unit: '', ...found };
}

/** The text of its parts; nothing but a unit is added to a closed bracket. */
export function join({ head, number, unit }: Tail): string {
  const added = head.endsWith(')') ? '' : number;
  const apart = added !== '' && unit !== '' ? ` ${unit.trim()}` : unit;
  return `${head}${added}${apart}`;
}

/** A denominator already complete on a tape: another digit after it is a slip. */
const COMPLETE = /\/(?:2|4|8|16|32|64)$/;

/** Puts a digit at the end of the last number. */
export function typeDigit(text: string, digit: string): string {
  const tail = tailOf(text);
  if (COMPLETE.test(tail.number)) return text;
  return join({ ...tail, number: tail.number + digit });
}

/** Puts the decimal mark in, once, and never into a fraction. */
export function typePoint(text: string, mark: '.' | ','): string {
  const tail = tailOf(text);
  if (/[.,/]/.test(tail.number)) return text;
  return join({ ...tail, number: tail.number + mark });
}

/** Puts a fraction stroke after a whole number. */
export function typeStroke(text: string): string {
  const tail = tailOf(text);
  return /(?:^|\s)\d+$/.test(tail.number) ? join({ ...tail, number: `${tail.number}/` }) : text;
}

/** Puts an operator after a finished number; a second one replaces the first. */
export function typeOperator(text: string, operator: '+' | '−' | '×' | '÷'): string {
  const base = text
    .trimEnd()
    .replace(/[+−×÷]$/u, '')
    .trimEnd();
  return /(^|\()$/.test(base) ? base : `${base} ${operator} `;
}

/**
 * Opens a bracket where a number may begin, closes an open one, and otherwise puts what
 * has been typed in brackets, a sum that is to be divided as a whole; a list is left alone.
 */
export function typeBracket(text: string): string {
  const base = text.trimEnd();
  if (/(^|[+−×÷;(])$/u.test(base)) return `${text}(`;
  if (base.split('(').length > base.split(')').length) return `${base})`;
  return base.includes(';') ? text : `(${base})`;
}

/** Puts a separator in a list of lengths. */
export function typeSeparator(text: string): string {
  const base = text.trimEnd();
  return base === '' || base.endsWith(';') ? text : `${base}; `;
}

/** Writes the unit after the last number, or takes it off when it stands there. */
export function typeUnit(text: string, unit: string): string {
  const tail = tailOf(text);
  return join({ ...tail, unit: tail.unit.trim() === unit ? '' : ` ${unit}` });
}

/** Takes off the last thing typed: of the number first, then its unit, then what stands before. */
export function erase(text: string): string {
  const tail = tailOf(text);
  if (tail.number !== '') {
    return join({ ...tail, number: tail.number.slice(0, -1).trimEnd() });
  }
  if (tail.unit !== '') return join({ ...tail, unit: '' });
  return text.trimEnd().slice(0, -1).trimEnd();
}

/**
 * Adds sixteenths of an inch to the last number, as a reduced mixed number.
 * `1` and ten sixteenths make `1 5/8`; a number that is no tape fraction is left alone.
 */
export function typeSixteenths(text: string, sixteenths: number): string {
  const tail = tailOf(text);
  const have = readLength(tail.number.trim() || '0', 'in');
  if (!have.ok || have.value % STEP['1/32in'] !== 0) return text;
  const sum = length(have.value + sixteenths * STEP['1/16in']);
  return join({ ...tail, number: withoutUnit(showExact(sum, 'in'), '.') });
}

/** A length as it is typed before its unit. */
export function withoutUnit(shown: Shown, mark: Bench['decimalMark']): string {
  return shownText(shown, mark).replace(/\s*[a-z]+$/, '');
}

/** The unit the last number is in: the one written after it, or the field's own. */
export function unitOfTail(text: string, bare: BenchUnit): string {
  return tailOf(text).unit.trim() || bare;
}
