import { digitReader } from '../digits/digit-logs.ts';
import type { NumberRead, NumberRow, NumberRows } from '../numbers/number-row.ts';
import { MOST_BLIND_PAGES, MOST_PAGES } from './limits.ts';
import { isSettled, ownReads, withOwnReads } from './own-reads.ts';
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
  let [pages, blind] = [0, 0];
  const readRows: ReadRows = async (found, rows, turns) => {
    const page = numbersPage(found, rows, turns);
    if (page.items.length === 0) return new Map();
    const own = ownReads(page, digits);
    if (isSettled(page, own)) for (const row of rows) settled.add(row);
    // The other way up its digits are none, or others by chance.
    const isKnown = rows.every((row) => settled.has(row));
    const isBlind = own.size === 0;
    if (isKnown || pages >= MOST_PAGES || (isBlind && blind >= MOST_BLIND_PAGES))
      return withOwnReads(new Map(), page, own);
    pages++;
    if (isBlind) blind++;
    return withOwnReads(placeSymbols(await readPage(page), page, turns), page, own);
  };
  return { readRows, pages: () => pages };
}
