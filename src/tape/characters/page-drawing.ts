import type { NumberCell, NumberRow, NumberRows } from '../numbers/number-row.ts';
import { sample } from '../picture/field.ts';
import type { GreyImage } from '../picture/grey-image.ts';
import { ABOVE, BESIDE, DIGIT_PX, LEAST_CONTRAST, NEAR_INK, TYPICAL_INK } from './limits.ts';

/** By how many quarters the numbers stand turned on the sheet, clockwise. */
export type QuarterTurns = 0 | 1 | 2 | 3;

/** A number on the page, with the edges it was given there. */
export interface PageItem {
  readonly row: NumberRow;
  readonly cell: NumberCell;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** Draws one number on a white page: its own patches of ink and nothing else, upright and black. */
export function drawCell(
  page: GreyImage,
  { row, cell, x, y, width }: PageItem,
  found: NumberRows,
  turns: QuarterTurns,
): void {
  const { sheet, ground } = found;
  const black = inkLevel(found, cell);
  const ids = cell.components.map(({ id }) => id);
  const place = placing(cell, row.height, turns);
  for (let down = -ABOVE; down < DIGIT_PX + ABOVE; down++) {
    for (let along = -BESIDE; along < width + BESIDE; along++) {
      const [sheetX, sheetY] = place(along, down);
      const [nearX, nearY] = [Math.round(sheetX), Math.round(sheetY)];
      if (!isByInk(found, ids, nearX, nearY)) continue;
      const grey = sample(sheet, sheetX, sheetY);
      if (Number.isNaN(grey)) continue;
      const contrast = (ground[nearY * sheet.width + nearX] as number) - black;
      const light = (grey - black) / Math.max(LEAST_CONTRAST, contrast);
      page.pixels[(y + down) * page.width + x + along] = 255 * Math.min(1, Math.max(0, light));
    }
  }
}

/** How dark the ink of a number is: darker than most of it, as its outline is lighter. */
function inkLevel({ sheet, labels }: NumberRows, { components }: NumberCell): number {
  const levels: number[] = [];
  for (const { id, x0, x1, y0, y1 } of components) {
    for (let y = y0; y <= y1; y += 2) {
      for (let x = x0; x <= x1; x += 2) {
        const at = y * sheet.width + x;
        if (labels[at] === id) levels.push(sheet.values[at] as number);
      }
    }
  }
  levels.sort((a, b) => a - b);
  return levels[Math.floor(levels.length * TYPICAL_INK)] ?? Number.NaN;
}

/** From a place on the page, from the number's upper left corner, to one on the sheet. */
function placing({ x0, x1, y0, y1 }: NumberCell, height: number, turns: QuarterTurns) {
  const scale = height / DIGIT_PX;
  const [middleX, middleY, half] = [(x0 + x1) / 2, (y0 + y1) / 2, height / 2];
  switch (turns) {
    case 0:
      return (along: number, down: number) =>
        [x0 + along * scale, middleY - half + down * scale] as const;
    case 1:
      return (along: number, down: number) =>
        [middleX + half - down * scale, y0 + along * scale] as const;
    case 2:
      return (along: number, down: number) =>
        [x1 - along * scale, middleY + half - down * scale] as const;
    case 3:
      return (along: number, down: number) =>
        [middleX - half + down * scale, y1 - along * scale] as const;
  }
}

function isByInk(
  { sheet, labels }: NumberRows,
  ids: readonly number[],
  x: number,
  y: number,
): boolean {
  const { width, height } = sheet;
  const inside = x >= NEAR_INK && y >= NEAR_INK && x < width - NEAR_INK && y < height - NEAR_INK;
  if (!inside) return false;
  for (let row = y - NEAR_INK; row <= y + NEAR_INK; row++) {
    for (let at = row * width + x - NEAR_INK; at <= row * width + x + NEAR_INK; at++) {
      const id = labels[at];
      if (id && ids.includes(id)) return true;
    }
  }
  return false;
}
