import { amount, mayJoin } from './amount.ts';
import { type Cursor, fail, last, peek, startOf, take } from './cursor.ts';
import { inverse, negative, plus, type Rational, times } from './rational.ts';
import type { Read, ReadFaultKind } from './read-fault.ts';
import type { Taken } from './taken.ts';
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
 * Reads a sum exactly: `12 3/8 in + 1.5 cm - 2 × (5/8 in + 2 mm)`.
 *
 * @param bare the unit of a bare number; then the value is in 1/8000 mm. Without it the
 *   text is of plain numbers, and a length is understood only where it is divided by one:
 *   `46.3 cm ÷ 8 mm`.
 * @param mark the mark chosen for decimals: the other one may group thousands
 * @param taken numbers taken from elsewhere, each where its letter stands (`letterOf`)
 */
export function readSum(
  typed: string,
  bare?: Unit,
  mark?: string,
  taken?: Taken,
): Read<{ value: Rational }> {
  if (typed.length > MOST_TEXT) {
    const text = typed.slice(MOST_TEXT, 2 * MOST_TEXT);
    return { ok: false, fault: { kind: 'too-much-text', at: MOST_TEXT, text } };
  }
  const at = startOf(typed, mark, taken);
  const first = peek(at);
  if (first.kind === 'end') return { ok: false, fault: { kind: 'empty', at: 0, text: '' } };
  const whole = sum(at, bare);
  const rest = peek(at);
  if (rest.kind === 'slash') fail(at, 'fraction-of-other', rest);
  else if (rest.kind !== 'end') fail(at, 'not-understood', rest);
  else if (!bare && whole.isLength) fail(at, 'length-for-number', first, last(at));
  return at.fault
    ? { ok: false, fault: at.fault }
    : { ok: true, value: bare ? inUnits(whole, bare) : whole.value };
}

function sum(at: Cursor, bare: Unit | undefined): Quantity {
  const first = peek(at);
  let total: Quantity | undefined;
  let sign = first.kind === 'minus' ? take(at).kind : 'plus';
  for (;;) {
    const term = product(at, bare);
    const one = sign === 'minus' ? { ...term, value: negative(term.value) } : term;
    total = total ? together(at, first, total, one, bare) : one;
    const { kind } = peek(at);
    if (at.fault || (kind !== 'plus' && kind !== 'minus')) return total;
    sign = take(at).kind;
  }
}

/** The sum of two. A bare number beside a length has the field's unit. */
function together(
  at: Cursor,
  first: Token,
  a: Quantity,
  b: Quantity,
  bare: Unit | undefined,
): Quantity {
  if (a.isLength === b.isLength) return { ...a, value: plus(a.value, b.value) };
  if (!bare) fail(at, 'length-for-number', first, last(at));
  return { value: plus(inUnits(a, bare), inUnits(b, bare)), isLength: true };
}

function inUnits({ value, isLength }: Quantity, bare: Unit | undefined): Rational {
  return isLength ? value : times(value, unitsIn(bare));
}

/** Factors and parts. How often one length goes into another is a number, where one is asked. */
function product(at: Cursor, bare: Unit | undefined): Quantity {
  let { value, isLength } = factor(at, bare);
  while (!at.fault && (peek(at).kind === 'times' || peek(at).kind === 'divide')) {
    const sign = take(at);
    const by = factor(at, bare);
    const refuse = (kind: ReadFaultKind) => fail(at, kind, sign, last(at));
    if (sign.kind === 'times') {
      if (isLength && by.isLength) refuse('length-times-length');
      value = times(value, by.value);
    } else if (by.isLength && (bare || !isLength)) refuse('divide-by-length');
    else if (by.value.over === 0n) refuse('divide-by-zero');
    else value = times(value, inverse(by.value));
    isLength = isLength !== by.isLength;
  }
  return { value, isLength };
}

/** A number, a length, lengths that belong together (`5' 3 1/2"`), or a sum in brackets. */
function factor(at: Cursor, bare: Unit | undefined): Quantity {
  const first = peek(at);
  if (first.kind === 'open') return bracket(at, bare);
  const taken = at.taken?.(first.text);
  if (taken && take(at)) return taken;
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

/** `(3 + 4)`, or of bare numbers with their unit behind: `(3 + 4) cm`. */
function bracket(at: Cursor, bare: Unit | undefined): Quantity {
  const open = take(at);
  const inside = sum(at, bare);
  const close = take(at);
  if (close.kind === 'end') fail(at, 'unfinished', open, peek(at, -2));
  else if (close.kind !== 'close') fail(at, 'not-understood', close);
  const { unit } = peek(at);
  if (!unit || inside.isLength) return inside;
  take(at);
  return { value: times(inside.value, unitsIn(unit)), isLength: true };
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
