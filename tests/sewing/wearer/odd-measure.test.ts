import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm, toMm } from '../../../src/lengths/length.ts';
import { BODY_MEASURES, type BodyMeasureId } from '../../../src/sewing/sources/body-measures.ts';
import { GROWN_UPS } from '../../../src/sewing/sources/people.ts';
import { oddMeasure } from '../../../src/sewing/wearer/odd-measure.ts';

/*
 * First percentile, median and 99th in cm, women and men, computed from the records of ANSUR II, the US
 * Army Anthropometric Survey of 2012; in front of each its row among the published values.
 */
type Row = readonly [row: string, id: BodyMeasureId, women?: Three | undefined, men?: Three];
type Three = readonly [number, number, number];

const ROWS: readonly Row[] = [
  ['20.1', 'height', [148.3, 162.6, 177.8], [160.2, 175.5, 192.7]],
  ['20.2', 'bust-girth', [78.4, 94, 116]],
  ['20.2', 'chest-girth', undefined, [87.3, 105.6, 127.6]],
  ['20.2', 'upper-chest-girth', [78.4, 94, 116], [87.3, 105.6, 127.6]],
  ['20.3', 'waist-girth', [66.5, 85.2, 111.5], [72.5, 93.7, 121.4]],
  ['20.4', 'hip-girth', [86.7, 101.8, 120.6], [86.2, 101.7, 121.8]],
  ['20.5', 'neck-girth', [29.1, 32.8, 38.4], [34.6, 39.5, 46.7]],
  ['20.6', 'neck-base-girth', [32.9, 37, 42.3], [38.1, 43.3, 50.2]],
  ['20.7', 'head-girth', [52.1, 56, 61.1], [53.8, 57.4, 61.4]],
  ['20.8', 'upper-arm-girth', [24.4, 30.4, 38.8], [28, 35.7, 44.8]],
  ['20.9', 'forearm-girth', [22.5, 26.3, 31.2], [26.3, 31, 36.5]],
  ['20.10', 'wrist-girth', [13.8, 15.4, 17.4], [15.6, 17.6, 19.8]],
  ['20.11', 'hand-girth', [16.7, 18.7, 20.7], [18.9, 21.2, 23.7]],
  ['20.12', 'hand-breadth', [7, 7.8, 8.7], [7.8, 8.8, 9.9]],
  ['20.13', 'thigh-girth', [49.5, 61.3, 75.7], [49.7, 62.4, 77.4]],
  ['20.14', 'lower-thigh-girth', [32.9, 39.8, 50.1], [34.3, 40.8, 49.1]],
  ['20.15', 'calf-girth', [31.3, 37.2, 45.2], [33, 39.2, 46.7]],
  ['20.16', 'ankle-girth', [18.5, 21.5, 25.5], [19.8, 22.8, 26.8]],
  ['20.17', 'heel-girth', [27.7, 31, 34.8], [30.7, 34.3, 38.5]],
  ['20.18', 'foot-length', [21.9, 24.6, 27.6], [24.2, 27.1, 30.2]],
  ['20.19', 'shoulder-length', [11.4, 13.5, 16], [12.5, 15, 17.5]],
  ['20.20', 'shoulder-breadth', [32.2, 36.5, 40.6], [37.1, 41.5, 46.3]],
  ['20.21', 'shoulder-girth', [91.5, 102.7, 115.6], [103.9, 117.6, 134.1]],
  ['20.22', 'back-width', [33.1, 39.6, 45.7], [38.1, 45, 52.3]],
  ['20.23', 'back-waist-length', [36.5, 42.4, 49.4], [41.5, 47.7, 54.8]],
  ['20.24', 'cervical-to-wrist', [71.9, 80.5, 89.7], [80.5, 89.5, 99]],
  ['20.25', 'arm-length', [47.8, 54.2, 61.1], [52.3, 59.2, 67]],
  ['20.26', 'inside-leg-length', [68.5, 78, 88.8], [74.7, 84.5, 96]],
  ['20.27', 'total-crotch-length', [52.7, 61.9, 72.3], [52.3, 62, 73.9]],
  ['20.28', 'trunk-circumference', [139.4, 155.5, 174.5], [146.8, 166.4, 188]],
  ['20.29', 'cervical-height', [126.3, 139.3, 153.3], [137.3, 151.7, 167.7]],
  ['20.30', 'arm-span', [148.2, 165.7, 186], [162.8, 181.2, 202.9]],
];

