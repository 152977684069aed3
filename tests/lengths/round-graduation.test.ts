/**
 * Which graduation is meant, against fraction.js, an exact-fraction library. That "at most"
 * goes down, "at least" up and what is to stay inside a fold inwards: common practice, no
 * source. Why what is bought goes up: pattern envelopes turn 1 1/4 yd (1.143 m) into 1.1 m,
 * to the nearest tenth, and their reader is 4 cm short.
 */
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';

import {
  downToGraduation,
  STEP,
  toGraduation,
  upToGraduation,
} from '../../src/lengths/graduation.ts';
import { insideGraduation } from '../../src/lengths/inside-graduation.ts';
import { exactLength, inches, length, mm } from '../../src/lengths/length.ts';

const seed = 12_08;
const steps = fc.constantFrom(...Object.values(STEP));
const units = fc.integer({ min: -4_000_000_000, max: 4_000_000_000 });
const parts = fc.integer({ min: 1, max: 400 });

test('rounds down and up as an exact quotient does', () => {
  fc.assert(
    fc.property(units, parts, steps, (over, under, step) => {
      const exact = exactLength(over / under);
      const steps = new Fraction(over, under).div(step);
      expect(downToGraduation(exact, step)).toBe(Number(steps.floor()) * step + 0);
      expect(upToGraduation(exact, step)).toBe(Number(steps.ceil()) * step + 0);
    }),
    { seed, numRuns: 2000 },
  );
});

test('seven sevenths of a length are on its graduation, whichever way is rounded', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 100_000 }), parts, steps, (marks, many, step) => {
      const noisy = exactLength(((marks * step) / many) * many);
      for (const round of [toGraduation, downToGraduation, upToGraduation]) {
        expect(round(noisy, step)).toBe(marks * step);
      }
    }),
    { seed, numRuns: 2000 },
  );
});

test('inside is strictly inside both edges and the nearest that is, or not at all', () => {
  const place = fc.integer({ min: 0, max: 2_000_000 });
  fc.assert(
    fc.property(place, place, place, steps, (a, b, at, step) => {
      const over = exactLength(Math.min(a, b));
      const under = exactLength(Math.max(a, b) / 3 + Math.min(a, b));
      const inside = insideGraduation(exactLength(at), step, { over, under });
      const all = [];
      for (let n = Math.floor(over / step); n * step < under; n++) {
        if (n * step > over) all.push(n * step);
      }
      const nearest = Math.min(...all.map((one) => Math.abs(one - at)));
      expect(all.length === 0).toBe(inside === undefined);
      if (inside === undefined) return;
      expect(all).toContain(inside);
      expect(Math.abs(inside - at)).toBe(nearest);
    }),
    { seed, numRuns: 500 },
  );
});

test('a stitch line 1 mm inside a fold stays off the fold on an eighth-inch tape', () => {
  const step = STEP['1/8in'];
  const fold = inches(1 / 2);
  const exact = length(fold - mm(1));
  expect(toGraduation(exact, step)).toBe(fold);
  expect(insideGraduation(exact, step, { over: mm(0), under: fold })).toBe(inches(3 / 8));
  expect(insideGraduation(mm(1), step, { over: mm(0), under: inches(1 / 8) })).toBeUndefined();
});

test('where one mark alone lies between two folds, it is that one', () => {
  const folds = { over: mm(10), under: mm(12) };
  for (const at of [0, 10.4, 11, 12, 50]) {
    expect(insideGraduation(mm(at), STEP['1mm'], folds)).toBe(mm(11));
  }
});
