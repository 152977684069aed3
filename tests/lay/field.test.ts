import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fieldOf } from '../../src/lay/field.ts';
import { centred, moved, tidied } from '../../src/lay/outline.ts';
import { problemOf } from '../../src/lay/problem.ts';
import { outlines, piece, shared } from './lays.ts';

/** Two pieces, the second at a place seen from the first. */
const place = fc.tuple(
  fc.integer({ min: -4000, max: 4000 }),
  fc.integer({ min: -4000, max: 4000 }),
);

test('a place is free just where a general library finds no shared area', () => {
  fc.assert(
    fc.property(outlines(), outlines(), place, (one, other, [x10, y10]) => {
      const problem = problemOf({
        width: 2000,
        pieces: [piece('a', one, { turns: [0] }), piece('b', other, { turns: [0] })],
      });
      const field = fieldOf(problem);
      field.shape[1] = 1;
      field.x[1] = x10 / 10;
      field.y[1] = y10 / 10;
      const depth = field.depthOf(1, 0);
      const area = shared(centred(tidied(one)), moved(centred(tidied(other)), x10 / 10, y10 / 10));
      // What shares less than a square micrometre only touches.
      if (area > 1e-6) expect(depth).toBeGreaterThan(0);
      if (depth > 1e-6) expect(area).toBeGreaterThan(0);
    }),
    { seed: 2, numRuns: 300 },
  );
});

test('the way out leads out, by as much as the depth says, and no shorter way does', () => {
  fc.assert(
    fc.property(outlines(), outlines(), place, (one, other, [x10, y10]) => {
      const pieces = [piece('a', one, { turns: [0] }), piece('b', other, { turns: [0] })];
      const field = fieldOf(problemOf({ width: 2000, pieces }));
      field.shape[1] = 1;
      const at = [x10 / 20, y10 / 20] as const;
      field.prepare(1, 1, new Float64Array(4).fill(1));
      field.io[0] = at[0];
      field.io[1] = at[1];
      field.probe();
      if (field.hits.count === 0) return;
      const depth = field.hits.depth[0]!;
      const away = (far: number, turn: number) => {
        const [ux, uy] = [field.hits.outX[0]!, field.hits.outY[0]!];
        const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
        field.x[1] = at[0] + far * (cos * ux - sin * uy);
        field.y[1] = at[1] + far * (sin * ux + cos * uy);
        return field.depthOf(1, 0);
      };
      expect(away(depth + 1e-6, 0)).toBe(0);
      for (let k = 0; k < 24; k++) {
        expect(away(depth * 0.98, (k * Math.PI) / 12)).toBeGreaterThan(0);
      }
    }),
    { seed: 3, numRuns: 100 },
  );
});

test('the cost is the weighted sum of the depths, whichever way it is asked', () => {
  const pieces = ['a', 'b', 'c'].map((id) =>
    piece(
      id,
      [
        [0, 0],
        [100, 0],
        [100, 60],
        [0, 60],
      ],
      { turns: [0] },
    ),
  );
  const field = fieldOf(problemOf({ width: 300, pieces }));
  field.shape.set([0, 1, 2]);
  field.x.set([0, 90, 0]);
  field.y.set([0, 0, 50]);
  const weights = new Float64Array(9).fill(2);
  field.prepare(0, 0, weights);
  field.io.set([0, 0, Infinity, 0]);
  field.cost();
  // By hand: 10 mm into b along the cloth, 10 mm into c across it.
  expect(field.io[3]).toBeCloseTo(2 * (10 + 10), 9);
  field.probe();
  expect(field.io[3]).toBeCloseTo(40, 9);
  expect(field.depthOf(0, 1) + field.depthOf(0, 2)).toBeCloseTo(20, 9);
  field.within(-10, -30, 10, -12);
  field.io.set([0, 0, Infinity, 0]);
  field.cost();
  expect(field.io[3]).toBeCloseTo(20, 9);
});

test('wherever pieces lie along a strip, a place costs what all of them together come to', () => {
  const strewn = fc.array(fc.tuple(fc.integer({ min: -900, max: 2900 }), place), {
    minLength: 2,
    maxLength: 30,
  });
  fc.assert(
    fc.property(outlines(3, 6), strewn, (outline, all) => {
      const count = all.length;
      const pieces = [piece('a', outline, { count, turns: [0] })];
      const field = fieldOf(problemOf({ width: 900, pieces }));
      field.shape.fill(0);
      all.forEach(([x, [y]], i) => {
        field.x[i] = x;
        field.y[i] = y / 10;
      });
      const weights = Float64Array.from({ length: count * count }, (_, i) => 1 + (i % 7));
      field.prepare(0, 0, weights);
      for (const [x, [, y]] of all) {
        [field.x[0], field.y[0]] = [x, y / 10];
        const depths = all.map((_, i) => (i === 0 ? 0 : weights[i]! * field.depthOf(0, i)));
        const sum = depths.reduce((one, other) => one + other, 0);
        field.io.set([x, y / 10, Infinity, 0]);
        field.cost();
        expect(field.io[3]).toBeCloseTo(sum, 6);
        field.probe();
        expect(field.io[3]).toBeCloseTo(sum, 6);
        // What costs too much may be given up early, and still costs too much.
        field.io.set([x, y / 10, sum / 3, 0]);
        field.cost();
        if (sum > 0) expect(field.io[3]).toBeGreaterThan(sum / 3);
      }
    }),
    { seed: 4, numRuns: 40 },
  );
});