const cm = (value: number) => mm(10 * value);
const others = (...pairs: readonly (readonly [BodyMeasureId, number])[]) =>
  new Map(pairs.map(([id, value]) => [id, [cm(value)]]));
const asked = (id: string, value: number, beside = others()) => {
  const odd = oddMeasure(id, cm(value), beside);
  return odd && [odd.past, Number((toMm(odd.end) / 10).toFixed(2)), odd.beside];
};

test.each(ROWS.map(([row, id, women, men]) => ({ row, id, women, men })))(
  '$row $id is asked about outside what one in a hundred is past',
  ({ id, women, men }) => {
    const both = [women, men].flatMap((one) => (one ? [one] : []));
    const [least, most] = [
      Math.min(...both.map(([first]) => first)),
      Math.max(...both.map(([, , last]) => last)),
    ];
    for (const [first, median, last] of both) {
      for (const usual of [first, median, last]) expect(asked(id, usual)).toBeUndefined();
    }
    expect(asked(id, least - 0.1)).toEqual(['least', least, undefined]);
    expect(asked(id, most + 0.1)).toEqual(['most', most, undefined]);
  },
);

test.each([
  ['women', 2],
  ['men', 3],
] as const)('the middle one of %s is asked nothing, whatever is held beside whatever', (_, at) => {
  const all = ROWS.flatMap((row): [BodyMeasureId, number][] => {
    const of = row[at];
    return of ? [[row[1], of[1]]] : [];
  });
  expect(all.length).toBeGreaterThan(20);
  for (const [id, value] of all) expect(asked(id, value, others(...all)), id).toBeUndefined();
});

describe('one beside another, of women and men together', () => {
  test('20.41 the nape is 0.840 to 0.879 of the height up', () => {
    const height = others(['height', 170]);
    expect(asked('cervical-height', 142, height)).toEqual(['least', 142.8, 'height']);
    expect(asked('cervical-height', 142.8, height)).toBeUndefined();
    expect(asked('cervical-height', 149.5, height)).toEqual(['most', 149.43, 'height']);
  });

  test('20.40 an inside leg of 31 in that was written as cm shows beside the height', () => {
    expect(asked('inside-leg-length', 31, others(['height', 164]))).toEqual([
      'least',
      73.31,
      'height',
    ]);
  });

  test('20.33 hip less waist: −6.3 to 28.9 cm, told at either', () => {
    expect(asked('hip-girth', 95, others(['waist-girth', 102]))).toEqual([
      'least',
      95.7,
      'waist-girth',
    ]);
    expect(asked('waist-girth', 102, others(['hip-girth', 95]))).toEqual([
      'most',
      101.3,
      'hip-girth',
    ]);
  });

  test('20.38 waist by hip, 0.72 to 1.06, where the difference of both is usual', () => {
    expect(asked('waist-girth', 52, others(['hip-girth', 75]))).toEqual(['least', 54, 'hip-girth']);
    expect(asked('hip-girth', 75, others(['waist-girth', 52]))).toEqual([
      'most',
      72.22,
      'waist-girth',
    ]);
  });

  test('20.39 a span of 70 in that was written as cm shows beside the height', () => {
    expect(asked('arm-span', 70, others(['height', 176]))).toEqual(['least', 168.96, 'height']);
    expect(asked('arm-span', 195, others(['height', 176]))).toEqual(['most', 193.6, 'height']);
    expect(asked('arm-span', 181.2, others(['height', 175.5]))).toBeUndefined();
  });

  test('20.45 wrist by hand, 0.765 to 0.903, where the difference of both is usual', () => {
    expect(asked('wrist-girth', 16.2, others(['hand-girth', 21.3]))).toEqual([
      'least',
      16.29,
      'hand-girth',
    ]);
    expect(asked('wrist-girth', 19.4, others(['hand-girth', 21.3]))).toEqual([
      'most',
      19.23,
      'hand-girth',
    ]);
  });

  test('20.31, 20.32 a head as round as the neck is asked about', () => {
    expect(asked('head-girth', 54, others(['neck-girth', 46]))).toEqual([
      'least',
      57.6,
      'neck-girth',
    ]);
    expect(asked('neck-base-girth', 50, others(['head-girth', 57]))).toEqual([
      'most',
      49,
      'head-girth',
    ]);
  });

  test('20.34, 20.37, 20.44 a bust is held to women’s, a chest to men’s', () => {
    expect(asked('bust-girth', 92, others(['waist-girth', 70]))).toEqual([
      'most',
      90.3,
      'waist-girth',
    ]);
    expect(asked('chest-girth', 92, others(['waist-girth', 70]))).toBeUndefined();
    expect(asked('neck-girth', 45, others(['bust-girth', 100]))).toEqual([
      'most',
      40,
      'bust-girth',
    ]);
    expect(asked('chest-girth', 90, others(['hip-girth', 100]))).toEqual([
      'least',
      93,
      'hip-girth',
    ]);
  });

  test('20.35, 20.36 hand by wrist, heel by ankle; 20.42, 20.43 back and arm by height', () => {
    expect(asked('hand-girth', 23, others(['wrist-girth', 17]))).toEqual([
      'most',
      22.2,
      'wrist-girth',
    ]);
    expect(asked('ankle-girth', 26, others(['heel-girth', 31]))).toEqual([
      'most',
      24.9,
      'heel-girth',
    ]);
    const height = others(['height', 180]);
    expect(asked('back-waist-length', 41, height)).toEqual(['least', 41.58, 'height']);
    expect(asked('arm-length', 66, height)).toEqual(['most', 65.34, 'height']);
  });

  test('left and right are each held against it', () => {
    const wrists = new Map([['wrist-girth', [cm(17), cm(12)]]]);
    expect(oddMeasure('hand-girth', cm(20), wrists)).toMatchObject({ beside: 'wrist-girth' });
  });
});

