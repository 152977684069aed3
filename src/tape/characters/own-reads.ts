import { digitCell } from '../digits/digit-cell.ts';
import { type DigitReader, surestDigit } from '../digits/digit-logs.ts';
import { NO_DIGIT } from '../digits/network.ts';
import type { NumberCell, NumberRead, NumberRow } from '../numbers/number-row.ts';
import { digitBoxes } from './digit-boxes.ts';
import { FEWEST_SETTLED, LONGEST_OWN, SETTLED } from './limits.ts';
import type { NumberPage } from './page.ts';
import type { PageItem } from './page-drawing.ts';

/** The numbers of a page, by their cell, each of whose digits is sure by itself. */
export type OwnReads = ReadonlyMap<NumberCell, NumberRead>;

export function ownReads(page: NumberPage, digits: DigitReader): OwnReads {
  const own = new Map<NumberCell, NumberRead>();
  for (const item of page.items) {
    const read = ownRead(item, page, digits);
    if (read) own.set(item.cell, read);
  }
  return own;
}

/** Whether so many of a page's numbers are sure that the character reader has little to add. */
export function isSettled({ items }: NumberPage, own: OwnReads): boolean {
  return own.size >= FEWEST_SETTLED && own.size >= SETTLED * items.length;
}

/**
 * The numbers of a page as they were read, and those that are sure by themselves where the character
 * reader gave nothing, or another number. They count like other numbers that were read: evidence for a
 * scale, which others must agree with.
 */
export function withOwnReads(
  reads: ReadonlyMap<NumberRow, readonly NumberRead[]>,
  page: NumberPage,
  own: OwnReads,
): Map<NumberRow, NumberRead[]> {
  const all = new Map<NumberRow, NumberRead[]>();
  for (const { row, cell } of page.items) {
    const given = reads.get(row)?.find((read) => read.cell === cell);
    const sure = own.get(cell);
    const read = sure && sure.text !== given?.text ? sure : given;
    if (read) all.set(row, [...(all.get(row) ?? []), read]);
  }
  return all;
}

function ownRead(item: PageItem, page: NumberPage, digits: DigitReader): NumberRead | undefined {
  const boxes = digitBoxes(item, page.turns);
  if (boxes.length === 0 || boxes.length > LONGEST_OWN) return undefined;
  let [text, least] = ['', 1];
  for (const box of boxes) {
    const shares = digits.shares(digitCell(page, box));
    const digit = surestDigit(shares);
    if (digit === null || digit === NO_DIGIT) return undefined;
    least = Math.min(least, shares[digit] as number);
    text += digit;
  }
  // Lines of a tape are cut out, too, and look like plain 1s; a 0 in front is another number's, or upside down.
  if (!/[^1]/.test(text) || /^0\d/.test(text)) return undefined;
  return { cell: item.cell, value: Number(text), text, confidence: 100 * least };
}
