import { digitReader } from '../digits/digit-logs.ts';
import type { NumberRead, NumberRow, NumberRows } from '../numbers/number-row.ts';
import { MOST_PAGES } from './limits.ts';
import { withOwnReads } from './own-reads.ts';
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
 * Hands pages to the character reader, and counts them; what it gives nothing for is read digit by
 * digit. Past the most that a picture may cost
 * nothing more is read, so that a hopeless picture ends.
 */
export function pageReader(readPage: ReadPage): { readonly readRows: ReadRows; pages(): number } {
  const digits = digitReader();
  let pages = 0;
  const readRows: ReadRows = async (found, rows, turns) => {
    const page = numbersPage(found, rows, turns);
    if (page.items.length === 0 || pages >= MOST_PAGES) return new Map();
    pages++;
    return withOwnReads(placeSymbols(await readPage(page), page, turns), page, digits);
  };
  return { readRows, pages: () => pages };
}
