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
  const isByInk = nearInk(found, cell);
  const place = placing(cell, row.height, turns);
  for (let down = -ABOVE; down < DIGIT_PX + ABOVE; down++) {
    for (let along = -BESIDE; along < width + BESIDE; along++) {
      const [sheetX, sheetY] = place(along, down);
      const [nearX, nearY] = [Math.round(sheetX), Math.round(sheetY)];
      if (!isByInk(nearX, nearY)) continue;
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

/** Tells whether a place of the sheet is on a number's own ink or right beside it; each ink is looked at once. */
function nearInk(
  { sheet, labels }: NumberRows,
  { components, x0, x1, y0, y1 }: NumberCell,
): (x: number, y: number) => boolean {
  const ids = new Set(components.map(({ id }) => id));
  const [left, top] = [x0 - NEAR_INK, y0 - NEAR_INK];
  const [wide, high] = [x1 - x0 + 1 + 2 * NEAR_INK, y1 - y0 + 1 + 2 * NEAR_INK];
  const near = new Uint8Array(wide * high);
  for (let y = y0; y <= y1; y++) {
    for (let x = x0; x <= x1; x++) {
      if (!ids.has(labels[y * sheet.width + x] as number)) continue;
      for (let row = y - NEAR_INK; row <= y + NEAR_INK; row++) {
        const at = (row - top) * wide + x - left;
        near.fill(1, at - NEAR_INK, at + NEAR_INK + 1);
      }
    }
  }
  return (x, y) => {
    const inSheet =
      x >= NEAR_INK && y >= NEAR_INK && x < sheet.width - NEAR_INK && y < sheet.height - NEAR_INK;
    const [column, row] = [x - left, y - top];
    const inBox = column >= 0 && row >= 0 && column < wide && row < high;
    return inSheet && inBox && near[row * wide + column] === 1;
  };
}
