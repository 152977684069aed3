import { expect, test } from 'vitest';
import type { Sheet } from '../../../src/tape/graduations/sheet.ts';
import { cellOf } from '../../../src/tape/numbers/number-row.ts';
import { hasStrokeBeside } from '../../../src/tape/numbers/stroke-beside.ts';
import { placeIn } from '../../../src/tape/picture/space.ts';
import { patch } from '../made/made-rows.ts';

const [WIDTH, HEIGHT, PER_TICK] = [120, 160, 10];
/** A digit turned by a quarter: 30 px tall along the sheet, 20 wide across it. */
const DIGIT = patch(45, 30, 20, 70);
const CONTRAST = 0.5;

/** Whether a stroke is seen beside the digit when the sheet is inked here: columns and rows, both ends included. */
function seen(...inked: [x0: number, x1: number, y0: number, y1: number][]): boolean {
  const values = new Float32Array(WIDTH * HEIGHT).fill(5);
  for (const [x0, x1, y0, y1] of inked) {
    for (let y = y0; y <= y1; y++) values.fill(5 - CONTRAST, y * WIDTH + x0, y * WIDTH + x1 + 1);
  }
  const sheet: Sheet = {
    width: WIDTH,
    height: HEIGHT,
    values,
    perTick: PER_TICK,
    fromTick: 0,
    fromAcross: 0,
    toMeasuring: (x, y) => placeIn(x, y),
  };
  const ground = new Float32Array(values.length).fill(5);
  return hasStrokeBeside({ sheet, ground }, cellOf([DIGIT], sheet), CONTRAST);
}

test('a plain 1 that was wiped with the line it touches still stands at an end of the number', () => {
  expect(seen([45, 74, 55, 60])).toBe(true);
  expect(seen([45, 74, 98, 103])).toBe(true);
  // The line that it touches, too.
  expect(seen([45, 74, 55, 60], [58, 61, 0, 57])).toBe(true);
});

test('nothing there, and what is no digit, is none', () => {
  expect(seen()).toBe(false);
  // Graduations, a border along the tape, what lies beside it, and print too far off.
  expect(seen([48, 50, 0, 64], [58, 60, 0, 64], [68, 70, 0, 64])).toBe(false);
  expect(seen([0, WIDTH - 1, 55, 60])).toBe(false);
  expect(seen([0, WIDTH - 1, 0, 60])).toBe(false);
  expect(seen([45, 74, 30, 36])).toBe(false);
});
