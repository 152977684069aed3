import type { NumberRead, NumberRow, NumberRows } from '../numbers/number-row.ts';
import { MOST_PAGES } from './limits.ts';
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
 * Hands pages to the character reader, and counts them. Past the most that a picture may cost
 * nothing more is read, so that a hopeless picture ends.
 */
export function pageReader(readPage: ReadPage): { readonly readRows: ReadRows; pages(): number } {
  let pages = 0;
  const readRows: ReadRows = async (found, rows, turns) => {
    const page = numbersPage(found, rows, turns);
    if (page.items.length === 0 || pages >= MOST_PAGES) return new Map();
    pages++;
    return placeSymbols(await readPage(page), page, turns);
  };
  return { readRows, pages: () => pages };
}
