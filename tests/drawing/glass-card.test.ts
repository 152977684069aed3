import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CARD, scaleFrom } from '../../src/drawing/glass-card.ts';

const at = (side: 'long' | 'short', pxPerMm: number) => ({ side, px: CARD[side] * pxPerMm });

test('a card measured along both sides gives the scale, or says by how much they differ', () => {
  // ISO/IEC 7810, ID-1: 85.60 × 53.98 mm.
  expect(CARD).toEqual({ long: 85.6, short: 53.98 });
  const found = scaleFrom(at('long', 6.3), at('short', 6.3));
  expect(found.ok && found.pxPerMm).toBeCloseTo(6.3, 9);
  expect(scaleFrom(at('long', 6.3), at('short', 6.35)).ok).toBe(true);
  expect(scaleFrom(at('long', 6.3), at('short', 6.5))).toEqual({
    ok: false,
    why: 'differ',
    off: expect.closeTo(0.0317, 4),
  });
});

test('measurements that agree on what no screen is are refused too', () => {
  expect(scaleFrom(at('long', 60), at('short', 60))).toMatchObject({ ok: false, why: 'no-screen' });
  expect(scaleFrom(at('long', 1), at('short', 1))).toMatchObject({ ok: false, why: 'no-screen' });
  expect(scaleFrom({ side: 'long', px: 0 }, { side: 'short', px: 0 }).ok).toBe(false);
});

test('whichever is measured first, they agree up to one part in a hundred, and the mean lies between', () => {
  const scale = fc.double({ min: 2, max: 30, noNaN: true });
  const off = fc.double({ min: -0.03, max: 0.03, noNaN: true });
  const side = fc.constantFrom('long' as const, 'short' as const);
  fc.assert(
    fc.property(scale, off, side, side, (pxPerMm, by, one, other) => {
      const [a, b] = [at(one, pxPerMm), at(other, pxPerMm * (1 + by))];
      const found = scaleFrom(a, b);
      const apart = by < 0 ? 1 / (1 + by) - 1 : by;
      fc.pre(Math.abs(apart - 0.01) > 1e-9);
      expect(found.ok).toBe(apart < 0.01);
      expect(scaleFrom(b, a)).toEqual(found);
      if (!found.ok) return;
      const [least = 0, most = 0] = [pxPerMm, pxPerMm * (1 + by)].sort((x, y) => x - y);
      expect(found.pxPerMm).toBeGreaterThanOrEqual(least - 1e-9);
      expect(found.pxPerMm).toBeLessThanOrEqual(most + 1e-9);
    }),
  );
});
