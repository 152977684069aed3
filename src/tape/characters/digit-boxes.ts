import type { DigitBox } from '../digits/digit-cell.ts';
import type { Component } from '../numbers/components.ts';
import type { NumberCell } from '../numbers/number-row.ts';
import { DIGIT_PX } from './limits.ts';
import type { PageItem, QuarterTurns } from './page-drawing.ts';

/** The edges on the page of each patch of a number that was drawn there, in the order it is read. */
export function digitBoxes(item: PageItem, turns: QuarterTurns): DigitBox[] {
  const toPage = onPage(item.cell, item.row.height, turns);
  return item.cell.components
    .map(({ x0, x1, y0, y1 }: Component) => {
      // Samples of a sheet are places, pixels of a page have their middle at a half.
      const one = toPage(x0 - 0.5, y0 - 0.5);
      const other = toPage(x1 + 0.5, y1 + 0.5);
      const [left, right] = [one.along, other.along].sort((a, b) => a - b) as [number, number];
      const [top, bottom] = [one.down, other.down].sort((a, b) => a - b) as [number, number];
      return {
        x0: item.x + left + 0.5,
        x1: item.x + right + 0.5,
        y0: item.y + top + 0.5,
        y1: item.y + bottom + 0.5,
      };
    })
    .sort((a, b) => a.x0 - b.x0);
}

/** From a place on the sheet to one on the page, from the number's upper left corner. */
function onPage({ x0, x1, y0, y1 }: NumberCell, height: number, turns: QuarterTurns) {
  const scale = height / DIGIT_PX;
  const [middleX, middleY, half] = [(x0 + x1) / 2, (y0 + y1) / 2, height / 2];
  return (atX: number, atY: number) => {
    const [along, down] = [
      [atX - x0, atY - middleY + half],
      [atY - y0, middleX + half - atX],
      [x1 - atX, middleY + half - atY],
      [y1 - atY, atX - middleX + half],
    ][turns] as [number, number];
    return { along: along / scale, down: down / scale };
  };
}
