import fc from 'fast-check';
import { expect, test } from 'vitest';
import { STEP, toGraduation } from '../../src/lengths/graduation.ts';
import { exactLength, inches, mm, toInches } from '../../src/lengths/length.ts';
import { markOut } from '../../src/sewing/marks.ts';
import type { Run } from '../../src/sewing/run.ts';
import { byCount, opening, planFor, roomy } from './closures/closures-cases.ts';

// treadleyardgoods.blogspot.com, 2023/08 (a shop's page): 8 buttons in 15 in, about 2 1/8
// in apart. Stepping that pitch along ends at 14 7/8 in: an eighth short.
test('marks are rounded from the datum; stepped ones drift an eighth short', () => {
  const plan = planFor(opening(inches(15), byCount(8)));
  const marked = markOut(plan.run, STEP['1/8in']);
  expect(marked.marks.map(({ at }) => toInches(at))).toEqual([
    0, 2.125, 4.25, 6.375, 8.625, 10.75, 12.875, 15,
  ]);
  const stepped = 7 * toInches(toGraduation(plan.stretches[0]!.pitch, STEP['1/8in']));
  expect(15 - stepped).toBe(1 / 8);
});

test('each mark says its step from the one before, the first from the datum', () => {
  const plan = planFor(opening(inches(15), byCount(8), { top: inches(0.5), bottom: inches(0.5) }));
  const { marks } = markOut(plan.run, STEP['1/8in']);
  expect(marks[0]!.step).toBe(inches(0.5));
  marks.slice(1).forEach(({ at, step }, i) => {
    expect(step).toBe(at - marks[i]!.at);
  });
});

test('worst error and worst unevenness, worked by hand', () => {
  const at = [0, 10.3, 20.6, 30.9].map((place) => exactLength(mm(place)));
  const run: Run = {
    datum: 'top-edge',
    length: mm(40),
    marks: at.map((place, i) => ({ at: place, label: String(i), kind: 'closure' })),
  };
  const marked = markOut(run, STEP['1mm']);
  // 0, 10, 21, 31: off by 0, 0.3, 0.4, 0.1; steps 10, 11, 10 against 10.3.
  expect(marked.worstError).toBe(mm(0.4));
  expect(marked.worstUnevenness).toBe(mm(0.7));
  expect(marked.tooCoarse).toBe(false);
});

test('from the datum to the first mark is no step between neighbours: it makes nothing uneven', () => {
  const run = (...places: number[]): Run => ({
    datum: 'top-edge',
    length: mm(40),
    marks: places.map((at, i) => ({ at: mm(at), label: String(i), kind: 'closure' })),
  });
  const one = markOut(run(10.4), STEP['1mm']);
  expect([one.worstError, one.worstUnevenness]).toEqual([mm(0.4), 0]);
  expect(one.marks[0]!.step).toBe(mm(10));
  // The worst is the largest, wherever it is in the run: 0.4, 0.1 and 0.2 off.
  expect(markOut(run(10.4, 20.1, 30.2), STEP['1mm']).worstError).toBe(mm(0.4));
  expect(markOut(run(10.4, 20.1, 30.2), STEP['1mm']).worstUnevenness).toBe(mm(0.3));
});

test('a mark that was made where it is makes no tape too coarse', () => {
  const marks: Run['marks'] = [
    { at: mm(12), label: '1', kind: 'closure' },
    { at: mm(12), label: '2', kind: 'closure', planned: mm(12.3) },
  ];
  const run: Run = { datum: 'top-edge', length: mm(40), marks };
  const marked = markOut(run, STEP['1mm']);
  expect(marked.tooCoarse).toBe(false);
  expect(marked.worstError).toBe(mm(0.3));
  const anew = marks.map(({ planned, ...mark }) => ({ ...mark, at: planned ?? mark.at }));
  expect(markOut({ ...run, marks: anew }, STEP['1mm']).tooCoarse).toBe(true);
});

