/** Rows 16.3, 16.8 and 16.10 are geometry, derived here, no source: k slashes of s add k × s; g 30 at 60° adds 31.4; a full circle's hem grows 2π × Δ. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type ExactLength,
  exactLength,
  type Length,
  LONGEST,
  length,
  mm,
  toMm,
  ZERO,
} from '../../../src/lengths/length.ts';
import {
  type GodetInput,
  godet,
  type LengthenInput,
  lengthen,
  type SlashInput,
  slash,
} from '../../../src/sewing/shaping/flare.ts';
import { boundTold } from '../as-told.ts';
import { typed } from '../closures/closures-cases.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => mm(10 * x);
const toCm = (x: ExactLength, places = 4) => Number((toMm(x) / 10).toFixed(places));

const SLASH: SlashInput = {
  sweep: cm(120),
  long: cm(60),
  slashes: 4,
  how: { by: 'spread', spread: cm(5) },
};
const GODET: GodetInput = {
  ...{ sweep: cm(120), godets: 4, edge: cm(30), how: { by: 'angle', angle: 60 } },
  ...{ seam: ZERO, hem: ZERO },
};
const LONGER: LengthenInput = {
  ...{ upper: cm(70), sweep: cm(447), long: cm(60), change: cm(5), pieces: 4 },
};

describe('geometry', () => {
  test('16.8: four slashes of 5 add 20; a hem wanted is spread back to as much', () => {
    expect(toCm(solved(slash(SLASH)).hem)).toBe(140);
    const back = solved(slash({ ...SLASH, how: { by: 'wanted', wanted: cm(140) } }));
    expect([toCm(back.spread), toCm(back.hem)]).toEqual([5, 140]);
    expect(back.angle).toBeCloseTo(5 / 60, 9);
  });

  test('16.10: edges of 30 at 60° add 31.4 each; straight across they are 30', () => {
    const one = solved(godet(GODET));
    expect([toCm(one.added, 1), toCm(one.chord), toCm(one.hem, 1)]).toEqual([31.4, 30, 245.7]);
    const back = solved(
      godet({ ...GODET, how: { by: 'added', added: one.added as ReturnType<typeof mm> } }),
    );
    expect(back.angle).toBeCloseTo(one.angle, 6);
  });

  test('its cloth: hem and seams to where they meet at its point', () => {
    const one = solved(godet({ ...GODET, seam: cm(1.5), hem: cm(2) }));
    expect(toCm(one.long)).toBe(35);
    const side = Math.PI / 6 + Math.asin(1.5 / 32);
    expect(toCm(one.wide)).toBeCloseTo(64 * Math.sin(side), 3);
    expect(toCm(solved(godet({ ...GODET, how: { by: 'angle', angle: 180 } })).wide)).toBe(60);
    // Its seams are beside a half circle no wider than that is.
    const half = { ...GODET, seam: cm(1.5), hem: cm(2), how: { by: 'angle', angle: 180 } } as const;
    expect(toCm(solved(godet(half)).wide)).toBe(64);
  });

  // 16.3: W 70, L 60, a full circle: hem 447.0, so its length is 60 for 2π.
  test('16.3: 5 longer at the hem of a whole circle is 10π more; at a line within, nothing', () => {
    const sweep = mm(700 + 2 * Math.PI * 600);
    const { hem, long } = solved(lengthen({ ...LONGER, sweep }));
    expect(toCm(exactLength(hem - sweep), 2)).toBeCloseTo(10 * Math.PI, 2);
    expect(toCm(long)).toBe(65);
    const four = lengthen({ ...LONGER, upper: cm(70), sweep: cm(130), pieces: 2 });
    // Each side leans a quarter of 1 rad.
    expect(toCm(solved(four).jog)).toBeCloseTo(5 * Math.tan(0.25), 3);
  });
});

describe('what is refused', () => {
  test('slashes', () => {
    const of = (set: Partial<SlashInput>) => fieldsOf(slash({ ...SLASH, ...set }));
    expect(of({ sweep: ZERO })).toEqual(['sweep']);
    expect(of({ long: ZERO })).toEqual(['long']);
    expect(of({ slashes: 0 })).toEqual(['slashes']);
    expect(of({ slashes: 61 })).toEqual(['slashes']);
    expect(of({ how: { by: 'spread', spread: ZERO } })).toEqual(['spread']);
    expect(of({ how: { by: 'wanted', wanted: cm(120) } })).toEqual(['wanted']);
    expect(of({ how: { by: 'wanted', wanted: ZERO } })).toEqual(['wanted']);
    expect(of({ how: { by: 'wanted', wanted: length(LONGEST + 1) } })).toEqual(['wanted']);
  });

  test('godets', () => {
    const of = (set: Partial<GodetInput>) => fieldsOf(godet({ ...GODET, ...set }));
    expect(of({ sweep: ZERO, godets: 0, edge: ZERO })).toEqual(['sweep', 'godets', 'edge']);
    expect(of({ how: { by: 'angle', angle: 4 } })).toEqual(['angle']);
    expect(of({ how: { by: 'angle', angle: 181 } })).toEqual(['angle']);
    expect(of({ how: { by: 'angle', angle: 180 } })).toEqual([]);
    expect(of({ how: { by: 'added', added: cm(2) } })).toEqual(['added']);
    expect(of({ how: { by: 'added', added: cm(95) } })).toEqual(['added']);
    expect(of({ how: { by: 'added', added: ZERO } })).toEqual(['added']);
    expect(of({ seam: mm(-1), hem: mm(-1) })).toEqual(['seam', 'hemMore']);
  });

  test('lengths', () => {
    const of = (set: Partial<LengthenInput>) => fieldsOf(lengthen({ ...LONGER, ...set }));
    expect(of({ upper: ZERO, sweep: ZERO, long: ZERO, pieces: 0 })).toEqual([
      ...['upper', 'sweep', 'long', 'pieces'],
    ]);
    expect(of({ change: ZERO })).toEqual(['change']);
    expect(of({ change: cm(-60) })).toEqual(['change']);
    expect(of({ change: cm(-59) })).toEqual([]);
    // Tapering by 10 over 10, a hem of 20 is gone after 20 more.
    const taper = { upper: cm(30), sweep: cm(20), long: cm(10), pieces: 2 };
    expect(of({ ...taper, change: cm(20) })).toEqual(['change']);
    expect(of({ ...taper, change: cm(19) })).toEqual([]);
    expect(of({ upper: cm(10), sweep: cm(447), long: cm(60), pieces: 2 })).toEqual(['pieces']);
  });
});

describe('laws', () => {
  test('there and back, twice as large, and one slash split in several', () => {
    fc.assert(
      fc.property(
        typed(300, 3000),
        typed(50, 900),
        fc.integer({ min: 1, max: 30 }),
        typed(2, 100),
        (sweep, long, slashes, spread) => {
          const there = solved(slash({ sweep, long, slashes, how: { by: 'spread', spread } }));
          const wanted = length(sweep + slashes * spread);
          const back = solved(slash({ sweep, long, slashes, how: { by: 'wanted', wanted } }));
          expect(back.spread).toBeCloseTo(spread, 3);
          const split = solved(
            slash({ sweep, long, slashes: 2 * slashes, how: { by: 'wanted', wanted } }),
          );
          expect(2 * split.angle).toBeCloseTo(there.angle, 9);
          const twice = solved(
            slash({
              sweep: length(2 * sweep),
              long: length(2 * long),
              slashes,
              how: { by: 'spread', spread: length(2 * spread) },
            }),
          );
          expect([twice.hem, twice.angle]).toEqual([2 * there.hem, there.angle]);
        },
      ),
      { numRuns: 300, seed: 3110 },
    );
  });

  test('longer and as much shorter again is what it was; in two steps as in one', () => {
    fc.assert(
      fc.property(
        typed(300, 1200),
        typed(0, 900),
        typed(300, 900),
        typed(5, 200),
        (upper, more, long, change) => {
          const input: LengthenInput = {
            upper,
            sweep: length(upper + more),
            long,
            change,
            pieces: 4,
          };
          const there = solved(lengthen(input));
          const longer = {
            ...input,
            sweep: there.hem as typeof upper,
            long: there.long as typeof upper,
          };
          const back = solved(lengthen({ ...longer, change: exactLength(-change) }));
          expect(back.hem / input.sweep).toBeCloseTo(1, 9);
          expect(back.long).toBe(long);
          expect(back.jog).toBeCloseTo(there.jog, 2);
          const again = solved(lengthen(longer));
          expect(
            again.hem / solved(lengthen({ ...input, change: length(2 * change) })).hem,
          ).toBeCloseTo(1, 9);
        },
      ),
      { numRuns: 300, seed: 3111 },
    );
  });

  test('a godet’s corners and its arc lie within its cloth', () => {
    fc.assert(
      fc.property(
        typed(50, 500),
        fc.integer({ min: 5, max: 180 }),
        typed(0, 20),
        typed(0, 40),
        (edge, angle, seam, hem) => {
          const one = solved(
            godet({ sweep: cm(100), godets: 1, edge, how: { by: 'angle', angle }, seam, hem }),
          );
          const [half, outer] = [(angle * Math.PI) / 360, edge + hem];
          // The line outside a side by the seam, out to the cut hem, and back to where both meet.
          if (seam >= outer) return;
          const along = Math.sqrt(outer ** 2 - seam ** 2);
          const corner = along * Math.sin(half) + seam * Math.cos(half);
          expect(one.wide / 2 + 1e-3).toBeGreaterThanOrEqual(corner);
          const meet =
            seam * Math.cos(half) * Math.cos(half) * (1 / Math.sin(half)) + seam * Math.sin(half);
          expect(one.long).toBeCloseTo(outer + meet, 2);
          expect(one.added).toBeGreaterThanOrEqual(one.chord - 1e-3);
        },
      ),
      { numRuns: 300, seed: 3112 },
    );
  });
});

test.each(['sweep', 'upper'] as const)(
  'no pieces are enough where %s is longer by more than 60 half turns',
  (field) => {
    const flat = {
      ...LONGER,
      upper: cm(10),
      sweep: cm(10),
      long: cm(1),
      change: mm(-1),
      pieces: 60,
    };
    const told = (of: number) => lengthen({ ...flat, [field]: of as Length });
    const under = boundTold(told, cm(300), field, 'under') / cm(1);
    expect(under).toBeCloseTo(10 + 60 * Math.PI, 4);
  },
);

describe('what a refusal says will do does', () => {
  test.each([1, 3, 6])(
    'pieces whose sides can jog: of a hem 390 more over 20, from %s on 7',
    (given) => {
      // Each takes less than π × 20 of it: 6.2 (worked here).
      const steep = { upper: cm(10), sweep: cm(400), long: cm(20), change: cm(2) };
      expect(boundTold((pieces) => lengthen({ ...steep, pieces }), given, 'pieces', 'least')).toBe(
        7,
      );
      const turned = { ...steep, upper: cm(400), sweep: cm(10), change: cm(-2) };
      expect(boundTold((pieces) => lengthen({ ...turned, pieces }), given, 'pieces', 'least')).toBe(
        7,
      );
    },
  );

  test('a godet adds an arc of 5 to 180 degrees, and something', () => {
    const at = (added: number) => godet({ ...GODET, how: { by: 'added', added: length(added) } });
    expect(boundTold(at, cm(1), 'added', 'least') / cm(30)).toBeCloseTo(Math.PI / 36, 9);
    expect(boundTold(at, cm(200), 'added', 'most') / cm(30)).toBeCloseTo(Math.PI, 9);
    expect(at(0)).toMatchObject({ problems: [{ kind: 'not-positive', field: 'added' }] });
  });
});
