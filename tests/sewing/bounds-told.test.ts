import { describe, expect, test } from 'vitest';
import { exactLength, inches, type Length, mm, toMm, ZERO } from '../../src/lengths/length.ts';
import type { StripInput } from '../../src/sewing/edging/strip.ts';
import { widestOf } from '../../src/sewing/edging/strip-followed.ts';
import { stripHoles } from '../../src/sewing/edging/strip-holes.ts';
import { alongFor, toCut } from '../../src/sewing/edging/strip-room.ts';
import { gatherZones } from '../../src/sewing/fullness/gather-zones.ts';
import { gathers } from '../../src/sewing/fullness/gathers.ts';
import type { Fullness } from '../../src/sewing/fullness/gathers-input.ts';
import { pleatsInStrip } from '../../src/sewing/fullness/pleat-strip.ts';
import type { TuckSpread } from '../../src/sewing/fullness/tuck-input.ts';
import { tucks } from '../../src/sewing/fullness/tucks.ts';
import { mitre } from '../../src/sewing/hems/mitre.ts';
import type { Outcome } from '../../src/sewing/problem.ts';
import { followsRule } from '../../src/sewing/seams/needles.ts';
import { finishSeam, USUAL_ROWS } from '../../src/sewing/seams/seam-finish.ts';
import {
  stitchFromLength,
  stitchFromPerCm,
  stitchFromPerInch,
} from '../../src/sewing/seams/stitches.ts';
import { shareOut } from '../../src/sewing/sharing.ts';
import { boundTold } from './as-told.ts';
import { fieldsOf, solved } from './outcomes.ts';

// Arithmetic and circles worked here, no source.

test('stitches from a hundredth to a thousand, the length from so many to so few', () => {
  const length = (of: number) => stitchFromLength(of as Length);
  expect(boundTold(length, 1, 'stitch', 'least') / mm(10)).toBeCloseTo(1 / 1000, 9);
  expect(boundTold(length, inches(200), 'stitch', 'most')).toBe(inches(100));
  for (const from of [stitchFromPerInch, stitchFromPerCm]) {
    expect([0.01, 1000].map((count) => from(count).ok)).toEqual([true, true]);
    for (const given of [0.009, 1001]) {
      expect(from(given)).toMatchObject({ problems: [{ given, least: 0.01, most: 1000 }] });
    }
  }
});

// What mends the one end must not be refused for the other: a strip of 40 on 10 is four times as full.
describe('of a length that has a least and a most both are told, whichever it is past', () => {
  const gathered = (full: Fullness) =>
    gathers({ edge: mm(100), flat: mm(20), full, ring: false, ends: mm(10), parts: 4 });
  test.each<[string, number, number, (of: number) => Outcome<unknown>]>([
    ['stitch', mm(0.01), inches(100), (of) => stitchFromLength(of as Length)],
    ['strip', mm(120), mm(1640), (of) => gathered({ by: 'strip', strip: of as Length })],
    [
      ...(['sampleFlat', mm(50), mm(1000)] as const),
      (of) => gathered({ by: 'sample', flat: of as Length, gathered: mm(50) }),
    ],
    [
      // 1.01 at the least: 100 ÷ 1.01 of the zone that is fuller, and twenty times the fullest.
      ...(['strip', mm(100 + 100 / 2 + 100 / 2), mm(100 + 2000)] as const),
      (of) =>
        gatherZones({
          ...{ zones: [mm(100), mm(100)], ratios: [1, 2], parts: 4 },
          ...{ strip: of as Length, ends: ZERO },
        }),
    ],
    [
      // One box pleat 20 deep on 60: 4 × 20 of it, and a seam of 10 at both ends; 301 are too many.
      ...(['there', mm(160), mm(20 + 301 * 140) - 1] as const),
      (of) =>
        pleatsInStrip({
          ...{
            there: of as Length,
            width: mm(60),
            kind: 'box',
            depth: mm(20),
            flat: ZERO,
            ends: 'half',
          },
          seam: mm(10),
        }),
    ],
  ])('%s', (field, least, most, of) => {
    for (const past of [least - 1, most + 1]) {
      const told = of(past);
      expect(told.ok ? [] : told.problems).toMatchObject([{ field, least, most }]);
    }
    expect(boundTold(of, least - 1, field, 'least')).toBe(least);
    expect(boundTold(of, most + 1, field, 'most')).toBe(most);
  });
});

