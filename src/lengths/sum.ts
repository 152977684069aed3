import { amount, mayJoin } from './amount.ts';
import { type Cursor, fail, last, peek, startOf, take } from './cursor.ts';
import { inverse, NOUGHT, negative, plus, type Rational, times } from './rational.ts';
import type { Read } from './read-fault.ts';
import type { Token } from './tokens.ts';
import { UNITS_PER, type Unit } from './unit.ts';

/** The most characters one length or number may take; keeps exact arithmetic small. */
const MOST_TEXT = 200;

/** Within a row, a larger unit may be followed by a smaller one: `5 ft 3 in`. */
const COMPOUNDS: readonly (readonly Unit[])[] = [
  ['m', 'cm', 'mm'],
  ['yd', 'ft', 'in'],
];

/** A number, or a length in 1/8000 mm. */
interface Quantity {
  readonly value: Rational;
  readonly isLength: boolean;
}

/**
 * Reads a sum exactly: `12 3/8 in + 1.5 cm - 2 × 5/8 in`.
 *
 * @param bare the unit of a bare number; then the value is in 1/8000 mm.
 *   Without it the text is of plain numbers, and a unit is not understood.
 */
export function readSum(typed: string, bare?: Unit): Read<{ value: Rational }> {
  if (typed.length > MOST_TEXT) {
    const text = typed.slice(MOST_TEXT, 2 * MOST_TEXT);
    return { ok: false, fault: { kind: 'too-much-text', at: MOST_TEXT, text } };
  }
  const at = startOf(typed, bare !== undefined);
  if (peek(at).kind === 'end') return { ok: false, fault: { kind: 'empty', at: 0, text: '' } };
  const value = sum(at, unitsIn(bare));
  const rest = peek(at);
  if (rest.kind === 'slash') fail(at, 'fraction-of-other', rest);
  else if (rest.kind !== 'end') fail(at, 'not-understood', rest);
  return at.fault ? { ok: false, fault: at.fault } : { ok: true, value };
}

function sum(at: Cursor, scale: Rational): Rational {
  let total = NOUGHT;
  let sign = peek(at).kind === 'minus' ? take(at).kind : 'plus';
  for (;;) {
    const { value, isLength } = product(at);
    const one = isLength ? value : times(value, scale);
    total = plus(total, sign === 'minus' ? negative(one) : one);
    const { kind } = peek(at);
    if (at.fault || (kind !== 'plus' && kind !== 'minus')) return total;
    sign = take(at).kind;
  }
}

function product(at: Cursor): Quantity {
  let { value, isLength } = factor(at);
  while (!at.fault && (peek(at).kind === 'times' || peek(at).kind === 'divide')) {
    const sign = take(at);
    const by = factor(at);
    const refuse = (kind: 'length-times-length' | 'divide-by-length' | 'divide-by-zero') =>
      fail(at, kind, sign, last(at));
    if (sign.kind === 'times') {
      value = isLength && by.isLength ? refuse('length-times-length') : times(value, by.value);
      isLength ||= by.isLength;
    } else if (by.isLength) value = refuse('divide-by-length');
    else if (by.value.over === 0n) value = refuse('divide-by-zero');
    else value = times(value, inverse(by.value));
  }
  return { value, isLength };
}

/** A number, a length, or lengths that belong together: `5' 3 1/2"`, `1 m 20 cm`. */
function factor(at: Cursor): Quantity {
  let value = amount(at);
  let unit = peek(at).unit;
  if (!unit) return { value, isLength: false };
  take(at);
  value = times(value, unitsIn(unit));
  while (!at.fault && isNumber(at) && !isStop(peek(at))) {
    const first = peek(at);
    const more = amount(at);
    const smaller = peek(at).unit;
    if (smaller) take(at);
    if (!smaller || !mayFollow(unit, smaller)) fail(at, 'not-understood', first, last(at));
    else value = plus(value, times(more, unitsIn(smaller)));
    unit = smaller ?? unit;
  }
  if (unit === 'ft') refuseJoinedFeet(at);
  return { value, isLength: true };
}

/** On drawings `5'-3"` is five feet and three inches; in a sum it would be less. Ask. */
function refuseJoinedFeet(at: Cursor): void {
  const feet = last(at);
  const dash = peek(at);
  if (!mayJoin(dash) || !isNumber(at, 1) || (dash.spaced && peek(at, 1).spaced)) return;
  fail(at, 'hyphen-unclear', feet, peek(at, 1));
}

function isNumber(at: Cursor, ahead = 0): boolean {
  const { kind } = peek(at, ahead);
  return kind === 'number' || kind === 'vulgar';
}

/** `5 ft.5 in` could be five inches or half of one, and the point of `5 in.` means nothing. */
function isStop({ text, spaced }: Token): boolean {
  return !spaced && /^[.,]/.test(text);
}

function mayFollow(larger: Unit, smaller: Unit): boolean {
  return COMPOUNDS.some(
    (row) => row.includes(larger) && row.indexOf(smaller) > row.indexOf(larger),
  );
}

function unitsIn(unit: Unit | undefined): Rational {
  return { over: unit ? BigInt(UNITS_PER[unit]) : 1n, under: 1n };
}
