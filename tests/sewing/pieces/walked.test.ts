/** Derived here, no source: walked along circles, whose length is known, and by adding up chords. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { arcOf } from '../../../src/sewing/pieces/curve.ts';
import { type WalkInput, walkedCurve } from '../../../src/sewing/pieces/walked.ts';
import { typed } from '../closures/closures-cases.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const NECK: WalkInput = { step: mm(10), steps: 38, rest: mm(4), radius: mm(80), parts: 4 };
const walk = (set: Partial<WalkInput> = {}) => solved(walkedCurve({ ...NECK, ...set }));

test('38 steps of 1 cm and 0.4: 38.4, in quarters of 9.6', () => {
  const { walked, places, run } = walk();
  expect(toMm(walked)).toBe(384);
  expect(run.marks.map(({ at }) => toMm(at))).toEqual([0, 96, 192, 288, 384]);
  expect(places.map(({ steps, rest }) => [steps, toMm(rest)])).toEqual([
    [0, 0],
    [9, 6],
    [19, 2],
    [28, 8],
    [38, 4],
  ]);
});

test('on a radius of 8 cm steps of 1 cm are 0.07 % short', () => {
  const { walked, line } = walk({ rest: ZERO });
  expect((100 * (line! - walked)) / walked).toBeCloseTo(100 / (24 * 64), 3);
  expect((100 * (line! - walked)) / walked).toBeCloseTo(0.07, 2);
  expect(walk({ radius: undefined }).line).toBeUndefined();
  // Its rest is an arc, too.
  const arcs = 38 * 160 * Math.asin(10 / 160) + 160 * Math.asin(4 / 160);
  expect(toMm(walk().line!)).toBeCloseTo(arcs, 6);
});

test.each<[string, Partial<WalkInput>, string]>([
  ['a step of nothing', { step: ZERO }, 'walkStep'],
  ['no step', { steps: 0 }, 'walkSteps'],
  ['2001 steps', { steps: 2001 }, 'walkSteps'],
  ['a rest under nothing', { rest: mm(-1) }, 'walkRest'],
  ['a rest of a whole step', { rest: mm(10) }, 'walkRest'],
  ['no radius', { radius: ZERO }, 'walkRadius'],
  ['a radius of half a step', { radius: mm(5) }, 'walkRadius'],
  ['no part', { parts: 0 }, 'parts'],
  ['101 parts', { parts: 101 }, 'parts'],
])('refused: %s', (_, set, field) => {
  expect(fieldsOf(walkedCurve({ ...NECK, ...set }))).toEqual([field]);
});

test('walked over an arc whose length is known, it comes to that', () => {
  const arcs = fc.record({
    chord: typed(60, 400),
    part: fc.double({ min: 0.05, max: 0.4, noNaN: true }),
  });
  fc.assert(
    fc.property(arcs, fc.integer({ min: 3, max: 60 }), ({ chord, part }, steps) => {
      const rise = length(Math.round(part * chord));
      const arc = solved(arcOf({ chord, rise, off: ZERO, side: 'inside', parts: steps }));
      const radius = length(Math.round(arc.radius));
      const step = length(Math.round(arc.step));
      const { line, walked } = walk({ step, steps, rest: ZERO, radius });
      // To half a unit a step, and what the radius was rounded by.
      expect(Math.abs(line! - arc.line)).toBeLessThan(steps + 2);
      expect(line!).toBeGreaterThanOrEqual(walked);
      expect(walked).toBe(steps * step);
    }),
    { numRuns: 100, seed: 291 },
  );
});

test('every mark is as many steps and as much over as it lies along; the last is the end', () => {
  fc.assert(
    fc.property(
      typed(2, 40),
      fc.integer({ min: 1, max: 200 }),
      fc.integer({ min: 1, max: 24 }),
      (step, steps, parts) => {
        const rest = length(Math.floor(step / 3));
        const { places, run, walked } = walk({ step, steps, rest, parts, radius: undefined });
        const off = places.map((place, i) => place.steps * step + place.rest - run.marks[i]!.at);
        expect(off.every((one) => Math.abs(one) < 1e-6)).toBe(true);
        expect(places.every((place) => place.rest >= 0 && place.rest < step)).toBe(true);
        expect(run.marks.at(-1)!.at).toBe(walked);
      },
    ),
    { numRuns: 100, seed: 292 },
  );
});
