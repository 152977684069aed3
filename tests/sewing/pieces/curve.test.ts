/** Geometry, with no published figures: held to a walk along the curve and to cloth drawn askew. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exactLength, type Length, length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { type ArcInput, arcOf, slantedEdge, squared } from '../../../src/sewing/pieces/curve.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const size = fc.integer({ min: 8000, max: 8_000_000 }).map(length);
const arc: ArcInput = { chord: mm(200), rise: mm(100), off: mm(15), side: 'inside', parts: 4 };

test('a half circle of 20 cm: 10 cm radius, and the line 1.5 cm inside is π × 8.5 cm', () => {
  const found = solved(arcOf(arc));
  expect(toMm(found.radius)).toBe(100);
  expect(toMm(found.edge)).toBeCloseTo(100 * Math.PI, 9);
  expect(toMm(found.line)).toBeCloseTo(85 * Math.PI, 9);
  expect(toMm(found.step)).toBeCloseTo(2 * 85 * Math.sin(Math.PI / 8), 9);
});

test('3, 4, 5: a slanted edge', () => {
  expect(toMm(solved(slantedEdge(mm(40), mm(30))))).toBe(50);
});

test('15.11, arithmetic: 2.6 aside over 20 is an edge of 20.17', () => {
  expect((toMm(solved(slantedEdge(mm(200), mm(26)))) / 10).toFixed(2)).toBe('20.17');
});

test('a curve walked in short steps is as long as it is said, on its line as on its edge', () => {
  fc.assert(
    fc.property(size, size, fc.double({ min: 0, max: 0.9, noNaN: true }), (chord, rise, part) => {
      const radius = (chord * chord) / (8 * rise) + rise / 2;
      const off = length(Math.floor(part * radius));
      for (const side of ['inside', 'outside'] as const) {
        const found = solved(arcOf({ chord, rise, off, side, parts: 100 }));
        const walked = 100 * found.step;
        // A walk of 100 steps is short by at most the turn of one, squared, over 24.
        expect(walked).toBeLessThanOrEqual(found.line + 1e-3);
        expect(found.line - walked).toBeLessThan(
          found.line * (found.turn / 100) ** 2 * 0.05 + 1e-3,
        );
      }
    }),
    { seed: 3201 },
  );
});

test('inside and outside lines lie evenly about the edge; scaled, all of it is', () => {
  fc.assert(
    fc.property(size, fc.integer({ min: 2, max: 6 }), (chord, k) => {
      const by = (n: number): ArcInput => ({
        ...{ chord: length(n * chord), rise: length(n * Math.ceil(chord / 5)) },
        ...{ off: length(n * Math.floor(chord / 50)), side: 'inside', parts: 3 },
      });
      const [one, more] = [solved(arcOf(by(1))), solved(arcOf(by(k)))];
      expect(more.line / one.line).toBeCloseTo(k, 9);
      const out = solved(arcOf({ ...by(1), side: 'outside' }));
      expect((one.line + out.line) / 2).toBeCloseTo(one.edge, 2);
      expect(one.run.marks.map(({ at }) => at / one.line)).toEqual(
        [0, 1 / 3, 2 / 3, 1].map((x) => expect.closeTo(x, 9)),
      );
    }),
    { seed: 3202 },
  );
});

test('cloth drawn askew: its skew comes back from its diagonals, and pulled square they are alike', () => {
  const cloth = { long: size, wide: size, part: fc.double({ min: -0.4, max: 0.4, noNaN: true }) };
  fc.assert(
    fc.property(fc.record(cloth), ({ long, wide, part }) => {
      const skew = part * Math.min(long, wide);
      const one = length(Math.round(Math.hypot(long + skew, wide)));
      const other = length(Math.round(Math.hypot(long - skew, wide)));
      const found = squared(long, one, other);
      if (!found.ok) return;
      const off = 2 + (2 * (one + other)) / (4 * long);
      expect(Math.abs(found.value.skew - skew)).toBeLessThan(off);
      const pulled = Math.hypot(long, Math.hypot(wide, skew));
      expect(Math.abs(found.value.wanted - pulled)).toBeLessThan(2);
      expect(found.value.usable).toBeCloseTo(long - Math.abs(found.value.skew), 3);
      const turned = solved(squared(long, other, one));
      expect(turned.skew).toBeCloseTo(-found.value.skew, 3);
    }),
    { seed: 3203 },
  );
});

test('worked by hand: diagonals of 150 and 147 over 90 of cloth are 2.475 askew, and 148.508 once it is square', () => {
  const { skew, wanted, usable } = solved(squared(mm(900), mm(1500), mm(1470)));
  expect([skew, usable].map(toMm)).toEqual([24.75, 875.25]);
  expect(toMm(wanted)).toBeCloseTo(Math.sqrt((1500 ** 2 + 1470 ** 2) / 2), 6);
});

test('cloth that is shorter than its diagonals by anything, as it has some width', () => {
  const long = (of: number) => squared(of as Length, mm(500), mm(500));
  expect(boundTold(long, mm(510), 'long', 'under')).toBe(mm(500));
});

test('what is wrong names its field', () => {
  const none: ArcInput = { chord: ZERO, rise: ZERO, off: mm(-1), side: 'inside', parts: 0 };
  expect(fieldsOf(arcOf(none))).toEqual(['chord', 'rise', 'off', 'parts']);
  expect(fieldsOf(arcOf({ ...arc, off: mm(100) }))).toEqual(['off']);
  expect(fieldsOf(slantedEdge(ZERO, mm(-1)))).toEqual(['high', 'aside']);
  expect(fieldsOf(squared(ZERO, ZERO, ZERO))).toEqual(['long', 'one', 'other']);
  expect(fieldsOf(squared(mm(900), mm(800), mm(810)))).toEqual(['long']);
  expect(solved(squared(mm(900), mm(1500), mm(1500)))).toMatchObject({
    skew: 0,
    usable: exactLength(mm(900)),
  });
});