test('the rule of fives gives needles up to US 18, 110, where 19 is 120', () => {
  expect(followsRule({ us: 18, metric: 110 })).toBe(true);
  expect(followsRule({ us: 19, metric: 120 })).toBe(false);
});

describe('tucks', () => {
  const spread = (of: TuckSpread) =>
    tucks({
      ...{ finished: mm(639), first: mm(20), last: mm(20), depth: mm(1), step: ZERO },
      ...{ lies: 'last', seam: ZERO, spread: of },
    });

  test('300 over 599 mm are 2.003 apart, or 1.003 clear', () => {
    const spacing = (of: number) =>
      spread({ by: 'spacing', spacing: of as Length, fit: 'nearest' });
    expect(boundTold(spacing, mm(1), 'spacing', 'least') / mm(1)).toBeCloseTo(599 / 299, 9);
    const gap = (of: number) => spread({ by: 'gap', gap: of as Length, fit: 'nearest' });
    expect(boundTold(gap, mm(0.5), 'gap', 'least') / mm(1)).toBeCloseTo(599 / 299 - 1, 9);
    expect(fieldsOf(gap(-1))).toEqual(['gap']);
    // Less than nothing is no gap, however deep the tucks beside it are.
    const deep = tucks({
      ...{ finished: mm(100), first: mm(20), last: mm(20), depth: mm(10), step: ZERO },
      ...{ lies: 'last', seam: ZERO, spread: { by: 'gap', gap: mm(-1), fit: 'nearest' } },
    });
    expect(fieldsOf(deep)).toEqual(['gap']);
  });

  test('300 over 598 mm are just 2 apart', () => {
    const spacing = (of: number) =>
      tucks({
        ...{ finished: mm(638), first: mm(20), last: mm(20), depth: mm(1), step: ZERO },
        ...{ lies: 'last', seam: ZERO },
        spread: { by: 'spacing', spacing: of as Length, fit: 'nearest' },
      });
    expect(boundTold(spacing, mm(1), 'spacing', 'least')).toBe(mm(2));
  });

  test('in groups 300 together', () => {
    const each = (groups: number) => (of: number) =>
      spread({ by: 'groups', groups, each: of, spacing: mm(1.1) });
    expect(boundTold(each(3), 400, 'each', 'most')).toBe(100);
    expect(boundTold(each(2), 400, 'each', 'most')).toBe(150);
  });
});

describe('a mitre', () => {
  const at = (set: Partial<Parameters<typeof mitre>[0]>) =>
    mitre({
      ...{ depth: mm(20), side: mm(30), angle: 90, edgeStitch: ZERO, thickness: ZERO },
      turned: 'once',
      ...set,
    });

  test('corners from sharp to blunt, cloth no thicker than its hem, half of that turned twice', () => {
    expect(at({ angle: 5 })).toMatchObject({ problems: [{ field: 'angle', given: 5 }] });
    const bounds = (angle: number) => {
      const outcome = at({ angle });
      const [told] = outcome.ok ? [] : outcome.problems;
      return told && 'least' in told && 'most' in told ? [told.least, told.most] : [];
    };
    const [least = 0, most = 0] = bounds(5);
    expect([least < 90, most > 90]).toEqual([true, true]);
    expect(fieldsOf(at({ angle: Number(least) - 1 }))).toEqual(['angle']);
    expect(fieldsOf(at({ angle: Number(most) + 1 }))).toEqual(['angle']);
    expect(
      [at({ angle: Number(least), side: mm(20) }), at({ angle: Number(most), side: mm(20) })].map(
        ({ ok }) => ok,
      ),
    ).toEqual([true, true]);
    const thick = (turned: 'once' | 'twice') => (of: number) =>
      at({ turned, thickness: of as Length });
    expect(boundTold(thick('once'), mm(25), 'thickness', 'most')).toBe(mm(20));
    expect(boundTold(thick('twice'), mm(25), 'thickness', 'most')).toBe(mm(8));
  });
});

test.each(['depth', 'side'] as const)('at 120° a %s less than twice the other one', (field) => {
  const hems = { depth: mm(10), side: mm(10), angle: 120, edgeStitch: ZERO, thickness: ZERO };
  const deep = (of: number) => mitre({ ...hems, [field]: of as Length, turned: 'once' });
  expect(boundTold(deep, mm(25), field, 'under') / mm(1)).toBeCloseTo(20, 9);
});

