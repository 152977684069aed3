import { handWords } from '#words/garment/garment-decision-words.ts';
import { type Bench, tapeStep } from '../../../calculation/bench.ts';
import type { Kind, Output, Step } from '../../../calculation/output.ts';
import { roundingOf } from '../../../calculation/step-rounding.ts';
import { exactly, onTape } from '../../../calculation/tape-text.ts';
import { upToGraduation } from '../../../lengths/graduation.ts';
import { exactLength, mm } from '../../../lengths/length.ts';
import { readLength } from '../../../lengths/read-length.ts';
import { shownNumber } from '../../../lengths/show-length.ts';

/** What says to which side a number is rounded. */
export type Rounded = Pick<Output, 'step' | 'bound'>;

/** Under this a space between marks is said in millimetres where the bench has centimetres. */
const SMALL = mm(10);

/** A number that is given, as exactly as it was said: lengths with their unit. */
export function valueText(kind: Kind, value: number, bench: Bench): string {
  if (kind === 'length' || kind === 'run') return exactly(exactLength(value), bench);
  return shownNumber(value, 3, bench.decimalMark);
}

/**
 * A number to decide by, as the tape in hand shows it: no tape of inches shows decimals. What is under
 * one graduation of it is said to be that.
 *
 * @param step that makes it, where one does: to whose side it is rounded
 */
export function handText(
  kind: Kind,
  value: number,
  bench: Bench,
  step?: Pick<Step, 'bound'>,
): string {
  const isLength = kind === 'length' || kind === 'run';
  if (!isLength || bench.unit !== 'in') return valueText(kind, value, bench);
  const [at, graduation, round] = [exactLength(value), tapeStep(bench), roundingOf(step)];
  const none = round(at, graduation) === 0 && Math.abs(value) >= 1;
  return none ? handWords.under(onTape(graduation, bench)) : onTape(at, bench, round);
}

/**
 * A number that is found: a fraction of an inch that a ruler has as it is, any other as the tape in hand
 * shows it, since none shows decimals of an inch; elsewhere exactly.
 *
 * @param its to what side it is rounded: by the step that makes it, or because it may be no more or no less
 */
export function foundText(kind: Kind, value: number, bench: Bench, its: Rounded = {}): string {
  const said = valueText(kind, value, bench);
  return !its.step && isWhole(said, bench) ? said : handText(kind, value, bench, its.step ?? its);
}

/** What a drawing says of a number, as one that is found; what is no length there stays as it is. */
export function drawnText(said: string, bench: Bench, its?: Rounded): string {
  const read = readLength(said, bench.unit, bench.decimalMark);
  return read.ok && said.endsWith(` ${bench.unit}`)
    ? foundText('length', read.value, bench, its)
    : said;
}

/** How wide cloth is, as it was said; on a tape of inches never wider than it is. */
export function widthText(width: number, bench: Bench): string {
  const said = valueText('length', width, bench);
  return isWhole(said, bench) ? said : handText('length', width, bench, { bound: 'most' });
}

/** The space from one mark to the next. */
export function spaceText(space: number, bench: Bench): string {
  return spaceTexts([space], bench).join('');
}

/** Spaces from one mark to the next, in one unit: that of the least of them. */
export function spaceTexts(spaces: readonly number[], bench: Bench): string[] {
  const small = bench.unit === 'cm' && Math.min(...spaces) < SMALL;
  const own = small ? { ...bench, unit: 'mm' as const } : bench;
  return spaces.map((space) => handText('length', space, own));
}

/** A number with how sure it is; the unit, which both have, once. */
export function sureText(kind: Kind, value: number, off: number, bench: Bench): [string, string] {
  return [bareText(foundText(kind, value, bench), bench), offText(kind, off, bench)];
}

/** How sure a number is: on a tape of inches, and never surer than it is. */
export function offText(kind: Kind, off: number, bench: Bench): string {
  const said = valueText(kind, off, bench);
  return isWhole(said, bench) ? said : handText(kind, off, bench, { bound: 'least' });
}

/** The same of a number that is rounded already; how sure it is, on the tape and never surer than it is. */
export function sureOnTape(said: string, off: number, bench: Bench): [string, string] {
  return [bareText(said, bench), onTape(exactLength(off), bench, upToGraduation)];
}

/** Whether a number is written without decimals. */
function isWhole(said: string, { decimalMark }: Bench): boolean {
  return !said.includes(decimalMark);
}

/** A number without its unit. */
function bareText(said: string, { unit }: Bench): string {
  return said.replace(new RegExp(` ${unit}$`), '');
}
