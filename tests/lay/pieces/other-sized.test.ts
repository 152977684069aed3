import fc from 'fast-check';
import { expect, test } from 'vitest';
import { otherSized } from '../../../src/lay/pieces/other-sized.ts';
import { simplified } from '../../../src/lay/pieces/simplify.ts';
import { rectangle } from '../lays.ts';

const size = fc.integer({ min: 20, max: 1500 });

test('a rectangle of the size it is cut is none other, wherever it lies; a few mm more or less is', () => {
  fc.assert(
    fc.property(size, size, size, fc.constantFrom(-3, 0, 3), (long, wide, at, by) => {
      const outline = rectangle(long + by, wide).map(([x, y]) => [x + at, y - at] as const);
      expect(otherSized(outline, long, wide)).toBe(by !== 0);
      expect(
        otherSized(
          outline.map(([x, y]) => [y, x] as const),
          wide,
          long,
        ),
      ).toBe(by !== 0);
    }),
    { numRuns: 40 },
  );
});

test('corners put round a curve make no other size of it', () => {
  // A round of 200 mm across, drawn by its tangents: the corners lie outside of it.
  const round = Array.from({ length: 90 }, (_, i) => {
    const angle = (i * Math.PI) / 45;
    return [100 * Math.cos(angle), 100 * Math.sin(angle)] as const;
  });
  expect(otherSized(simplified(round), 200, 200)).toBe(false);
  expect(otherSized(simplified(round), 204, 200)).toBe(true);
});
