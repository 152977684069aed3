import { garmentMaterialsWords as words } from '#words/garment/garment-materials-words.ts';
import { type Bench, tapeStep } from '../../../calculation/bench.ts';
import type { MaterialForm } from '../../../calculation/material.ts';
import { onTape } from '../../../calculation/tape-text.ts';
import { upToGraduation } from '../../../lengths/graduation.ts';
import { exactLength } from '../../../lengths/length.ts';
import { shownNumber } from '../../../lengths/show-length.ts';
import { UNITS_PER } from '../../../lengths/unit.ts';

/** Yards are sold by eighths. */
const EIGHTH = UNITS_PER.yd / 8;

/**
 * How much of a material, up to the tape in hand: with metres where it is more than one, of cloth in whole
 * centimetres; or with yards where it is sold by their eighths.
 */
export function amountText(form: MaterialForm, amount: number, bench: Bench): string {
  if (form === 'count') return words.count(Math.ceil(amount));
  const long = onTape(exactLength(amount), bench, upToGraduation);
  const sold = form === 'length' ? lengthText(amount, bench) : soldText(amount, bench);
  return sold === undefined ? long : words.together(long, sold);
}

/** Cloth as a shop measures it; undefined where that isn't a plain number of its own. */
export const soldText = (amount: number, bench: Bench): string | undefined =>
  bench.unit === 'in' ? inYards(amount) : inMetres(amount, bench);

/** By length more of it is bought than a tape is long: always with metres, which say the tape's number. */
function lengthText(amount: number, bench: Bench): string | undefined {
  if (bench.unit === 'in' || amount < UNITS_PER.m) return soldText(amount, bench);
  const said = upToGraduation(exactLength(amount), tapeStep(bench));
  return words.metres(shownNumber(said / UNITS_PER.m, 3, bench.decimalMark));
}

function inMetres(amount: number, { decimalMark }: Bench): string | undefined {
  const fits = amount >= UNITS_PER.m && amount % UNITS_PER.cm === 0;
  return fits ? words.metres(shownNumber(amount / UNITS_PER.m, 2, decimalMark)) : undefined;
}

function inYards(amount: number): string | undefined {
  const eighths = amount / EIGHTH;
  if (eighths < 1 || !Number.isInteger(eighths)) return undefined;
  const whole = Math.floor(eighths / 8);
  const part = eighths % 8;
  const shared = part % 4 === 0 ? 4 : part % 2 === 0 ? 2 : 1;
  const fraction = part === 0 ? [] : [`${part / shared}/${8 / shared}`];
  return words.yards([...(whole > 0 ? [String(whole)] : []), ...fraction].join(' '));
}

/** Hundredths of a per cent, without the sign. */
export function shareText(share: number, { decimalMark }: Bench): string {
  return shownNumber(share / 100, 2, decimalMark);
}

/** Whole hundredths as money: 12.50. */
export function moneyText(cents: number, { decimalMark }: Bench): string {
  const part = String(cents % 100).padStart(2, '0');
  return `${Math.floor(cents / 100)}${decimalMark}${part}`;
}
