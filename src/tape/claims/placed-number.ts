import type { Sheet } from '../graduations/sheet.ts';
import type { NumberRead } from '../numbers/number-row.ts';
import type { PlacedNumber } from './claim.ts';

/** A number read on a sheet, placed in the copy that is measured; `step` undoes a count in tens. */
export function placedOn(sheet: Sheet, read: NumberRead, step: number): PlacedNumber {
  const { cell, value } = read;
  const at = sheet.toMeasuring((cell.x0 + cell.x1) / 2, (cell.y0 + cell.y1) / 2);
  return { value: value * step, tick: cell.middle, read, at };
}
