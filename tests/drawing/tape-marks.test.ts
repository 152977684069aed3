import fc from 'fast-check';
import { expect, test } from 'vitest';
import { marksBefore, nearestMark } from '../../src/drawing/tape-marks.ts';
import { tapeStrip } from '../../src/drawing/tape-strip.ts';
import { exactLength, mm, UNITS_PER_MM } from '../../src/lengths/length.ts';
import type { Run } from '../../src/sewing/run.ts';
import { placesBetween } from '../lengths/arbitrary.ts';
import { BENCH_VIEWS } from './tape-arbitrary.ts';
import { lines, pills, runOf, texts, view, withMarks } from './tape-view.ts';

// Laws of a scale drawing, derived here.

/** Seven hooks along 46.3 cm, first 1.2 and last 2.5 cm from the ends: 7.1 cm apart. */
const HOOKS = runOf(463, [12, 83, 154, 225, 296, 367, 438]);

const RUNS: fc.Arbitrary<Run> = fc.array(placesBetween(0, 5000), { maxLength: 300 }).map((places) =>
  withMarks(
    mm(5000),
    places.sort((a, b) => a - b),
  ),
);

test('each mark’s line stands at its exact place, also between graduations', () => {
  const third = exactLength((100 / 3) * UNITS_PER_MM);
  const shapes = tapeStrip(withMarks(mm(100), [mm(12), third]), view(), 0);
  expect(lines(shapes, 'mark-here')).toEqual([{ x: 120, from: 0, to: 84 }]);
  expect(lines(shapes, 'marks')).toEqual([{ x: 333.333, from: 0, to: 84 }]);
});

test('the seven hooks are 7.1 cm apart when measured back', () => {
  const pxPerMm = 360 / 500;
  const shapes = tapeStrip(HOOKS, view({ pxPerMm, start: mm(-10) }));
  const found = lines(shapes, 'marks').map(({ x }) => x / pxPerMm - 10);
  expect(found).toHaveLength(7);
  for (const [i, at] of found.entries()) expect(at).toBeCloseTo(12 + 71 * i, 2);
  expect(texts(shapes, 'head-label').map(({ text }) => text)).toEqual([...'1234567']);
});

test('a mark already sewn has a head of its own kind', () => {
  const [first, ...rest] = HOOKS.marks;
  const run = { ...HOOKS, marks: [{ ...first!, kind: 'sewn' as const }, ...rest] };
  const shapes = tapeStrip(run, view({ pxPerMm: 0.7, start: mm(-20) }), 2);
  expect(pills(shapes).map(({ role }) => role)).toEqual([
    ...['head-sewn', 'head', 'head', 'head', 'head', 'head', 'head-here'],
  ]);
});

test('crowded marks keep their lines off the graduation; the current one crosses it', () => {
  const shapes = tapeStrip(runOf(100, [10, 10.3, 10.6, 30]), view(), 3);
  expect(lines(shapes, 'marks').map(({ from, to }) => to - from < 84 / 3)).toEqual([
    ...[false, true, true],
  ]);
  expect(lines(shapes, 'mark-here')[0]).toEqual({ x: 300, from: 0, to: 84 });
});

test('every line is at a mark, and no mark on the strip is farther from one than it shows', () => {
  fc.assert(
    fc.property(BENCH_VIEWS, RUNS, (seen, run) => {
      const x = (at: number) => ((at - seen.start) / UNITS_PER_MM) * seen.pxPerMm;
      const places = run.marks.map(({ at }) => x(at)).filter((at) => at >= 0 && at <= seen.width);
      const drawn = lines(tapeStrip(run, seen), 'marks').map((each) => each.x);
      for (const each of drawn) {
        expect(Math.min(...places.map((at) => Math.abs(at - each)))).toBeLessThan(0.001);
      }
      for (const at of places) {
        const miss = Math.min(...drawn.map((each) => Math.abs(at - each)));
        expect(miss).toBeLessThan(seen.tickGap / 8 + 0.001);
      }
    }),
  );
});

