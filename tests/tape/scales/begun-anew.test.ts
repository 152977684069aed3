import { expect, test } from 'vitest';
import type { Claim } from '../../../src/tape/claims/claim.ts';
import { begunAnew } from '../../../src/tape/scales/begun-anew.ts';

/** Lines from −30 to 90 but for some hidden just below nought, which is at 0; numbers every ten lines. */
function anew(values: readonly number[], hidden = 0, set: Partial<Claim> = {}): boolean {
  const direction = set.direction ?? 1;
  const claim = {
    ...{ unit: 'cm', mmPerTick: 1, ticksPerNumber: 10, direction },
    ...{ anchorTick: 10 * direction * (values[0] ?? 0), anchorValue: values[0] },
    agreeing: values.map((value) => ({ value })),
    ...set,
  } as Claim;
  const first = direction > 0 ? -30 : -90;
  const there = Array.from({ length: 121 }, (_, i) => {
    const below = -direction * (first + i);
    return below < 1 || below > hidden;
  });
  return begunAnew(claim, { first, there });
}

// Some tapes print 1 to 9 anew after every ten centimetres, or 1 to 11 after every foot. Common practice, no source.
test('numbers under ten say which ten only where the lines end at their nought', () => {
  expect(anew([3, 4, 5])).toBe(true);
  expect(anew([3, 4, 5], 0, { direction: -1 })).toBe(true);
  expect(anew([3, 4, 5], 10)).toBe(false);
  expect(anew([7, 8, 9])).toBe(true);
  expect(anew([8, 9, 10])).toBe(false);
});

test('in inches those under twelve, in millimetres none', () => {
  const inches = { unit: 'inch', mmPerTick: 2.54 } as const;
  expect(anew([9, 10, 11], 0, inches)).toBe(true);
  expect(anew([10, 11, 12], 0, inches)).toBe(false);
  expect(anew([1, 2, 3], 0, { unit: 'mm' })).toBe(false);
});

test('a line or two may be hidden; what a stretch before has foretold is no guess', () => {
  expect(anew([3, 4, 5], 2)).toBe(true);
  expect(anew([3, 4, 5], 3)).toBe(false);
  expect(anew([3, 4, 5], 0, { foretold: true })).toBe(false);
});