test('what a division leaves between two marks of one place is no distance', () => {
  const at = [mm(30), exactLength(mm(30) + 1e-6)];
  const marks = at.map((place, i) => ({ at: place, label: String(i), kind: 'hole' as const }));
  expect(markOut({ datum: 'zero', length: mm(40), marks }, STEP['1mm']).tooCoarse).toBe(false);
});

test('a sewn mark keeps the place it was measured at', () => {
  const run: Run = {
    datum: 'top-edge',
    length: mm(40),
    marks: [{ at: mm(12.3), label: '1', kind: 'sewn' }],
  };
  const marked = markOut(run, STEP['1mm']);
  expect(marked.marks[0]!.at).toBe(mm(12.3));
  expect(marked.worstError).toBe(0);
});

test('marks at one place along keep how far across they are, and no tape is too coarse for them', () => {
  const across = [mm(2), mm(10)];
  const run: Run = {
    datum: 'hole-before',
    length: mm(3),
    marks: across.map((far, i) => ({ at: mm(3), across: far, label: String(i), kind: 'hole' })),
  };
  const marked = markOut(run, STEP['1mm']);
  expect(marked.marks.map((mark) => mark.across)).toEqual(across);
  expect(marked.tooCoarse).toBe(false);
});

test('marks of one row on one graduation are, whatever lies between them in another row', () => {
  const at = [mm(3), mm(3), mm(3.2)];
  const run: Run = {
    datum: 'hole-before',
    length: mm(4),
    marks: at.map((place, i) => ({ at: place, across: mm(i % 2), label: String(i), kind: 'hole' })),
  };
  expect(markOut(run, STEP['1mm']).tooCoarse).toBe(true);
});

test('a press line that falls on the raw edge is, one at the very edge is not', () => {
  const run = (at: number): Run => ({
    datum: 'raw-edge',
    length: mm(4),
    marks: [{ at: mm(at), label: '1', kind: 'press' }],
  });
  expect(markOut(run(0.4), STEP['1mm']).tooCoarse).toBe(true);
  expect(markOut(run(0), STEP['1mm']).tooCoarse).toBe(false);
});

// A mitre of two equal depths: both its marks are as far from the raw corner.
test('two marks that are to be at one place are not', () => {
  const marks = (['a', 'b'] as const).map((label) => ({
    at: mm(30.2),
    label,
    kind: 'mitre' as const,
  }));
  expect(markOut({ datum: 'raw-corner', length: mm(40), marks }, STEP['1mm']).tooCoarse).toBe(
    false,
  );
});

test('two marks on one graduation are said to be too close for the tape', () => {
  expect(markOut(planFor(opening(mm(5), byCount(9))).run, STEP['1mm']).tooCoarse).toBe(true);
  expect(markOut(planFor(opening(mm(5), byCount(9))).run, STEP['0.5mm']).tooCoarse).toBe(false);
  expect(markOut(planFor(opening(mm(8), byCount(9))).run, STEP['1mm']).tooCoarse).toBe(false);
});

test('no mark is over half a graduation out, no step over a whole one', () => {
  fc.assert(
    fc.property(
      roomy,
      fc.integer({ min: 1, max: 60 }),
      fc.constantFrom(...Object.values(STEP)),
      (edge, count, step) => {
        const marked = markOut(planFor({ ...edge, rule: byCount(count) }).run, step);
        for (const { at, exact } of marked.marks) {
          expect(Math.abs(at - exact)).toBeLessThanOrEqual(step / 2);
          expect(at % step).toBe(0);
        }
        expect(marked.worstError).toBeLessThanOrEqual(step / 2);
        expect(marked.worstUnevenness).toBeLessThanOrEqual(step);
        const steps = marked.marks.reduce((sum, mark) => sum + mark.step, 0);
        expect(steps).toBe(marked.marks.at(-1)!.at);
      },
    ),
  );
});
