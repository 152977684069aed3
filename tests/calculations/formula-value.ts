/**
 * An evaluator for formulas as they are shown, written only for tests: it knows
 * nothing of how the app works numbers out or writes them. Lengths are in mm.
 * Every number stands for all numbers that would be shown like it.
 */

/** From `lo` to `hi`, in mm to the power `dim`. */
export interface Span {
  lo: number;
  hi: number;
  dim: number;
}

const MM: Readonly<Record<string, number>> = { mm: 1, cm: 10, in: 25.4, m: 1000 };

/** Decimals a length is shown with when it needs them; fewer digits may be a rounded number too. */
const PLACES: Readonly<Record<string, number>> = { mm: 2, cm: 3, in: 3, m: 3 };

/** What is counted: a number before one of these is a plain number. */
const COUNTED =
  /^(?:spaces?|lines?|folds?|edges?|layers?|passes|pass|turns?|holes?|seams?|halves|parts?|strips?|rows?)\b/;

const NUMBER = /^(\d+) (\d+)\/(\d+)|^(\d+)\/(\d+)|^(\d+)(?:[.,](\d+))?/;

export class NotRead extends Error {}

/** Reads one formula's text from its start. */
class Reader {
  rest: string;
  private readonly isAnswer: boolean;

  /** @param isAnswer an answer is shown rounded even where it looks like a whole number */
  constructor(text: string, isAnswer: boolean) {
    this.rest = text;
    this.isAnswer = isAnswer;
  }

  sum(): Span {
    let value = this.product();
    for (;;) {
      if (this.take(/^ \+ /)) value = add(value, this.product());
      else if (this.take(/^ − /)) value = add(value, negative(this.product()));
      else return value;
    }
  }

  private product(): Span {
    let value = this.factor();
    for (;;) {
      if (this.take(/^ × /)) value = multiply(value, this.factor());
      else if (this.take(/^ ÷ /)) value = multiply(value, inverse(this.factor()));
      else return value;
    }
  }

  private factor(): Span {
    if (this.take(/^−/)) return negative(this.factor());
    const turned = this.take(/^(sin|cos) (\d+(?:[.,]\d+)?)°/);
    if (turned) {
      return turnedBy(turned[1] === 'sin' ? 0 : 90, turned[2] ?? '');
    }
    if (this.take(/^\(/)) {
      const value = this.sum();
      if (!this.take(/^\)/)) throw new NotRead(`no closing bracket before "${this.rest}"`);
      return value;
    }
    return this.number();
  }

  private number(): Span {
    const found = this.take(NUMBER);
    if (!found) throw new NotRead(`no number at "${this.rest}"`);
    const [, whole, over, under, over2, under2, digits, decimals] = found;
    const unit = this.take(/^ (mm|cm|in|m)\b/)?.[1];
    if (unit === undefined && this.take(/^ (?=\p{L})/u) && !this.take(COUNTED)) {
      this.rest = ` ${this.rest}`;
    }
    if (digits === undefined) {
      const part = Number(over ?? over2) / Number(under ?? under2);
      return scaled(exact(Number(whole ?? 0) + part), unit);
    }
    const value = Number(decimals === undefined ? digits : `${digits}.${decimals}`);
    if (unit !== undefined) {
      return scaled(within(value, Math.max(PLACES[unit] ?? 0, decimals?.length ?? 0)), unit);
    }
    if (this.take(/^ %/)) return scaled(within(value, decimals?.length ?? 1), undefined, 0.01);
    if (decimals !== undefined) return within(value, decimals.length);
    return this.isAnswer ? within(value, 2) : exact(value);
  }

  private take(what: RegExp): RegExpExecArray | null {
    const found = what.exec(this.rest);
    if (found) this.rest = this.rest.slice(found[0].length);
    return found;
  }
}

/** Both sides of one equation; what follows the answer has to be words alone. */
export function bothSides(equation: string): { left: Span; right: Span } {
  const [before = '', after = '', ...more] = equation.split(' = ');
  if (more.length > 0) throw new NotRead(`more than one = in "${equation}"`);
  const left = new Reader(before, false);
  const leftValue = left.sum();
  if (left.rest !== '') throw new NotRead(`"${left.rest}" is left of "${before}"`);
  const right = new Reader(after, true);
  const rightValue = right.sum();
  if (/[=×÷+−]/.test(right.rest) || /^[^\s.,;]/.test(right.rest)) {
    throw new NotRead(`"${right.rest}" is left of "${after}"`);
  }
  return { left: leftValue, right: rightValue };
}

/** The equations of a formula as shown: clauses with an equals sign, without a heading before a colon. */
export function equationsOf(formula: string): string[] {
  return formula
    .split(/; |\. |: /)
    .map((clause) => clause.replace(/\.$/, ''))
    .filter((clause) => clause.includes('='));
}

/** Whether some number that would be shown like the left is also shown like the right. */
export function agree({ left, right }: { left: Span; right: Span }): boolean {
  const noise = 1e-9 * Math.max(1, Math.abs(left.hi), Math.abs(right.hi));
  return left.dim === right.dim && left.lo <= right.hi + noise && right.lo <= left.hi + noise;
}

function exact(value: number): Span {
  return { lo: value, hi: value, dim: 0 };
}

function within(value: number, places: number): Span {
  const half = 0.5 * 10 ** -places;
  return { lo: value - half, hi: value + half, dim: 0 };
}

/** The sine of an angle in degrees turned on by some: one shown with decimals is rounded at the last. */
function turnedBy(on: number, shown: string): Span {
  const [value, decimals] = [Number(shown.replace(',', '.')), shown.split(/[.,]/)[1]];
  if (decimals === undefined) return exact(Math.sin(((value + on) * Math.PI) / 180));
  const { lo, hi } = within(value + on, decimals.length);
  const ends = [lo, hi].map((angle) => Math.sin((angle * Math.PI) / 180));
  const most = [90, 270, 450]
    .filter((turn) => lo < turn && turn < hi)
    .map((turn) => (turn === 270 ? -1 : 1));
  return { lo: Math.min(...ends, ...most), hi: Math.max(...ends, ...most), dim: 0 };
}

function scaled({ lo, hi, dim }: Span, unit: string | undefined, by = 1): Span {
  const factor = unit === undefined ? by : (MM[unit] ?? Number.NaN);
  return { lo: lo * factor, hi: hi * factor, dim: dim + (unit === undefined ? 0 : 1) };
}

function add(a: Span, b: Span): Span {
  if (a.dim !== b.dim) throw new NotRead('a length and a number are added');
  return { lo: a.lo + b.lo, hi: a.hi + b.hi, dim: a.dim };
}

function negative({ lo, hi, dim }: Span): Span {
  return { lo: 0 - hi, hi: 0 - lo, dim };
}

function multiply(a: Span, b: Span): Span {
  const all = [a.lo * b.lo, a.lo * b.hi, a.hi * b.lo, a.hi * b.hi];
  return { lo: Math.min(...all), hi: Math.max(...all), dim: a.dim + b.dim };
}

function inverse({ lo, hi, dim }: Span): Span {
  // A divisor shown as nothing may be any small number.
  if (lo <= 0 && hi >= 0) return { lo: -Infinity, hi: Infinity, dim: -dim };
  return { lo: 1 / hi, hi: 1 / lo, dim: -dim };
}
