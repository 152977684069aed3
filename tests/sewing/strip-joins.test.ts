import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exactLength, type Length, mm, toMm } from '../../src/lengths/length.ts';
import { joinsOf } from '../../src/sewing/strip-joins.ts';

const holesEvery = (pitch: number, count: number, first: number) =>
  Array.from({ length: count }, (_, i) => exactLength(mm(first + i * pitch)));

const SASH = {
  length: mm(1000),
  stock: mm(400),
  holes: holesEvery(8, 125, 4),
  hole: mm(2),
  avoid: [] as Length[],
  clear: mm(20),
};

test('a strip of a metre from pieces of 40 cm: three, joined between holes (derived here)', () => {
  const joins = joinsOf(SASH);
  expect(joins?.pieces).toBe(3);
  expect(joins?.at.map(toMm)).toEqual([336, 664]);
  expect(joins?.thin).toBe(false);
});

test('what is long enough is not joined', () => {
  expect(joinsOf({ ...SASH, stock: mm(1000) })).toEqual({ at: [], pieces: 1, thin: false });
});

test('corners and crossings are kept clear', () => {
  const at = joinsOf({ ...SASH, avoid: [mm(333), mm(664)] })?.at.map(toMm) ?? [];
  expect(at).toHaveLength(2);
  for (const join of at) {
    for (const place of [333, 664]) expect(Math.abs(join - place)).toBeGreaterThanOrEqual(20);
  }
});

test('where rows leave no room between holes it is said; where no place is reached there is none', () => {
  const both = [...SASH.holes, ...SASH.holes.map((at) => exactLength(at + mm(4)))];
  expect(joinsOf({ ...SASH, holes: both })?.thin).toBe(true);
  expect(joinsOf({ ...SASH, stock: mm(5) })).toBeUndefined();
});

test('no piece is longer than the stock, and no plan of fewer pieces exists', () => {
  const metres = fc.integer({ min: 300, max: 3000 });
  fc.assert(
    fc.property(
      metres,
      fc.integer({ min: 60, max: 900 }),
      fc.integer({ min: 5, max: 20 }),
      (long, stock, pitch) => {
        const holes = holesEvery(pitch, Math.floor(long / pitch), pitch / 2);
        const found = joinsOf({ ...SASH, length: mm(long), stock: mm(stock), holes, hole: mm(1) });
        if (!found) return;
        const cuts = [0, ...found.at.map(toMm), long];
        for (const [i, cut] of cuts.slice(1).entries()) {
          expect(cut - (cuts[i] ?? 0)).toBeLessThanOrEqual(stock + 1e-6);
        }
        // Brute force: joins stand at multiples of the pitch.
        let pieces = 1;
        for (let from = 0; long - from > stock; pieces++) {
          from = Math.floor((from + stock + 1e-9) / pitch) * pitch;
        }
        expect(found.pieces).toBe(pieces);
      },
    ),
  );
});
