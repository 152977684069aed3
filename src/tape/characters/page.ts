import type { NumberCell, NumberRead, NumberRow, NumberRows } from '../numbers/number-row.ts';
import type { GreyImage } from '../picture/grey-image.ts';
import {
  DIGIT_PX,
  GAP_X,
  GAP_Y,
  LEAST_WIDTH,
  LONGEST,
  NEAR_PX,
  NUMBERS_A_LINE,
  WHITE,
} from './limits.ts';
import { drawCell, type PageItem, type QuarterTurns } from './page-drawing.ts';
import type { PageSymbol } from './read-page.ts';
import { withThinOnes } from './thin-ones.ts';

/** A page of dark numbers on white for the character reader, all as tall. */
export interface NumberPage extends GreyImage {
  readonly items: readonly PageItem[];
  /** By how many quarters its numbers stand turned on their sheet. */
  readonly turns: QuarterTurns;
}

/** Draws a page of the numbers in some rows, upright if they stand turned as given. */
export function numbersPage(
  found: NumberRows,
  rows: readonly NumberRow[],
  turns: QuarterTurns,
): NumberPage {
  const { items, width, height } = layOut(rows, turns);
  const page = { width, height, pixels: new Uint8Array(width * height).fill(WHITE) };
  for (const item of items) drawCell(page, item, found, turns);
  return { ...page, items, turns };
}

function layOut(rows: readonly NumberRow[], turns: QuarterTurns) {
  const items: PageItem[] = [];
  let [line, width] = [-1, LEAST_WIDTH];
  for (const row of rows) {
    const cells = row.cells.filter(
      (cell) => !cell.gap && lengthOf(cell, row.turned) <= LONGEST * row.height,
    );
    if (turns === 2) cells.reverse();
    let x = GAP_X;
    cells.forEach((cell, index) => {
      if (index % NUMBERS_A_LINE === 0) {
        line++;
        x = GAP_X;
      }
      const shown = Math.ceil(lengthOf(cell, row.turned) / (row.height / DIGIT_PX));
      items.push({ row, cell, x, y: GAP_Y + line * (DIGIT_PX + GAP_Y), width: shown });
      x += shown + GAP_X;
      width = Math.max(width, x);
    });
  }
  return { items, width, height: Math.max(1, line + 1) * (DIGIT_PX + GAP_Y) + GAP_Y };
}

/** How long a number is in the direction it is read, in sheet pixels. */
function lengthOf({ x0, x1, y0, y1 }: NumberCell, turned: boolean): number {
  return turned ? y1 - y0 + 1 : x1 - x0 + 1;
}

const NUMBER = /^\d{1,4}$/;

/** What was read on a page, laid back on the numbers it was drawn from, by row; only whole numbers. */
export function placeSymbols(
  symbols: readonly PageSymbol[],
  { items }: Pick<NumberPage, 'items'>,
  turns: QuarterTurns,
): Map<NumberRow, NumberRead[]> {
  const reads = new Map<NumberRow, NumberRead[]>();
  for (const item of items) {
    const hits = symbols
      .filter((symbol) => isOn(symbol, item))
      .sort((a, b) => a.x0 + a.x1 - b.x0 - b.x1);
    const seen = hits.map((hit) => hit.text).join('');
    const text = /^\d+$/.test(seen) ? withThinOnes(seen, item.cell, item.row, turns === 2) : seen;
    if (!NUMBER.test(text)) continue;
    const confidence = hits.reduce((sum, hit) => sum + hit.confidence, 0) / hits.length;
    const read = { cell: item.cell, value: Number(text), text, confidence };
    const ofRow = reads.get(item.row);
    if (ofRow) ofRow.push(read);
    else reads.set(item.row, [read]);
  }
  return reads;
}

function isOn({ x0, x1, y0, y1 }: PageSymbol, { x, y, width }: PageItem): boolean {
  const [middleX, middleY] = [(x0 + x1) / 2, (y0 + y1) / 2];
  return (
    middleX > x - NEAR_PX &&
    middleX < x + width + NEAR_PX &&
    middleY > y - NEAR_PX &&
    middleY < y + DIGIT_PX + NEAR_PX
  );
}
