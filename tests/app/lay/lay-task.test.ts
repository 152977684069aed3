import { expect, test } from 'vitest';
import { taskFor } from '../../../src/app/lay/lay-task.ts';
import type { Flaw, LaidOf } from '../../../src/garment/record/cloth-lay.ts';
import { boxOf } from '../../../src/lay/outline.ts';

const CM = 80_000;
const flaw = (across: number, wide: number): Flaw => ({
  ...{ along: 20 * CM, long: 5 * CM },
  ...{ across: across * CM, wide: wide * CM },
});
/** Where a flaw lies across cloth of 140, in mm, from the selvedge or the fold; undefined off it. */
function across(of: Flaw, folded: boolean) {
  const piece = { count: 2, along: 50 * CM, across: 30 * CM, fold: false };
  const laidOf: LaidOf = {
    ...{ width: 140 * CM, folded, nap: false, gap: 0 },
    ...{ flaws: [of], pieces: { piece } },
  };
  const outcome = taskFor(laidOf, []);
  const [outline] = outcome.ok ? (outcome.value.flaws ?? []) : [];
  if (!outline) return undefined;
  const { x0, x1, y0, y1 } = boxOf(outline);
  expect([x0, x1]).toEqual([200, 250]);
  return [y0, y1];
}

test('a flaw lies where it was measured, no wider than the cloth', () => {
  expect(across(flaw(20, 10), false)).toEqual([200, 300]);
  expect(across(flaw(135, 10), false)).toEqual([1350, 1400]);
  expect(across(flaw(140, 10), false)).toBeUndefined();
});

test('on folded cloth it counts from the fold, whichever layer it is in', () => {
  // The fold is at 70: 20 to 30 from one selvedge is 40 to 50 from it, and so is 110 to 120.
  expect(across(flaw(20, 10), true)).toEqual([400, 500]);
  expect(across(flaw(110, 10), true)).toEqual([400, 500]);
  expect(across(flaw(60, 15), true)).toEqual([0, 100]);
  expect(across(flaw(70, 5), true)).toEqual([0, 50]);
  expect(across(flaw(135, 10), true)).toEqual([650, 700]);
});
