import { expect, test } from 'vitest';
import { lineThrough } from '../../src/drawing/figure-line.ts';
import { rowsUnder } from '../../src/drawing/row-marks.ts';
import { exactLength, mm } from '../../src/lengths/length.ts';
import type { Run } from '../../src/sewing/run.ts';

const row = (count: number, made: readonly number[]) => {
  const marks = Array.from({ length: count }, (_, i) => {
    return { at: exactLength(8000 * (4 + 8 * i)), label: String(i + 1), kind: 'hole' as const };
  });
  const run: Run = { datum: 'cut-end', length: mm(8 * count), marks };
  return { run, made: marks.map((_, i) => made.includes(i)) };
};
const above = [lineThrough('cloth', { x: 0, y: 0 }, { x: 200, y: 0 })];
const told = (shapes: ReturnType<typeof rowsUnder>) =>
  shapes.flatMap((shape) => ('line' in shape && shape.made !== undefined ? [shape] : []));

test('a short row is rings that don’t touch, each full or open', () => {
  const marks = told(rowsUnder(above, [row(10, [0, 1, 4])]));
  expect(marks.map(({ made }) => made)).toEqual([...'1100100000'].map((one) => one === '1'));
  const [first, second] = marks.map(({ ring }) => ring);
  if (!first || !second) throw new Error('no rings');
  expect(second.at.x - first.at.x).toBeGreaterThan(2 * first.radius);
});

test('a long row is bands, one for what is made next to each other and one for what is to come', () => {
  const first57 = Array.from({ length: 57 }, (_, i) => i);
  const bands = told(rowsUnder(above, [row(78, first57)]));
  expect(bands.map(({ made }) => made)).toEqual([true, false]);
  const xs = bands.map(({ points }) => points.map(({ x }) => x));
  // 57 of 78 holes, evenly.
  const long = Math.max(...(xs[1] ?? [])) - Math.min(...(xs[0] ?? []));
  const made = Math.max(...(xs[0] ?? [])) - Math.min(...(xs[0] ?? []));
  expect(made / long).toBeCloseTo(57 / 78, 1);
  expect(told(rowsUnder(above, [row(2000, [])]))).toHaveLength(1);
});

test('two rows lie under each other, and a row without marks is nothing', () => {
  const [one, other] = told(rowsUnder(above, [row(1, []), row(1, [])])).map(({ ring }) => ring);
  expect((other?.at.y ?? 0) - (one?.at.y ?? 0)).toBeGreaterThan(4 * (one?.radius ?? 0));
  expect(rowsUnder(above, [row(0, [])])).toEqual(above);
});
