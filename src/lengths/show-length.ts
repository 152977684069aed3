import { toGraduation } from './graduation.ts';
import { type ExactLength, exactLength, type Length, settled, UNITS_PER_INCH } from './length.ts';
import { type BenchUnit, UNITS_PER } from './unit.ts';

/** A length in the parts it is written in, for the screen, for print and for speech alike. */
export interface Shown {
  readonly negative: boolean;
  /** Whole units. Empty when a fraction stands alone: `5/8`, not `0 5/8`. */
  readonly whole: string;
  /** Digits after the decimal mark; never ends in a nought. */
  readonly decimals?: string;
  /** A reduced fraction, less than one. */
  readonly fraction?: { readonly over: number; readonly under: number };
  readonly unit: BenchUnit;
  /** What is shown is not quite the length. */
  readonly rounded: boolean;
}

/** The prime that makes an inch an inch: every part of an inch on a tape has it, no mm does. */
const INCH_PRIME = 127;

const SIXTY_FOURTH = UNITS_PER_INCH / 64;

/** Decimals that tell neighbouring marks apart when the tape is of the other system. */
const PLACES: Readonly<Record<BenchUnit, number>> = { mm: 1, cm: 2, in: 2 };

/** Decimals that hold any whole number of 1/8000 mm to be shown in millimetres or centimetres. */
const ALL_PLACES = 6;

/**
 * A graduation of the tape, written in the maker's unit: as an inch fraction when
 * tape and unit are in inches, otherwise in decimals.
 *
 * @param step the tape's graduation
 * @param round which graduation: the nearest, unless `downToGraduation` ("at most") or
 *   `upToGraduation` ("at least", to buy) is given
 */
export function showOnTape(
  x: ExactLength,
  step: Length,
  unit: BenchUnit,
  round = toGraduation,
): Shown {
  const mark = round(x, step);
  const inches = step % INCH_PRIME === 0;
  if (inches && unit === 'in') return { ...inFraction(mark), rounded: settled(x) !== mark };
  const places = inches || unit === 'in' ? PLACES[unit] : ALL_PLACES;
  const shown = inDecimals(mark, unit, places);
  return { ...shown, rounded: shown.rounded || settled(x) !== mark };
}

/**
 * A length as exactly as can be: inches that are a whole number of 64ths as a
 * fraction, anything else in decimals, midway to the even digit.
 *
 * @param places most decimals, 0 to 6
 */
export function showExact(x: ExactLength, unit: BenchUnit, places = 4): Shown {
  const value = settled(x);
  if (unit === 'in' && value % SIXTY_FOURTH === 0) return inFraction(value);
  return inDecimals(value, unit, places);
}

/** What rounding to the graduation left out: the exact length less the one shown. */
export function remainder(x: ExactLength, step: Length): ExactLength {
  return exactLength(settled(x) - toGraduation(x, step));
}

/** The same as text: `1 5/8 in`, `15.4 cm`, `−3 mm`. `readLength` reads it back. */
export function shownText(shown: Shown, decimalMark: '.' | ','): string {
  const { fraction, decimals } = shown;
  const parts = [
    shown.whole + (decimals ? decimalMark + decimals : ''),
    fraction ? `${fraction.over}/${fraction.under}` : '',
    shown.unit,
  ];
  return (shown.negative ? '−' : '') + parts.filter((part) => part !== '').join(' ');
}

/** A plain number, a factor or a share, to the nearest with so many decimals at the most. */
export function shownNumber(value: number, places: number, decimalMark: '.' | ','): string {
  const scale = 10 ** places;
  return String(Math.round(value * scale) / scale).replace('.', decimalMark);
}

function inFraction(value: number): Shown {
  const size = Math.abs(value);
  const part = size % UNITS_PER_INCH;
  const whole = String((size - part) / UNITS_PER_INCH);
  const shown = { negative: value < 0, whole, unit: 'in', rounded: false } as const;
  if (part === 0) return shown;
  const shared = greatestShared(part, UNITS_PER_INCH);
  const fraction = { over: part / shared, under: UNITS_PER_INCH / shared };
  return { ...shown, whole: whole === '0' ? '' : whole, fraction };
}

function inDecimals(value: number, unit: BenchUnit, places: number): Shown {
  const scaled = Math.abs(value) * 10 ** places;
  const per = UNITS_PER[unit];
  const left = scaled % per; // exact, where scaled / per would not be
  const below = Math.round((scaled - left) / per);
  const up = 2 * left > per || (2 * left === per && below % 2 === 1);
  const digits = String(below + (up ? 1 : 0)).padStart(places + 1, '0');
  const cut = digits.length - places;
  const decimals = digits.slice(cut).replace(/0+$/, '');
  const negative = value < 0 && Number(digits) > 0;
  const shown = { negative, whole: digits.slice(0, cut), unit, rounded: left !== 0 };
  return decimals ? { ...shown, decimals } : shown;
}

function greatestShared(a: number, b: number): number {
  return b === 0 ? a : greatestShared(b, a % b);
}
