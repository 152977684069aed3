import { expect, test } from 'vitest';
import type { ReadRows } from '../../../src/tape/characters/read-cells.ts';
import { fieldOf, takenAs } from '../../../src/tape/picture/field.ts';
import { tickAlong } from '../../../src/tape/pitch/along.ts';
import { readRow } from '../../../src/tape/reader/read-row.ts';
import { drawTape } from '../made/drawn-tape.ts';
import { rowFrame, toFrame } from '../made/plain-places.ts';

const [WIDTH, HEIGHT, PITCH] = [1300, 300, 10];
/** Where 40 stands, in px, and its line's middle. */
const [AT, FORTY] = [WIDTH / 2, 40];

/** Millimetres in length so alike that the row of them is one though their tens are apart. */
const lineLength = (tick: number) => (tick % 10 === 0 ? 2.6 : tick % 5 === 0 ? 2 : 1.6);

/** A tape whose lines run down from the middle of the picture, and another's, some px aside, up from there. */
function edgeToEdge(aside: number) {
  const numbers = Array.from({ length: 12 }, (_, i) => {
    return { text: String(FORTY - 6 + i), along: PITCH * (i - 6), across: 5.2, height: 3 };
  });
  const size = { width: WIDTH, height: HEIGHT, pitchPx: PITCH };
  const lower = drawTape({ ...size, lineLength, numbers }).values;
  const upper = drawTape({ ...size, upwards: true, lineLength: (tick) => lineLength(tick + 2) });
  const pixels = Uint8Array.from(lower, (grey, at) => {
    const isUpper = at < (WIDTH * HEIGHT) / 2;
    return isUpper ? (upper.values[Math.max(0, at - aside)] as number) : grey;
  });
  return takenAs<'measuring'>(fieldOf({ width: WIDTH, height: HEIGHT, pixels }));
}

/** Reads each number right that stands in the lower tape's row. */
const readRows: ReadRows = async ({ sheet }, rows, turns) =>
  new Map(
    (turns === 0 ? rows : []).map((row) => {
      const reads = row.cells.flatMap((cell) => {
        const [x, y] = sheet.toMeasuring((cell.x0 + cell.x1) / 2, (cell.y0 + cell.y1) / 2);
        const place = (x - AT) / (PITCH * PITCH);
        const value = FORTY + Math.round(place);
        const isThere = y > HEIGHT / 2 + 30 && Math.abs(place - Math.round(place)) < 0.15;
        return isThere ? [{ cell, value, text: String(value), confidence: 90 }] : [];
      });
      return [row, reads];
    }),
  );

test.each([2, 3])(
  'numbers are given to their own tape’s lines where another’s, %i px aside, go on above them',
  async (aside) => {
    const frame = rowFrame([AT, HEIGHT / 2], 0);
    const { row, claim } = await readRow(edgeToEdge(aside), frame, {
      readRows,
      mayReadWords: () => true,
      roundBend: () => undefined,
    });
    if (!row || !claim) throw new Error('nothing was read');
    const [u] = toFrame(row.frame, AT, HEIGHT / 2 + 10);
    const { anchorTick, anchorValue, direction } = claim;
    const told = anchorValue + (direction * (tickAlong(row.pitch, u) - anchorTick)) / 10;
    expect(told).toBeCloseTo(FORTY, 1);
  },
);
