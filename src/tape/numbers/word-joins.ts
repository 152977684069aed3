import type { Sheet } from '../graduations/sheet.ts';
import type { Component } from './components.ts';
import {
  BESIDE_EACH_OTHER,
  BETTER,
  GAPS,
  GAPS_TURNED,
  INTERVALS,
  JOINED,
  LONGEST_WORD,
  OFF_LINE,
  OFF_LINE_THIN,
  OFF_LINE_TURNED,
  THIN_WIDTH,
} from './limits.ts';
import { cellOf, type NumberCell } from './number-row.ts';
import { heightOf, type WordLine, widthOf } from './word-lines.ts';

/** Joins the patches along a line to words, from left to right, by whichever gap makes them stand evenest. */
export function joinWords(line: WordLine, parts: readonly Component[], sheet: Sheet): NumberCell[] {
  const digits = parts
    .filter((part) => belongs(part, line))
    .sort((a, b) => (line.turned ? a.y0 - b.y0 : a.x0 - b.x0));
  let best: NumberCell[] = [];
  let most = -1;
  for (const gap of line.turned ? GAPS_TURNED : GAPS) {
    const cells = wordsOf(digits, gap * line.height, line)
      .map((word) => cellOf(word, sheet))
      .filter((cell) => lengthOf(cell, line.turned) < LONGEST_WORD * line.height)
      .sort((a, b) => a.middle - b.middle);
    const score = scoreOf(cells);
    if (score > BETTER * most) [most, best] = [score, cells];
  }
  return best;
}

function scoreOf(cells: readonly NumberCell[]): number {
  if (cells.length < 2) return 0;
  const digits = cells.reduce((sum, cell) => sum + cell.components.length, 0);
  return regularity(cells) ** 2 * Math.sqrt(digits);
}

function lengthOf({ x0, x1, y0, y1 }: NumberCell, turned: boolean): number {
  return turned ? y1 - y0 : x1 - x0;
}

/** Thin strokes (a plain 1, or dirt) count only if they stand exactly on the line. */
function belongs(part: Component, { height, start, slope, turned }: WordLine): boolean {
  const tall = heightOf(part, turned);
  const wide = widthOf(part, turned);
  const upright = part.width > THIN_WIDTH * height ? OFF_LINE : OFF_LINE_THIN;
  const off = Math.abs(part.middleY - (start + slope * part.middleX));
  return (
    off < (turned ? OFF_LINE_TURNED : upright) * height &&
    tall > JOINED.lowest * height &&
    tall < JOINED.tallest * height &&
    wide < JOINED.widest * height &&
    wide >= Math.max(2, JOINED.thinnest * height) &&
    part.area > JOINED.ink * part.width * part.height
  );
}

/** Digits sorted in reading direction, each put to the first word that it stands next to. */
function wordsOf(
  digits: readonly Component[],
  gapPx: number,
  { height, slope, turned }: WordLine,
): Component[][] {
  const words: Component[][] = [];
  for (const digit of digits) {
    const word = words.find((one) => {
      const last = one.at(-1) as Component;
      const [next, begin, end, off] = turned
        ? [digit.y0, last.y0, last.y1, digit.middleX - last.middleX]
        : [digit.x0, last.x0, last.x1, offLine(digit, last, slope)];
      return next - end < gapPx && next > begin && Math.abs(off) < BESIDE_EACH_OTHER * height;
    });
    if (word) word.push(digit);
    else words.push([digit]);
  }
  return words;
}

function offLine(digit: Component, last: Component, slope: number): number {
  return digit.middleY - last.middleY - slope * (digit.middleX - last.middleX);
}

/** How evenly numbers stand for the best of the usual intervals: 1 perfectly, near 0 anyhow. */
export function regularity(cells: readonly NumberCell[]): number {
  let best = 0;
  for (const interval of INTERVALS) {
    let [x, y] = [0, 0];
    for (const { middle } of cells) {
      x += Math.cos((2 * Math.PI * middle) / interval);
      y += Math.sin((2 * Math.PI * middle) / interval);
    }
    best = Math.max(best, Math.hypot(x, y) / cells.length);
  }
  return best;
}
