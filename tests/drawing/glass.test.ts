import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CARD, onGlass, scaleFrom, stretchesOf } from '../../src/drawing/glass.ts';

const places = fc
  .uniqueArray(fc.integer({ min: 0, max: 30_000 }), { maxLength: 60 })
  .map((tenths) => tenths.map((one) => one / 10).sort((a, b) => a - b));

test('stretches cover the run; each begins at a place seen on the one before', () => {
  fc.assert(
    fc.property(
      places,
      fc.integer({ min: 1, max: 3000 }),
      fc.integer({ min: 40, max: 200 }),
      (marks, length, room) => {
        const stretches = stretchesOf(marks, length, room);
        expect(stretches[0]?.from).toBe(0);
        expect(stretches.at(-1)?.to).toBeGreaterThanOrEqual(length);
        for (const [i, { from, to, next }] of stretches.entries()) {
          expect(to - from).toBeCloseTo(room, 9);
          const after = stretches[i + 1];
          expect(next).toBe(after?.from);
          if (next === undefined) continue;
          expect(next).toBeGreaterThanOrEqual(from + room / 3 - 1e-9);
          expect(next).toBeLessThanOrEqual(to);
          if (!marks.includes(next)) expect(to - next).toBeCloseTo(10, 9);
        }
      },
    ),
  );
});

test('a run that fits is one stretch; glass too short for anything is a bug', () => {
  expect(stretchesOf([10, 20], 90, 100)).toEqual([{ from: 0, to: 100, next: undefined }]);
  expect(stretchesOf([10, 60, 95, 130], 150, 100).map(({ from }) => from)).toEqual([0, 95]);
  expect(() => stretchesOf([], 100, 30)).toThrow(RangeError);
});

test('every place is drawn on a whole device pixel, within half of one, from where the stretch begins', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 200, noNaN: true }),
      fc.double({ min: 3, max: 20, noNaN: true }),
      fc.constantFrom(1, 1.5, 2, 2.625, 3),
      (mm, pxPerMm, ratio) => {
        const device = onGlass(500 + mm, 500, { pxPerMm, ratio }) * ratio;
        expect(Math.abs(device - Math.round(device))).toBeLessThan(1e-6);
        expect(Math.abs(device - mm * pxPerMm * ratio)).toBeLessThanOrEqual(0.5 + 1e-6);
      },
    ),
  );
});

test('a card measured along both sides gives the scale, or says by how much they differ', () => {
  // ISO/IEC 7810, ID-1: 85.60 × 53.98 mm.
  expect(CARD).toEqual({ long: 85.6, short: 53.98 });
  const at = (side: 'long' | 'short', pxPerMm: number) => ({ side, px: CARD[side] * pxPerMm });
  const found = scaleFrom(at('long', 6.3), at('short', 6.3));
  expect(found.ok && found.pxPerMm).toBeCloseTo(6.3, 9);
  expect(scaleFrom(at('long', 6.3), at('short', 6.35)).ok).toBe(true);
  const apart = scaleFrom(at('long', 6.3), at('short', 6.5));
  expect(apart).toEqual({ ok: false, off: expect.closeTo(0.0308, 4) });
  expect(scaleFrom(at('long', 60), at('short', 60)).ok).toBe(false);
  expect(scaleFrom({ side: 'long', px: 0 }, { side: 'short', px: 0 }).ok).toBe(false);
});
