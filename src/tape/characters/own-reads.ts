import { digitCell } from '../digits/digit-cell.ts';
import { type DigitReader, surestDigit } from '../digits/digit-logs.ts';
import { NO_DIGIT } from '../digits/network.ts';
import type { NumberCell, NumberRead, NumberRow } from '../numbers/number-row.ts';
import { digitBoxes } from './digit-boxes.ts';
import {
  FEWEST_SETTLED,
  FEWEST_UPRIGHT,
  LONGEST_OWN,
  RUBBISH,
  SETTLED,
  UPRIGHT,
} from './limits.ts';
import type { NumberPage } from './page.ts';
import type { PageItem } from './page-drawing.ts';

/** What digits by themselves tell of a page. */
export interface OwnReads {
  /** The numbers each of whose digits is sure by itself, by their cell. */
  readonly sure: ReadonlyMap<NumberCell, NumberRead>;
  /** How many others begin with a digit that is sure, and how many with what is surely none. */
  readonly begun: number;
  readonly none: number;
}

export function ownReads(page: NumberPage, digits: DigitReader): OwnReads {
  const sure = new Map<NumberCell, NumberRead>();
  let [begun, none] = [0, 0];
  for (const item of page.items) {
    const read = ownRead(item, page, digits);
    if (typeof read === 'object') sure.set(item.cell, read);
    else if (read === 'begun') begun++;
    else if (read === 'none') none++;
  }
  return { sure, begun, none };
}

/** Whether so many of a page's numbers are sure that the character reader has little to add. */
export function isSettled({ items }: NumberPage, { sure }: OwnReads): boolean {
  return sure.size >= FEWEST_SETTLED && sure.size >= SETTLED * items.length;
}

/** Whether a page stands on its head, where so many of its numbers were sure the other way up. */
export function isUpsideDown({ sure }: OwnReads, turnedRound: number): boolean {
  return turnedRound >= FEWEST_UPRIGHT && turnedRound >= UPRIGHT * sure.size;
}

/** Whether a page shows no number: no digit of it is sure, and many patches are surely none. */
export function isRubbish({ items }: NumberPage, { sure, begun, none }: OwnReads): boolean {
  return sure.size === 0 && begun === 0 && none >= RUBBISH * items.length;
}

/**
 * The numbers of a page as they were read, and those that are sure by themselves where the character
 * reader gave nothing, or another number. They count like other numbers that were read: evidence for a
 * scale, which others must agree with.
 */
export function withOwnReads(
  reads: ReadonlyMap<NumberRow, readonly NumberRead[]>,
  page: NumberPage,
  { sure: ofOwn }: OwnReads,
): Map<NumberRow, NumberRead[]> {
  const all = new Map<NumberRow, NumberRead[]>();
  for (const { row, cell } of page.items) {
    const given = reads.get(row)?.find((read) => read.cell === cell);
    const sure = ofOwn.get(cell);
    const read = sure && sure.text !== given?.text ? sure : given;
    if (read) all.set(row, [...(all.get(row) ?? []), read]);
  }
  return all;
}

function ownRead(
  item: PageItem,
  page: NumberPage,
  digits: DigitReader,
): NumberRead | 'begun' | 'none' | undefined {
  const boxes = digitBoxes(item, page.turns);
  if (boxes.length === 0 || boxes.length > LONGEST_OWN) return undefined;
  let [text, least] = ['', 1];
  for (const box of boxes) {
    const shares = digits.shares(digitCell(page, box));
    const digit = surestDigit(shares);
    if (digit === null || digit === NO_DIGIT) {
      if (text) return 'begun';
      return digit === NO_DIGIT ? 'none' : undefined;
    }
    least = Math.min(least, shares[digit] as number);
    text += digit;
  }
  // Lines of a tape are cut out, too, and look like plain 1s; a 0 in front is another number's, or upside down.
  if (!/[^1]/.test(text) || /^0\d/.test(text)) return 'begun';
  return { cell: item.cell, value: Number(text), text, confidence: 100 * least };
}
