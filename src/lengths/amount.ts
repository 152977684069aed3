import { type Cursor, fail, last, peek, take } from './cursor.ts';
import { plus, type Rational } from './rational.ts';
import type { Token } from './tokens.ts';

/** Always a minus, whatever stands beside it; hyphens and dashes may join instead. */
const TRUE_MINUS = '−';
const EN_DASH = '–';

/**
 * Reads one number without its unit: `12`, `12.5`, `12,5`, `5/8`, `⅝`, `1 5/8`,
 * `1-5/8`, `1⅝`.
 */
export function amount(at: Cursor): Rational {
  const first = peek(at);
  if (startsFraction(at)) return fraction(at);
  if (first.kind !== 'number') return missing(at);
  take(at);
  const whole = decimal(at, first);
  if (!isWhole(first)) return whole;

  const dash = peek(at);
  if (!mayJoin(dash) || !startsFraction(at, 1)) {
    return startsFraction(at) ? mixed(at, first, whole, fraction(at)) : whole;
  }
  const spacedAfter = peek(at, 1).spaced;
  if (dash.spaced && spacedAfter) return whole;
  take(at);
  const part = fraction(at);
  // An en dash is neither the hyphen of a mixed number nor surely a minus.
  const unclear = dash.spaced || spacedAfter || dash.text === EN_DASH;
  return unclear ? fail(at, 'hyphen-unclear', first, last(at)) : mixed(at, first, whole, part);
}

/** Whether a piece is a hyphen or a dash, which between numbers may join or take away. */
export function mayJoin(token: Token): boolean {
  return token.kind === 'minus' && token.text !== TRUE_MINUS;
}

function startsFraction(at: Cursor, ahead = 0): boolean {
  const { kind } = peek(at, ahead);
  return kind === 'vulgar' || (kind === 'number' && peek(at, ahead + 1).kind === 'slash');
}

function mixed(at: Cursor, first: Token, whole: Rational, part: Rational): Rational {
  if (part.over >= part.under) return fail(at, 'improper-mixed', first, last(at));
  return plus(whole, part);
}

function fraction(at: Cursor): Rational {
  const first = take(at);
  if (first.kind === 'vulgar') return vulgar(first);
  const over = decimal(at, first);
  const slash = take(at);
  const second = peek(at);
  if (second.kind === 'vulgar' || second.kind === 'open') {
    return fail(at, 'fraction-of-other', first, second);
  }
  if (second.kind !== 'number') return fail(at, 'unfinished', first, slash);
  take(at);
  const under = decimal(at, second);
  if (!isWhole(first) || !isWhole(second)) return fail(at, 'fraction-of-decimals', first, second);
  if (under.over === 0n) return fail(at, 'zero-denominator', first, second);
  return { over: over.over, under: under.over };
}

/** Unicode itself says what a vulgar fraction is made of: ⅝ is 5, U+2044, 8. */
function vulgar(token: Token): Rational {
  const [over = '', under = ''] = token.text.normalize('NFKD').split('⁄');
  return { over: BigInt(over), under: BigInt(under) };
}

/** A number with at most one decimal mark, point or comma, at either end too: `.5`, `12.`. */
function decimal(at: Cursor, token: Token): Rational {
  const [whole = '', part = '', ...more] = token.text.split(/[.,]/);
  if (more.length > 0) return fail(at, 'two-decimal-marks', token);
  if (mayBeThousands(token.text, at.mark)) return fail(at, 'thousands-unclear', token);
  if (whole + part === '') return fail(at, 'unfinished', token);
  return { over: BigInt(whole + part), under: 10n ** BigInt(part.length) };
}

/**
 * Whether a number may be of grouped thousands: up to three digits, the first no nought,
 * a mark, and exactly three digits. Such a number is asked about where the mark is not
 * the one chosen for decimals (`1,375` where it is the point), and always where it ends
 * in a nought, as round thousands do and decimals hardly ever: `1,000`, `2.500`. So
 * `0.125`, `12,5`, `1.25` and, where the point is chosen, `15.875` are decimals.
 *
 * No source: ISO 80000-1 allows either mark for decimals and groups by spaces; both
 * marks are in use for thousands.
 */
function mayBeThousands(text: string, mark: string | undefined): boolean {
  const [, between, last] = /^[1-9]\d{0,2}([.,])\d\d(\d)$/.exec(text) ?? [];
  return last === '0' || Boolean(mark && between && between !== mark);
}

function isWhole(token: Token): boolean {
  return /^\d+$/.test(token.text);
}

function missing(at: Cursor): Rational {
  const token = peek(at);
  if (token.kind === 'end') return fail(at, 'unfinished', last(at));
  return fail(at, token.kind === 'unit' ? 'unfinished' : 'not-understood', token);
}
