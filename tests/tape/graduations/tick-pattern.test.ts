import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  foldScore,
  longLine,
  modulo,
  seenUpTo,
} from '../../../src/tape/graduations/tick-classes.ts';
import { commonZone } from '../../../src/tape/graduations/tick-contrast.ts';
import { tenthsBeforeDigits, tickPattern } from '../../../src/tape/graduations/tick-pattern.ts';
import {
  centimetreLines,
  type DrawnTape,
  drawTape,
  inchLines,
  truthOf,
} from '../made/drawn-tape.ts';

const rule: DrawnTape = { width: 560, height: 160, pitchPx: 10, lineLength: centimetreLines };

function patternOf(tape: DrawnTape, ticks = 25) {
  const { frame, pitch } = truthOf(tape);
  return tickPattern(drawTape(tape), frame, pitch, [-ticks, ticks]);
}

describe('the pattern of lines', () => {
  test('of millimetres: ten to the long line, which stands at 0', () => {
    const pattern = patternOf(rule)!;
    expect(pattern).toMatchObject({ subdivisions: 10, longAt: 0, side: 1, valid: true });
    expect(pattern.zoneFrom).toBeCloseTo(-1, 0);
    expect(pattern.zoneTo).toBeCloseTo(1, 0);
    expect(pattern.presence).toBe(1);
    // A line is a fifth of the pitch; a blurred one looks a little wider.
    expect(pattern.duty).toBeGreaterThan(0.05);
    expect(pattern.duty).toBeLessThan(0.4);
    expect(pattern.lengths[5]).toBeGreaterThan(pattern.lengths[4]! + 10);
  });

  test.each([
    ['counted from another line', { lineLength: (k: number) => centimetreLines(k - 3) }, 3, 1],
    ['on the other side', { upwards: true }, 0, -1],
    ['turned and sheared', { angle: 0.1, shear: -0.2 }, 0, 1],
    ['light on dark', { light: true }, 0, 1],
  ] as const)('of millimetres %s', (_, change, longAt, side) => {
    const pattern = patternOf({ ...rule, ...change }, 22);
    expect(pattern).toMatchObject({ subdivisions: 10, longAt, side, valid: true });
  });

  test('of sixteenths and of eighths of an inch', () => {
    expect(patternOf({ ...rule, lineLength: inchLines })).toMatchObject({
      subdivisions: 16,
      longAt: 0,
      valid: true,
    });
    const eighths = (tick: number) => inchLines(2 * tick);
    expect(patternOf({ ...rule, lineLength: eighths })).toMatchObject({
      subdivisions: 8,
      longAt: 0,
      valid: true,
    });
  });

  test.each([
    ['fives only', (k: number) => (k % 5 ? 1 : 3)],
    ['all alike', () => 1],
    [
      'a long line that isn’t in the middle of its neighbours',
      (k: number) => [4, 3, 2.5, 1, 1, 1, 1, 1, 1, 1][modulo(k, 10)]!,
    ],
  ])('that is no tape’s (%s) is not valid', (_, lineLength) => {
    expect(patternOf({ ...rule, lineLength })?.valid).toBe(false);
  });

  test('there is none without lines', () => {
    expect(patternOf({ ...rule, lineLength: () => -9 })).toBeNull();
  });

  test('tells polarity by thin lines, and misses lines that are not there', () => {
    const { frame, pitch } = truthOf(rule);
    // Half a pitch on, with light taken for ink: the ground between lines passes for wide lines.
    const model = { ...pitch.model, b: 0.5 };
    const wrong = tickPattern(drawTape(rule), frame, { ...pitch, model, ink: -1 }, [-25, 25]);
    expect(wrong?.duty).toBeGreaterThan(0.6);
    const gaps = patternOf({ ...rule, lineLength: (k) => (k % 3 ? centimetreLines(k) : -9) });
    expect(gaps?.presence).toBeCloseTo(2 / 3, 1);
  });

  test('another fold can be asked for', () => {
    const pattern = patternOf(rule)!;
    expect(pattern.classes(20, 1)).toMatchObject({ subdivisions: 20, margin: 0 });
    expect(pattern.classes(5, 1)).toMatchObject({ longAt: 0 });
    expect(pattern.classes(1, 1).margin).toBeGreaterThan(2);
  });
});

