import { describe, expect, test } from 'vitest';
import type { Sheet } from '../../../src/tape/graduations/sheet.ts';
import { joinWords, regularity } from '../../../src/tape/numbers/word-joins.ts';
import { placeIn } from '../../../src/tape/picture/space.ts';
import { patch } from '../made/made-rows.ts';
import { cellAt } from '../made/read-numbers.ts';

const sheet: Sheet = {
  width: 1000,
  height: 300,
  values: new Float32Array(),
  perTick: 10,
  fromTick: 0,
  fromAcross: 0,
  toMeasuring: (x, y) => placeIn(x, y),
};

/** Digits as tall as 20 px when they are read. */
const line = { height: 20, middle: 50, start: 50, slope: 0 };

const sizes = (cells: ReturnType<typeof joinWords>) => cells.map((cell) => cell.components.length);

describe('digits are joined to numbers', () => {
  test('along the tape by the gap that makes them stand evenest', () => {
    const numbers = [100, 200, 300, 400].flatMap((x) => [
      patch(x, 12, 20, 40),
      patch(x + 15, 12, 20, 40),
    ]);
    expect(sizes(joinWords({ ...line, turned: false }, numbers, sheet))).toEqual([2, 2, 2, 2]);
  });

  test('along the tape though the digits of each are spaced, where that makes them stand evenest', () => {
    const spaced = [100, 260, 420, 580].flatMap((x) =>
      [0, 24, 48].map((on) => patch(x + on, 12, 20, 40)),
    );
    expect(sizes(joinWords({ ...line, turned: false }, spaced, sheet))).toEqual([3, 3, 3, 3]);
  });

  test('along the tape, digits of their own stay apart', () => {
    const single = Array.from({ length: 9 }, (_, i) => patch(100 + 24 * i, 12, 20, 40));
    expect(sizes(joinWords({ ...line, turned: false }, single, sheet))).toEqual(Array(9).fill(1));
  });

  test('turned across the tape, however far apart plain 1s stand', () => {
    // Ones 4 px thick, two thirds of their height apart.
    const ones = [100, 200, 300, 400].flatMap((x) => [27, 43, 59].map((y) => patch(x, 20, 4, y)));
    expect(sizes(joinWords({ ...line, turned: true }, ones, sheet))).toEqual([3, 3, 3, 3]);
  });

  test('digits a whole height apart are two numbers', () => {
    const apart = [100, 200, 300].flatMap((x) => [patch(x, 20, 12, 26), patch(x, 20, 12, 60)]);
    expect(sizes(joinWords({ ...line, turned: true }, apart, sheet))).toEqual(Array(6).fill(1));
  });
});

test('numbers at one of the usual intervals are regular, those anywhere are not', () => {
  expect(regularity([0, 10, 20, 40].map((tick) => cellAt(tick)))).toBeCloseTo(1, 9);
  expect(regularity([0, 3.3, 11.7, 24.1, 37.9].map((tick) => cellAt(tick)))).toBeLessThan(0.8);
});
