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
  const { near, left, top, wide, high } = nearInk(found, cell);
  const place = placing(cell, row.height, turns);
  for (let down = -ABOVE; down < DIGIT_PX + ABOVE; down++) {
    for (let along = -BESIDE; along < width + BESIDE; along++) {
      const sheetX = place.x + along * place.alongX + down * place.downX;
      const sheetY = place.y + along * place.alongY + down * place.downY;
      const [nearX, nearY] = [Math.round(sheetX), Math.round(sheetY)];
      const [boxX, boxY] = [nearX - left, nearY - top];
      if (boxX < 0 || boxY < 0 || boxX >= wide || boxY >= high) continue;
      if (near[boxY * wide + boxX] !== 1) continue;
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
  const sorted = Float64Array.from(levels).sort();
  return sorted[Math.floor(sorted.length * TYPICAL_INK)] ?? Number.NaN;
}

/** A place of the sheet, and by how much it moves for each px along the number and down it on the page. */
interface Placing {
  readonly x: number;
  readonly y: number;
  readonly alongX: number;
  readonly alongY: number;
  readonly downX: number;
  readonly downY: number;
}

/** The place of the number's upper left corner on the page, and the way from there. */
function placing({ x0, x1, y0, y1 }: NumberCell, height: number, turns: QuarterTurns): Placing {
  const scale = height / DIGIT_PX;
  const [middleX, middleY, half] = [(x0 + x1) / 2, (y0 + y1) / 2, height / 2];
  const upright = { alongX: scale, alongY: 0, downX: 0, downY: scale };
  const turned = { alongX: 0, alongY: scale, downX: -scale, downY: 0 };
  switch (turns) {
    case 0:
      return { x: x0, y: middleY - half, ...upright };
    case 1:
      return { x: middleX + half, y: y0, ...turned };
    case 2:
      return { x: x1, y: middleY + half, ...upright, alongX: -scale, downY: -scale };
    case 3:
      return { x: middleX - half, y: y1, ...turned, alongY: -scale, downX: scale };
  }
}

/** 1 for the places of the sheet that are on a number's own ink or right beside it, in a box about it. */
interface NearInk {
  readonly near: Uint8Array;
  readonly left: number;
  readonly top: number;
  readonly wide: number;
  readonly high: number;
}

/** Each run of ink is looked at once; at the sheet's edges there is none. */
function nearInk(
  { sheet, labels }: NumberRows,
  { components, x0, x1, y0, y1 }: NumberCell,
): NearInk {
  const ids = new Set(components.map(({ id }) => id));
  const isOwn = (at: number) => labels[at] !== 0 && ids.has(labels[at] as number);
  const [left, top] = [x0 - NEAR_INK, y0 - NEAR_INK];
  const [wide, high] = [x1 - x0 + 1 + 2 * NEAR_INK, y1 - y0 + 1 + 2 * NEAR_INK];
  const near = new Uint8Array(wide * high);
  for (let y = y0; y <= y1; y++) {
    for (let x = x0; x <= x1; x++) {
      if (!isOwn(y * sheet.width + x)) continue;
      const first = x;
      while (x < x1 && isOwn(y * sheet.width + x + 1)) x++;
      for (let row = y - NEAR_INK; row <= y + NEAR_INK; row++) {
        const start = (row - top) * wide - left;
        near.fill(1, start + first - NEAR_INK, start + x + NEAR_INK + 1);
      }
    }
  }
  clearEdges(near, { left, top, wide, high }, sheet);
  return { near, left, top, wide, high };
}

function clearEdges(
  near: Uint8Array,
  { left, top, wide, high }: Omit<NearInk, 'near'>,
  sheet: NumberRows['sheet'],
): void {
  for (let row = 0; row < high; row++) {
    const y = row + top;
    const inside = y >= NEAR_INK && y < sheet.height - NEAR_INK;
    const from = inside ? Math.max(0, NEAR_INK - left) : wide;
    const to = inside ? Math.min(wide, sheet.width - NEAR_INK - left) : 0;
    near.fill(0, row * wide, row * wide + Math.min(wide, from));
    near.fill(0, row * wide + Math.max(0, to), (row + 1) * wide);
  }
}