test('the common zone reaches as far as lines are half as dark', () => {
  const profile = [0, 0, 0.1, 0.3, 0.3, 0.45, 0.5, 0.5, 0.5, 0.45, 0.3, 0.2, 0.2];
  const typical = [...Array(20).fill(0), ...profile, ...Array(30).fill(0)];
  const contrast = { height: typical.length, ticks: 0, values: new Float32Array(), typical };
  expect(commonZone(contrast, 30)).toEqual({ middle: 27, from: 23, to: 30, contrast: 0.5 });
  expect(commonZone({ ...contrast, typical: typical.map((one) => one / 20) }, 30)).toBeNull();
});

test('lines by chance are explained by no fold, however many classes it has', () => {
  const [height, ticks, rows] = [30, 60, Array.from({ length: 28 }, (_, i) => i + 1)];
  let seed = 7;
  const values = Float32Array.from({ length: height * ticks }, () => {
    seed = (seed * 16807) % 2147483647;
    return seed / 2147483647;
  });
  const contrast = { height, ticks, values, typical: [] };
  const zone = { middle: 0, from: 0, to: 0, contrast: 1 };
  for (const fold of [2, 5, 10, 20]) {
    expect(Math.abs(foldScore(contrast, zone, 3, fold, rows))).toBeLessThan(0.08);
  }
});

test('dirt across a line doesn’t end it, but a long gap does', () => {
  const lengthOf = (column: string) => {
    const values = Float32Array.from(column, (mark) => (mark === '#' ? 1 : 0));
    const contrast = { height: values.length, ticks: 1, values, typical: [] };
    const zone = { middle: 0, from: 0, to: 0, contrast: 1 };
    return longLine(contrast, zone, 0, 1, [...values.keys()], 0).lengths[0];
  };
  expect(lengthOf('######......')).toBe(6);
  expect(lengthOf('####...###....')).toBe(10);
  expect(lengthOf('####....###....')).toBe(4);
});

test('seen only as far as the digits begin, ink where they stand makes no line long', () => {
  // Numbers before their line: their ink, from 0.4 graduations on, stands over the short line 6.
  const lines = { subdivisions: 8, longAt: 6, lengths: [0, 0, 0, 2, 0, 0, 12, 3], margin: 9 };
  expect(seenUpTo(lines, 4).margin).toBe(1);
  expect(seenUpTo(lines, -2)).toMatchObject({ lengths: Array(8).fill(0), margin: 0 });
  expect(seenUpTo(lines, 99)).toEqual(lines);
});

test('digits begin where the zone of the lines ends, or farther out, on either side', () => {
  const zone = { zoneMiddle: 0, zoneFrom: -1, zoneTo: 1.5 };
  expect(tenthsBeforeDigits(5, 3, zone)).toBe(20);
  expect(tenthsBeforeDigits(-5, 3, zone)).toBe(25);
  expect(tenthsBeforeDigits(2.5, 3, zone)).toBe(-5);
});

test('moving the count of the graduations moves the long line with it', () => {
  const lengths = fc.uniqueArray(fc.integer({ min: 0, max: 30 }), { minLength: 2, maxLength: 9 });
  fc.assert(
    fc.property(lengths, fc.integer({ min: -50, max: 50 }), (classes, first) => {
      const fold = classes.length;
      const ticks = 4 * fold;
      const [height, rows] = [40, Array.from({ length: 38 }, (_, i) => i + 1)];
      const values = Float32Array.from({ length: height * ticks }, (_, i) =>
        Math.floor(i / ticks) <= classes[(i % ticks) % fold]! ? 1 : 0,
      );
      const contrast = { height, ticks, values, typical: [] };
      const zone = { middle: 0, from: 0, to: 0, contrast: 1 };
      const found = longLine(contrast, zone, first, fold, rows, 0);
      const order = (index: number) => classes[modulo(index - first, fold)];
      expect(found.lengths).toEqual(classes.map((_, index) => order(index)));
      expect(order(found.longAt)).toBe(Math.max(...classes));
      const [longest, next] = [...classes].sort((a, b) => b - a);
      expect(found.margin).toBe(longest! - next!);
    }),
  );
});
