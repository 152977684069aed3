import { describe, expect, test } from 'vitest';
import { putBy, taskFor } from '../../../src/app/lay/lay-task.ts';
import type { Flaw, LaidOf } from '../../../src/garment/record/cloth-lay.ts';
import { faultsOf } from '../../../src/lay/check-lay.ts';
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
  const outcome = taskFor(laidOf, [], new Map());
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

/** Two pieces of 50 × 30 on a pattern of 24: at 0 and at 72, three repeats on. */
describe('a pattern that comes again', () => {
  const piece = { count: 2, along: 50 * CM, across: 30 * CM, fold: false };
  const of: LaidOf = {
    ...{ width: 140 * CM, folded: false, nap: true, gap: 0, repeat: 24 * CM },
    pieces: { piece },
  };
  const at = (x: number, y: number) => ({ id: 'piece', turn: 0, x: 10 * x, y: 10 * y });
  const kept = (x: number) => ({ id: 'piece', turn: 0, x: x * CM, y: 15 * CM });
  const faults = (laidOf: LaidOf, second: number, fixed: Parameters<typeof taskFor>[1] = []) => {
    const outcome = taskFor(laidOf, fixed, new Map());
    if (!outcome.ok) throw new Error(outcome.problem.kind);
    const lay = { laid: [at(25, 15), at(second, 15)], length: 10 * (second + 25) };
    return faultsOf(outcome.value, lay).map(({ kind }) => kind);
  };

  test('each piece begins where it does', () => {
    expect(faults(of, 97)).toEqual([]);
    expect(faults(of, 75)).toEqual(['off-repeat']);
    const { repeat: _, ...plain } = of;
    expect(faults(plain, 75)).toEqual([]);
  });

  test('folded, a lay has no part in it', () => {
    expect(taskFor({ ...of, folded: true }, [], new Map())).toMatchObject({ ok: true });
    expect(taskFor({ ...of, folded: true }, [], new Map())).not.toHaveProperty('value.repeat');
  });

  test('what is cut elsewhere in it stays there, and asks nothing of the rest of its kind', () => {
    expect(faults(of, 75, [kept(75)])).toEqual([]);
    expect(faults(of, 97, [kept(97)])).toEqual([]);
    expect(faults(of, 90, [kept(97)])).toContain('off-repeat');
  });

  test('put by hand a piece goes whole repeats, one at least', () => {
    const outcome = taskFor(of, [], new Map());
    if (!outcome.ok) throw new Error('not laid');
    const lay = { laid: [at(25, 15), at(97, 15)], length: 1220 };
    const put = (by: number) => putBy(outcome.value, lay, 1, [by, 0]).lay.laid[1]?.x;
    expect([1, -1, 500, 0].map(put)).toEqual([970 + 240, 970 - 240, 970 + 480, 970]);
  });
});
