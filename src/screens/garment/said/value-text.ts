import { handWords } from '#words/garment/garment-decision-words.ts';
import { type Bench, tapeStep } from '../../../calculation/bench.ts';
import type { Kind, Step } from '../../../calculation/output.ts';
import { roundingOf } from '../../../calculation/step-rounding.ts';
import { exactly, onTape } from '../../../calculation/tape-text.ts';
import { upToGraduation } from '../../../lengths/graduation.ts';
import { exactLength, mm } from '../../../lengths/length.ts';
import { shownNumber } from '../../../lengths/show-length.ts';

/** Under this a space between marks is said in millimetres where the bench has centimetres. */
const SMALL = mm(10);

/** A number of a garment as text, as exactly as it is said: lengths with their unit. */
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
  return [bareText(valueText(kind, value, bench), bench), valueText(kind, off, bench)];
}

/** The same of a number that is rounded already; how sure it is, on the tape and never surer than it is. */
export function sureOnTape(said: string, off: number, bench: Bench): [string, string] {
  return [bareText(said, bench), onTape(exactLength(off), bench, upToGraduation)];
}

/** A number without its unit. */
function bareText(said: string, { unit }: Bench): string {
  return said.replace(new RegExp(` ${unit}$`), '');
}
