import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mmPerUnit } from '../../../src/tape/graduations/tape-unit.ts';
import { sureCentimetres, tooFarForTenths, unitOf } from '../../../src/tape/numbering/unit.ts';

/** Digits a third of a centimetre tall, and millimetre lines two graduations long: a rule's. */
const TALL = [0.33, 2] as const;
/** Inches in tenths look so: digits 3 mm of 25.4 tall, lines of 3 mm on graduations of 2.54. */
const SMALL = [0.12, 1.2] as const;

test.each([
  // graduations per number, step: unit and mm per number. Common practice, no source.
  [10, 1, 'cm', 10],
  [20, 1, 'cm', 10],
  [8, 1, 'inch', 25.4],
  [16, 1, 'inch', 25.4],
  [32, 1, 'inch', 25.4],
  [20, 10, 'mm', 10],
  [100, 10, 'cm', 100],
  [50, 5, 'cm', 50],
  [16, 2, 'inch', 50.8],
] as const)('%d graduations and %d a number: %s', (subdivisions, step, unit, mmPerNumber) => {
  expect(unitOf(subdivisions, step, ...TALL)).toEqual({ unit, sure: true, mmPerNumber });
});

test('ten to one with small print may be tenths of an inch, and is asked', () => {
  expect(unitOf(10, 1, ...SMALL)).toEqual({ unit: 'cm', sure: false, mmPerNumber: 10 });
  expect(sureCentimetres(0.27, 1.4)).toBe(true);
  expect(sureCentimetres(0.27, 1.2)).toBe(false);
  expect(sureCentimetres(0.1, 1.95)).toBe(true);
});

test('ten to one so far on, with lines so long, are no tenths of an inch', () => {
  const far = [22, 23, 24, 25, 26];
  expect(tooFarForTenths(far, 1.55)).toBe(true);
  // Lines as short as those of tenths, numbers that a rule of two feet has, or few of them.
  expect(tooFarForTenths(far, 1.45)).toBe(false);
  expect(tooFarForTenths([21, 22, 23, 24, 25], 1.8)).toBe(false);
  expect(tooFarForTenths([23, 24, 25, 26, 26], 1.8)).toBe(false);
});

test('tens with ten lines between are millimetres on a rule and centimetres on a stake: asked', () => {
  for (const [share, zone] of [TALL, SMALL]) {
    expect(unitOf(10, 10, share, zone)).toEqual({ unit: 'mm', sure: false, mmPerNumber: 10 });
  }
});

test.each([
  [7, 1],
  [12, 1],
  [16, 10],
  [10, 3],
])('no scale has %d graduations and %d a number', (subdivisions, step) => {
  expect(unitOf(subdivisions, step, ...TALL)).toBeNull();
});

test('a number’s millimetres are its step in its unit', () => {
  const whole = fc.integer({ min: 1, max: 100 });
  const share = fc.double({ min: 0, max: 3, noNaN: true });
  fc.assert(
    fc.property(whole, fc.constantFrom(1, 2, 5, 10), share, share, (parts, step, digit, zone) => {
      const scale = unitOf(parts, step, digit, zone);
      if (scale) expect(scale.mmPerNumber).toBeCloseTo(step * mmPerUnit[scale.unit], 9);
    }),
  );
});
