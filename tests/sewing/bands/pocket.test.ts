/** Rows 18.6 to 18.10, 20.11 of the check values; each source stands beside its figure. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, length, mm, toInches, toMm, ZERO } from '../../../src/lengths/length.ts';
import {
  handOpening,
  type PocketInput,
  patch,
  pocketAt,
  slashFacing,
} from '../../../src/sewing/bands/pocket.ts';
import { IN_SEAM, PATCH_TOP } from '../../../src/sewing/sources/pockets.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const placed: PocketInput = {
  ...{ front: inches(12.5), width: inches(6), down: inches(3) },
  ...{ slant: ZERO, place: { by: 'thirds' } },
};

describe('published', () => {
  // A teaching page on patch pockets: (12.5 − 6) ÷ 3 × 2 = 4.33 in from the centre front.
  test('18.10: 12.5 in to the side, a pocket of 6: 4.33 from the centre', () => {
    const at = solved(pocketAt(placed));
    expect(toInches(at.near).toFixed(2)).toBe('4.33');
    expect(toInches(at.far).toFixed(2)).toBe('10.33');
  });

  // A Complete Course in Dressmaking 2: 1 in hem and 3/8 in seam at the top, 3/8 in elsewhere.
  test('18.7: 1 3/8 in are added at the top, 3/8 in at each other edge', () => {
    const { hem, seam } = PATCH_TOP.value;
    const cut = solved(patch({ width: inches(6), deep: inches(7), hem, seam }));
    expect(toInches(cut.wide)).toBe(6.75);
    expect(toInches(cut.deep)).toBe(7 + 1.375 + 0.375);
  });

  // The New Dressmaker (1921), page 104.
  test('18.6: a slash of 5 in has a facing 3 by 6', () => {
    const { wide, deep } = slashFacing(inches(5));
    expect([toInches(wide), toInches(deep)]).toEqual([3, 6]);
  });

  // ANSUR II (2012): hand girth of men, 99th percentile, 23.7 cm; a page says a seam's pocket opens 5 in at least.
  test('18.9, 20.11: half of the largest hand is 11.9 cm, and 5 in passes it', () => {
    const least = solved(handOpening(mm(237), ZERO)) ?? ZERO;
    expect(toMm(least)).toBe(118.5);
    expect(IN_SEAM.value.opening[0]).toBeGreaterThan(least);
  });
});

describe('laws', () => {
  const any = fc
    .record({
      width: fc.integer({ min: 8, max: 2_000_000 }),
      more: fc.integer({ min: 8, max: 4_000_000 }),
      part: fc.double({ min: 0, max: 0.95, noNaN: true }),
      down: fc.integer({ min: 0, max: 4_000_000 }),
      by: fc.constantFrom('thirds' as const, 'middle' as const),
    })
    .map(({ width, more, part, down, by }): PocketInput => {
      const slant = length(Math.floor(part * width));
      const front = length(width + more);
      return { front, width: length(width), down: length(down), slant, place: { by } };
    });

  test('the pocket stays on the front, as long along its opening as it is wide', () => {
    fc.assert(
      fc.property(any, (input) => {
        const { near, far, downFar } = solved(pocketAt(input));
        expect(near).toBeGreaterThanOrEqual(0);
        expect(far).toBeLessThanOrEqual(input.front + 1e-6);
        expect(Math.hypot(far - near, downFar - input.down)).toBeCloseTo(input.width, 3);
        const [before, behind] = [near, input.front - far];
        expect(before).toBeCloseTo(input.place.by === 'thirds' ? 2 * behind : behind, 3);
      }),
      { seed: 2401 },
    );
  });

  test('mirrored, a pocket in the middle lies where it lay; scaled, all of it is', () => {
    fc.assert(
      fc.property(any, fc.integer({ min: 2, max: 6 }), (input, k) => {
        const one = solved(pocketAt(input));
        const more = solved(
          pocketAt({
            ...{ front: length(k * input.front), width: length(k * input.width) },
            ...{ down: length(k * input.down), slant: length(k * input.slant), place: input.place },
          }),
        );
        expect(more.near).toBeCloseTo(k * one.near, 2);
        expect(more.downFar).toBe(k * one.downFar);
        const middle = solved(pocketAt({ ...input, place: { by: 'middle' } }));
        expect(input.front - middle.far).toBeCloseTo(middle.near, 3);
        const near = length(Math.floor(middle.near));
        const typed = solved(pocketAt({ ...input, place: { by: 'given', near } }));
        expect(typed.near).toBe(near);
      }),
      { seed: 2402 },
    );
  });
});

test('what is wrong names its field', () => {
  const wrong = (set: Partial<PocketInput>) => fieldsOf(pocketAt({ ...placed, ...set }));
  expect(wrong({ front: ZERO, width: ZERO, down: mm(-1), slant: mm(-1) })).toEqual([
    ...['front', 'width', 'down', 'slant'],
  ]);
  expect(wrong({ width: inches(13) })).toEqual(['width']);
  expect(wrong({ slant: inches(6) })).toEqual(['slant']);
  expect(wrong({ place: { by: 'given', near: inches(7) } })).toEqual(['near']);
  expect(wrong({ place: { by: 'given', near: mm(-1) } })).toEqual(['near']);
  const none = { width: ZERO, deep: ZERO, hem: mm(-1), seam: mm(-1) };
  expect(fieldsOf(patch(none))).toEqual(['width', 'deep', 'hem', 'seam']);
  expect(fieldsOf(handOpening(ZERO, mm(-1)))).toEqual(['hand', 'ease']);
});

describe('worked here', () => {
  const at = (set: Partial<PocketInput>) =>
    pocketAt({
      front: mm(200),
      width: mm(130),
      down: mm(80),
      slant: mm(50),
      place: { by: 'middle' },
      ...set,
    });

  test('13 along and 5 lower is 12 across: its farther end 5 lower', () => {
    const { near, far, downFar } = solved(at({}));
    expect([near, far, downFar].map((one) => toMm(one))).toEqual([40, 160, 130]);
  });

  test('from the centre as far as it leaves, and no further', () => {
    const near = (of: number) => at({ place: { by: 'given', near: length(of) } });
    expect(boundTold(near, mm(90), 'near', 'most')).toBe(mm(80));
    expect(fieldsOf(near(-1))).toEqual(['near']);
    const width = (of: number) => at({ width: length(of), slant: ZERO });
    expect(boundTold(width, mm(300), 'width', 'under')).toBe(mm(200));
  });

  test('slanted less than it is wide; of no width only that is told', () => {
    const slant = (of: number) => at({ slant: length(of) });
    expect(boundTold(slant, mm(140), 'slant', 'under')).toBe(mm(130));
    expect(fieldsOf(at({ width: ZERO, slant: ZERO }))).toEqual(['width']);
  });

  test('half a hand and what is to spare; nothing where no hand is known', () => {
    expect(toMm(solved(handOpening(mm(200), mm(10))) ?? ZERO)).toBe(110);
    expect(solved(handOpening(undefined, mm(10)))).toBeUndefined();
  });
});
