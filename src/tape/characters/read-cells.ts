import { digitReader } from '../digits/digit-logs.ts';
import type { NumberRead, NumberRow, NumberRows } from '../numbers/number-row.ts';
import { MOST_BLIND_PAGES, MOST_PAGES, MOST_RUBBISH_PAGES } from './limits.ts';
import { isRubbish, isSettled, isUpsideDown, ownReads, withOwnReads } from './own-reads.ts';
import { numbersPage, placeSymbols } from './page.ts';
import type { QuarterTurns } from './page-drawing.ts';
import type { ReadPage } from './read-page.ts';

/** Reads the numbers of some rows of a sheet, turned by quarters. */
export type ReadRows = (
  found: NumberRows,
  rows: readonly NumberRow[],
  turns: QuarterTurns,
) => Promise<Map<NumberRow, NumberRead[]>>;

/**
 * Reads pages digit by digit, and hands those that leave numbers in doubt to the character reader, which
 * takes many times as long: so many for one picture and no more.
 */
export function pageReader(readPage: ReadPage): { readonly readRows: ReadRows; pages(): number } {
  const digits = digitReader();
  const settled = new Set<NumberRow>();
  /** How many numbers of a row's page were sure, one way up. */
  const seen = new Map<NumberRow, number>();
  let [pages, blind, rubbish] = [0, 0, 0];
  const readRows: ReadRows = async (found, rows, turns) => {
    const page = numbersPage(found, rows, turns);
    if (page.items.length === 0) return new Map();
    const own = ownReads(page, digits);
    if (isSettled(page, own)) for (const row of rows) settled.add(row);
    // The other way up digits are none, or others by chance.
    const isOtherWayUp = rows.every((row) => isUpsideDown(own, seen.get(row) ?? 0));
    for (const row of rows) seen.set(row, own.sure.size);
    const isKnown = isOtherWayUp || rows.every((row) => settled.has(row));
    const isBlind = own.sure.size === 0;
    const isSpent = pages >= MOST_PAGES || (isBlind && blind >= MOST_BLIND_PAGES);
    const isWaste = isRubbish(page, own) && ++rubbish > MOST_RUBBISH_PAGES;
    if (isKnown || isSpent || isWaste) return withOwnReads(new Map(), page, own);
    pages++;
    if (isBlind) blind++;
    return withOwnReads(placeSymbols(await readPage(page), page, turns), page, own);
  };
  return { readRows, pages: () => pages };
}