test('no two heads touch, none but the current is cut, and the current is always there', () => {
  fc.assert(
    fc.property(BENCH_VIEWS, RUNS, fc.nat(), (seen, run, pick) => {
      const here = run.marks.length ? pick % run.marks.length : undefined;
      const heads = pills(tapeStrip(run, seen, here)).sort((a, b) => a.x - b.x);
      for (const [i, each] of heads.entries()) {
        const left = heads[i - 1];
        if (left) expect(each.x - each.width / 2).toBeGreaterThan(left.x + left.width / 2);
        if (each.role === 'head-here') continue;
        expect(each.x - each.width / 2).toBeGreaterThanOrEqual(-0.001);
        expect(each.x + each.width / 2).toBeLessThanOrEqual(seen.width + 0.001);
      }
      if (here === undefined) return;
      const x = ((run.marks[here]!.at - seen.start) / UNITS_PER_MM) * seen.pxPerMm;
      const current = heads.filter(({ role }) => role === 'head-here');
      if (x >= 0.001 && x <= seen.width - 0.001) expect(current[0]!.x).toBeCloseTo(x, 2);
      else if (x < -0.001 || x > seen.width + 0.001) expect(current).toEqual([]);
    }),
  );
});

test('which heads are shown does not change while the tape is panned', () => {
  const run = runOf(
    3000,
    Array.from({ length: 200 }, (_, i) => 10 + i * 15),
  );
  const shown = (startMm: number) =>
    new Set(
      texts(tapeStrip(run, view({ pxPerMm: 0.5, start: mm(startMm) }), 20), 'head-label').map(
        ({ text }) => text,
      ),
    );
  const early = shown(0);
  const late = [...shown(100)].filter((label) => Number(label) < 40);
  expect(late.length).toBeGreaterThan(3);
  for (const label of late) expect(early).toContain(label);
});

test('2,000 marks cost no more shapes than the strip has room for', () => {
  let read = 0;
  const places = Array.from({ length: 2000 }, (_, i) => 1 + i * 5);
  const run = runOf(10_000, places);
  const counted: Run = {
    ...run,
    marks: new Proxy(run.marks, {
      get(marks, key, all) {
        read++;
        return Reflect.get(marks, key, all);
      },
    }),
  };
  const whole = tapeStrip(counted, view({ pxPerMm: 0.036 }), 1000);
  expect(read).toBeLessThan(6 * 2000);
  expect(whole.length).toBeLessThan(80);
  expect(lines(whole, 'marks').length).toBeLessThanOrEqual(360 / 0.5 + 1);
  expect(texts(whole, 'head-label-here').map(({ text }) => text)).toEqual(['1001']);

  const near = tapeStrip(run, view({ pxPerMm: 10, start: mm(5000) }), 1000);
  expect(lines(near, 'marks').map(({ x }) => x)).toEqual([60, 110, 160, 210, 260, 310, 360]);
});

test('a mark just at the end of the strip is on it', () => {
  expect(marksBefore(HOOKS.marks, mm(12))).toBe(0);
  const shapes = tapeStrip(HOOKS, view({ start: mm(83), pxPerMm: 360 / 71 }));
  expect(lines(shapes, 'marks').map(({ x }) => x)).toEqual([0, 360]);
});

test('the search for a mark agrees with looking at each', () => {
  fc.assert(
    fc.property(RUNS, placesBetween(-10, 5010), (run, at) => {
      expect(marksBefore(run.marks, at)).toBe(run.marks.filter((each) => each.at < at).length);
      const found = nearestMark(run.marks, at, mm(20));
      const far = run.marks.map((each) => Math.abs(each.at - at));
      const least = Math.min(Infinity, ...far);
      if (found === undefined) expect(least).toBeGreaterThan(mm(20));
      else expect(far[found]).toBe(least);
    }),
  );
});
