import { createCanvas } from '@napi-rs/canvas';
import { CELL_HEIGHT, CELL_WIDTH, DEEPEST, LIGHTEST } from '../../../src/tape/digits/limits.ts';

/** Pixels a sample is drawn wide. */
const SIDE = 4;
const COLUMNS = 22;

/** A picture of cells with what is written under each, as a PNG file. */
export function sheetOf(cells: readonly { cell: Float32Array; under: string }[]): Buffer {
  const [wide, tall] = [CELL_WIDTH * SIDE + 8, CELL_HEIGHT * SIDE + 16];
  const canvas = createCanvas(COLUMNS * wide, Math.ceil(cells.length / COLUMNS) * tall);
  const pen = canvas.getContext('2d');
  pen.fillStyle = '#48c';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  cells.forEach(({ cell, under }, at) => {
    const [left, top] = [(at % COLUMNS) * wide, Math.floor(at / COLUMNS) * tall];
    cell.forEach((value, i) => {
      const grey = Math.round((255 * (DEEPEST - value)) / (DEEPEST - LIGHTEST));
      pen.fillStyle = `rgb(${grey},${grey},${grey})`;
      const [column, row] = [i % CELL_WIDTH, Math.floor(i / CELL_WIDTH)];
      pen.fillRect(left + column * SIDE, top + row * SIDE, SIDE, SIDE);
    });
    pen.fillStyle = '#fff';
    pen.fillText(under, left, top + CELL_HEIGHT * SIDE + 11);
  });
  return canvas.toBuffer('image/png');
}
