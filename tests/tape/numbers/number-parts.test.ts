import { describe, expect, test } from 'vitest';
import type { Sheet } from '../../../src/tape/graduations/sheet.ts';
import type { TickPattern } from '../../../src/tape/graduations/tick-pattern.ts';
import { type Component, componentOf } from '../../../src/tape/numbers/components.ts';
import { cutApart } from '../../../src/tape/numbers/cut-apart.ts';
import { cellOf, looksLikeNumbers } from '../../../src/tape/numbers/number-row.ts';
import { putBack } from '../../../src/tape/numbers/put-back.ts';
import { wipeByFollowing, wipeByPattern } from '../../../src/tape/numbers/wipe-lines.ts';
import { placeIn } from '../../../src/tape/picture/space.ts';

function part(x0: number, x1: number, id = 1): Component {
  return componentOf(id, { x0, x1, y0: 0, y1: 19, area: 20 });
}

describe('a row of numbers', () => {
  const row = (...widths: number[][]) => ({
    height: 20,
    middle: 10,
    turned: false,
    across: 5,
    cells: widths.map((parts, i) =>
      cellOf(
        parts.map((width, j) => part(60 * i + 14 * j, 60 * i + 14 * j + width - 1)),
        { fromTick: 0, perTick: 10 },
      ),
    ),
  });

  test('is digits, 1s among them', () => {
    expect(looksLikeNumbers(row([12], [12, 12], [5, 12], [5, 5]))).toBe(true);
  });

  test('is not the ends of long lines, nor a picket of many strokes', () => {
    expect(looksLikeNumbers(row([5], [6], [5], [6], [5, 6]))).toBe(false);
    const picket = [3, 8, 4, 5, 9, 4];
    expect(looksLikeNumbers(row(picket, picket, picket))).toBe(false);
  });
});

describe('cut apart', () => {
  test('in the middle of what is empty nearly everywhere', () => {
    // Numbers of 40 px, 80 px apart; one has a digit more and reaches into the gap on both sides.
    const starts = Array.from({ length: 18 }, (_, n) => 80 * n + 60);
    const digits = starts.flatMap((x) => [part(x, x + 18), part(x + 22, x + 40)]);
    const wide = [part(205, 217), part(264, 275)];
    const numbers = cutApart([...digits, ...wide], 80, 0);
    expect(numbers.map((number) => number.map(({ x0 }) => x0))).toEqual(
      starts.map((x) => (x === 220 ? [205, 220, 242, 264] : [x, x + 22])),
    );
  });

  test('alike wherever the sheet begins', () => {
    const digits = [0, 1, 2].flatMap((n) => [
      part(80 * n + 5, 80 * n + 25),
      part(80 * n + 30, 80 * n + 50),
    ]);
    for (const phase of [-400, -33.5, 0, 12.25, 79]) {
      expect(cutApart(digits, 80, phase).map((number) => number.length)).toEqual([2, 2, 2]);
    }
  });
});