// 20.46 to 20.48: of children no table was read, and two series of their heads differ by half a centimetre.
test('no limit is of anyone under 17: a child’s head of 48 cm is asked about as few grown-ups’, never refused', () => {
  expect(asked('head-girth', 48)).toEqual(['least', 52.1, undefined]);
  const { spreads } = GROWN_UPS.value;
  for (const one of Object.values(spreads)) {
    expect(Object.keys(one).filter((key) => !['women', 'men', 'alike'].includes(key))).toEqual([]);
  }
});

test('what no build knows, and a child’s without a number published are not asked about', () => {
  expect(asked('tail-girth', 4)).toBeUndefined();
  expect(asked('scye-depth', 90)).toBeUndefined();
});

test('a slip of the unit is always asked about: inches written as cm, of anyone usual', () => {
  const usual = fc.constantFrom(...ROWS.filter(([, id]) => id === 'height' || id === 'head-girth'));
  fc.assert(
    fc.property(usual, fc.double({ min: 0, max: 1, noNaN: true }), ([, id, women], share) => {
      const [first, , last] = women ?? [0, 0, 0];
      const value = first + share * (last - first);
      expect(asked(id, value / 2.54)?.[0]).toBe('least');
      expect(asked(id, value * 2.54)?.[0]).toBe('most');
    }),
    { seed: 1501 },
  );
});

test('held against another, it is asked of the one just when it is asked of the other', () => {
  const value = fc.double({ min: 5, max: 250, noNaN: true });
  const { relations } = GROWN_UPS.value;
  fc.assert(
    fc.property(fc.constantFrom(...relations), value, value, ({ of, to }, one, other) => {
      const here = asked(of, one, others([to, other]))?.[2] === to;
      const there = asked(to, other, others([of, one]))?.[2] === of;
      expect(here).toBe(there);
    }),
    { seed: 1502 },
  );
});

test('what is published is of measures there are', () => {
  const { spreads, relations } = GROWN_UPS.value;
  const named = [...Object.keys(spreads), ...relations.flatMap(({ of, to }) => [of, to])];
  expect(named.filter((id) => !Object.hasOwn(BODY_MEASURES, id))).toEqual([]);
});

test('where the survey took one of them a little otherwise, it is said', () => {
  const of = (id: string, value: number, beside = others()) =>
    oddMeasure(id, cm(value), beside)?.alike;
  expect([of('waist-girth', 140), of('hip-girth', 140)]).toEqual([true, false]);
  expect(of('hip-girth', 95, others(['waist-girth', 102]))).toBe(true);
  expect(of('inside-leg-length', 31, others(['height', 164]))).toBe(false);
});

test('nothing, or less, is no measure of a body: asked about whatever is published of it', () => {
  for (const id of Object.keys(BODY_MEASURES)) {
    fc.assert(
      fc.property(fc.integer({ min: -300, max: 0 }), (value) => {
        expect(asked(id, value, others(['waist-girth', 80]))).toEqual(['least', 0, undefined]);
      }),
      { numRuns: 5, seed: 1 },
    );
  }
});

test('a measure of nothing is none to hold another against', () => {
  expect(asked('cervical-height', 142, others(['height', 0]))).toBeUndefined();
});
