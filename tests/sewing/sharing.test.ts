/** Published: patternstudio101.com, skirt darts (a teaching page), worked in inches. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, type Length, length, mm, toInches, toMm, ZERO } from '../../src/lengths/length.ts';
import { type SharesInput, shareOut } from '../../src/sewing/sharing.ts';
import { HIP_TO_WAIST } from '../../src/sewing/sources/shares.ts';
import { fieldsOf, solved } from './outcomes.ts';

const kind = (field: string, count: number, share: number) => ({ field, count, share });
const HIP: SharesInput = {
  change: inches(8),
  kinds: [kind('sides', 4, 13), kind('frontDarts', 2, 8), kind('backDarts', 2, 16)],
  step: inches(1 / 8),
};

describe('published', () => {
  // 15.2: hip 37 − waist 29 = 8 in; 1.04, 0.64, 1.28 each. Printed 1, 5/8 and 1 1/4, together 7 3/4.
  test('15.2: four side seams 13 % each, two darts in front 8, two behind 16', () => {
    const { sides, frontDarts, backDarts } = HIP_TO_WAIST.value;
    const printed = Object.entries({ sides, frontDarts, backDarts });
    expect(printed.map(([field, { count, share }]) => kind(field, count, share))).toEqual(
      HIP.kinds,
    );
  });

  test('15.2: 8 in shared 13, 8 and 16 % come to 8 in whole, where the page is 1/4 in short', () => {
    const { each, exact, left } = solved(shareOut(HIP));
    expect(exact.map((one) => Number(toInches(one).toFixed(2)))).toEqual([1.04, 0.64, 1.28]);
    expect(each.map(toInches)).toEqual([1, 5 / 8, 1 + 3 / 8]);
    expect(left).toBe(0);
  });
});

test('what the counts can’t carry is told: 1 cm and 1 mm over four edges alike', () => {
  const { each, left } = solved(
    shareOut({ change: mm(11), kinds: [kind('sides', 4, 25)], step: mm(1) }),
  );
  expect([each.map(toMm), toMm(left)]).toEqual([[3], -1]);
});

test('one place makes up for six others, where that leaves nothing over', () => {
  const kinds = [kind('one', 1, 100 / 13), kind('six', 6, 200 / 13)];
  const { each } = solved(shareOut({ change: mm(5), kinds, step: mm(1) }));
  expect(each.map(toMm)).toEqual([5, 0]);
});

test('what has no share is left as it is, whatever is left over', () => {
  const kinds = [kind('sides', 4, 25), kind('back', 1, 0)];
  const { each, left } = solved(shareOut({ change: mm(13), kinds, step: mm(1) }));
  expect([each.map(toMm), toMm(left)]).toEqual([[3, 0], 1]);
});

test('a change of less than half a step changes nothing, and is all left', () => {
  const { each, left } = solved(shareOut({ ...HIP, change: inches(1 / 20) }));
  expect([each, left]).toEqual([[ZERO, ZERO, ZERO], inches(1 / 20)]);
});

/** Every way in whole steps, by force. */
function byForce({ change, kinds, step }: SharesInput, exact: readonly number[]): number[] {
  const target = Math.round(change / step);
  let best: { rest: number; off: number; steps: number[] } | undefined;
  const look = (steps: number[]) => {
    const i = steps.length;
    if (i < kinds.length) {
      const near = Math.round((exact[i] ?? 0) / step);
      for (let one = Math.max(0, near - 6); one <= near + 6; one += 1) look([...steps, one]);
      return;
    }
    const sum = steps.reduce((all, one, at) => all + one * (kinds[at]?.count ?? 0), 0);
    const off = steps.reduce(
      (all, one, at) => all + (kinds[at]?.count ?? 0) * (one - (exact[at] ?? 0) / step) ** 2,
      0,
    );
    const rest = Math.abs(target - sum);
    if (!best || rest < best.rest || (rest === best.rest && off < best.off - 1e-9)) {
      best = { rest, off, steps };
    }
  };
  look([]);
  return [best?.rest ?? Number.NaN, best?.off ?? Number.NaN];
}

test('no other whole steps leave less, or lie nearer to the shares', () => {
  const some = fc
    .array(fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 30 })), {
      minLength: 1,
      maxLength: 4,
    })
    .map((all) => {
      const whole = all.reduce((sum, [count, weight]) => sum + count * weight, 0);
      return all.map(([count, weight], i) => kind(`kind${i}`, count, (100 * weight) / whole));
    });
  fc.assert(
    fc.property(some, fc.integer({ min: 0, max: 4000 }), (kinds, tenths) => {
      const change = length(tenths * 800 + 1);
      const input = { change, kinds, step: mm(1) };
      const { each, exact, left } = solved(shareOut(input));
      const [rest, off] = byForce(input, exact);
      const sum = each.reduce((all, one, i) => all + one * (kinds[i]?.count ?? 0), 0);
      expect(change - sum).toBeCloseTo(left, 6);
      expect(Math.abs(Math.round(change / mm(1)) - sum / mm(1))).toBe(rest);
      const mine = each.reduce(
        (all, one, i) =>
          all + (kinds[i]?.count ?? 0) * (((one as Length) - (exact[i] ?? 0)) / mm(1)) ** 2,
        0,
      );
      expect(mine).toBeCloseTo(off ?? 0, 6);
    }),
    { seed: 1530, numRuns: 200 },
  );
});

describe('refused', () => {
  test.each<[string, Partial<SharesInput>, string[]]>([
    ['no change', { change: ZERO }, ['change']],
    ['steps of nothing', { step: ZERO }, ['step']],
    ['no kinds', { kinds: [] }, ['change']],
    ['a count of none', { kinds: [kind('sides', 0, 25)] }, ['sides']],
    ['half an edge', { kinds: [kind('sides', 1.5, 25)] }, ['sides']],
    ['a share of less', { kinds: [kind('sides', 4, -1)] }, ['sidesShare']],
    ['shares of 96', { kinds: [kind('sides', 4, 24)] }, ['sidesShare']],
  ])('%s', (_, set, fields) => {
    expect(fieldsOf(shareOut({ ...HIP, ...set }))).toEqual(fields);
  });
});

// Ours: four edges carry nothing or four steps, and two were wanted.
test('of two as near and as even the one that takes less', () => {
  const kinds = [kind('sides', 4, 25)];
  const { each, left } = solved(shareOut({ change: mm(2), kinds, step: mm(1) }));
  expect([each.map(toMm), toMm(left)]).toEqual([[0], 2]);
  // Of three steps two edges and four have half a step each: one on the two, or one on the four.
  const six = [kind('sides', 2, 16.625), kind('darts', 4, 16.625)];
  const halves = solved(shareOut({ change: length(800), kinds: six, step: length(266) }));
  expect([halves.each, halves.exact]).toEqual([
    [266, 0],
    [133, 133],
  ]);
});

test('shares that were rounded may miss a hundred by a half, and no more', () => {
  const at = (share: number) =>
    fieldsOf(shareOut({ change: mm(80), kinds: [kind('sides', 1, share)], step: mm(1) }));
  expect([99.5, 100.5].flatMap(at)).toEqual([]);
  expect([99.4, 100.6].flatMap(at)).toEqual(['sidesShare', 'sidesShare']);
});