describe('put back', () => {
  const width = 40;
  const inkOf = (columns: readonly number[]) =>
    Uint8Array.from({ length: 20 * width }, (_, at) => (columns.includes(at % width) ? 1 : 0));
  const parts = [part(0, 9, 1), part(30, 39, 2)];

  test('a stroke wiped between two digits, and whose it is', () => {
    const ink = { width, before: inkOf([19, 20]), labels: new Int32Array(20 * width) };
    const found = putBack(parts, 20, ink, () => 77);
    expect(found.gap).toBe(false);
    expect(found.parts.map(({ id, x0, x1 }) => [id, x0, x1])).toEqual([
      [1, 0, 9],
      [77, 19, 20],
      [2, 30, 39],
    ]);
    expect([...ink.labels]).toEqual([...ink.before].map((on) => 77 * on));
  });

  test('nothing that belongs to another patch, nor specks: a gap is told', () => {
    const labels = new Int32Array(20 * width).fill(5);
    const ink = { width, before: inkOf([19]), labels };
    expect(putBack(parts, 20, ink, () => 77)).toEqual({ parts, gap: true });
    const none = { width, before: inkOf([]), labels: new Int32Array(20 * width) };
    expect(putBack(parts, 20, none, () => 77)).toEqual({ parts, gap: true });
  });

  test('beside a 1 digits stand farther apart, but not as far as another digit', () => {
    const none = { width: 200, before: new Uint8Array(4000), labels: new Int32Array(4000) };
    const beside = (gap: number) => [part(0, 5), part(6 + gap, 24 + gap)];
    expect(putBack(beside(9), 20, none, () => 77).gap).toBe(false);
    expect(putBack(beside(13), 20, none, () => 77).gap).toBe(true);
    expect(putBack([part(0, 18), part(28, 46)], 20, none, () => 77).gap).toBe(true);
  });

  test('narrow gaps are left alone', () => {
    const close = [part(0, 9, 1), part(14, 23, 2)];
    const ink = { width, before: inkOf([11, 12]), labels: new Int32Array(20 * width) };
    expect(putBack(close, 20, ink, () => 77)).toEqual({ parts: close, gap: false });
  });
});

describe('wiped', () => {
  const [width, height, perTick] = [48, 60, 8];
  const sheet: Sheet = {
    width,
    height,
    perTick,
    fromTick: 0,
    fromAcross: -1,
    values: new Float32Array(width * height),
    toMeasuring: (x, y) => placeIn(x, y),
  };
  const lines: TickPattern = {
    subdivisions: 2,
    longAt: 0,
    lengths: [20, 0],
    margin: 20,
    side: 1,
    strength: 1,
    symmetric: true,
    valid: true,
    contrast: 1,
    zoneMiddle: 0,
    zoneFrom: -0.5,
    zoneTo: 0.5,
    duty: 0.25,
    presence: 1,
    classes: () => lines,
  };
  type Box = readonly [x0: number, x1: number, y0: number, y1: number];
  const drawn = (boxes: readonly Box[]) =>
    Uint8Array.from({ length: width * height }, (_, at) => {
      const [x, y] = [at % width, Math.floor(at / width)];
      return boxes.some(([x0, x1, y0, y1]) => x >= x0 && x <= x1 && y >= y0 && y <= y1) ? 1 : 0;
    });
  const left = (ink: Uint8Array) => ink.reduce((sum, one) => sum + one, 0);
  /** Lines at the graduations 1, 2, 3: 2 px wide, the middle one long. */
  const strokes: readonly Box[] = [
    [7, 8, 2, 12],
    [15, 16, 2, 28],
    [23, 24, 2, 12],
  ];

  test('lines as far as the pattern says, with digits below them left', () => {
    const digit: Box = [22, 25, 20, 40];
    const ink = drawn([...strokes, digit]);
    wipeByPattern({ sheet, ink }, lines, [1, 3], 8);
    expect(ink).toEqual(drawn([digit]));
  });

  test('lines that run on below a digit: all of a line that the pattern has without end', () => {
    const ink = drawn([[15, 16, 2, 55]]);
    wipeByPattern({ sheet, ink }, { ...lines, lengths: [48, 0] }, [1, 3], 8);
    expect(left(ink)).toBe(0);
    const short = drawn([[23, 24, 2, 55]]);
    wipeByPattern({ sheet, ink: short }, lines, [1, 3], 8);
    expect(left(short)).toBeGreaterThan(60);
  });

  test('lines as far as they can be followed, up to a bar across them', () => {
    const bar: Box = [10, 40, 30, 36];
    const ink = drawn([...strokes, bar]);
    wipeByFollowing({ sheet, ink }, lines, [1, 3]);
    expect(ink).toEqual(drawn([bar]));
  });

  test('nothing beyond a gap', () => {
    const digit: Box = [14, 17, 34, 50];
    const ink = drawn([...strokes, digit]);
    wipeByFollowing({ sheet, ink }, lines, [1, 3]);
    expect(ink).toEqual(drawn([digit]));
  });
});