test('of a blunt corner the other hem no deeper than its fold leaves room for', () => {
  // At 150° a depth of 20 less half of what a fold takes, 0.86, ÷ cos 30°, and that half again.
  const half = 1 - Math.PI / 4;
  const side = (of: number) =>
    mitre({
      ...{ depth: mm(20), side: of as Length, angle: 150, edgeStitch: ZERO },
      ...{ thickness: mm(2), turned: 'once' },
    });
  const under = boundTold(side, mm(40), 'side', 'under') / mm(1);
  expect(under).toBeCloseTo((20 - 2 * half) / (Math.sqrt(3) / 2) + 2 * half, 6);
});

test('no kind of seam has a share below nothing', () => {
  const share = (of: number) =>
    shareOut({
      change: mm(80),
      kinds: [
        { field: 'sides', count: 2, share: of },
        { field: 'darts', count: 2, share: 50 - of },
      ],
      step: mm(1),
    });
  expect(share(0).ok).toBe(true);
  expect(share(-1)).toMatchObject({
    problems: [{ kind: 'below-nothing', field: 'sidesShare', given: -1 }],
  });
});

describe('rows of a seam', () => {
  const rows = (set: Partial<Parameters<typeof finishSeam>[0]>) =>
    solved(finishSeam({ finish: 'plain', given: mm(15), ...USUAL_ROWS, ...set })).rows.map(
      ({ do: what, at, beside }) => [what, at && toMm(at), beside && toMm(beside)],
    );

  test('topstitched, each row where it was asked for', () => {
    expect(rows({ top: mm(2), topSecond: mm(8) }).slice(-2)).toEqual([
      ['topstitch', 2, undefined],
      ['topstitch', 8, undefined],
    ]);
  });

  test('an under layer cut narrow is laid in before it is sewn, as far from the other’s edge', () => {
    const felled = { finish: 'felled' as const, under: mm(4), turn: mm(6) };
    expect(rows({ ...felled, laid: 'inset' }).slice(0, 2)).toEqual([
      ['lay-in', 4, 11],
      ['sew', 0, undefined],
    ]);
    expect(rows(felled).slice(0, 2)).toEqual([
      ['sew', 0, undefined],
      ['trim-under', 4, undefined],
    ]);
  });
});

describe('a strip bent round 100, 20 wide', () => {
  const BENT: StripInput = {
    ...{ length: mm(300), width: mm(20), pitch: mm(8), margin: mm(5), hole: mm(2) },
    ...{ rows: 'one', fit: 'split', middle: 'any', corners: [], angle: 90, radius: mm(100) },
  };
  const arc = (degrees: number) => (100 * degrees * Math.PI) / 180;

  test('to a square cut it is the sine of the way round, and past a quarter no less than straight in', () => {
    // 5 in, at 105: at 30° half of it, from 90° on all of it.
    const cut = (degrees: number) => toMm(exactLength(toCut(BENT, mm(5), mm(arc(degrees)))));
    expect(cut(30)).toBeCloseTo(52.5, 3);
    expect(cut(90)).toBeCloseTo(105, 3);
    expect(cut(150)).toBeCloseTo(105, 3);
  });

  test('what is farther than the innermost row’s radius is nowhere along it', () => {
    expect(alongFor(BENT, mm(105)) / mm(1)).toBeCloseTo(arc(90), 3);
    expect(alongFor(BENT, mm(106))).toBe(Number.POSITIVE_INFINITY);
  });

  test('the first place that is followed leaves half a hole, and holes are apart, on its own row', () => {
    const follow = (...places: number[]) =>
      fieldsOf(stripHoles({ ...BENT, follow: places.map((place) => exactLength(mm(place))) }));
    expect([follow(0.99, 50), follow(1.01, 50)]).toEqual([['follow'], []]);
    expect([follow(5, 6.99, 50), follow(5, 7.01, 50)]).toEqual([['follow'], []]);
  });
});

test('the widest step of places that are followed, of one the whole', () => {
  expect(widestOf([5, 15, 40, 50].map(mm), mm(100))).toBe(mm(25));
  expect(widestOf([mm(5)], mm(100))).toBe(mm(100));
});
