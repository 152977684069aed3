import { describe, expect, test } from 'vitest';
import { exactLength, type Length, length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { circle, edgeError, roundOf } from '../../../src/sewing/shaping/circle.ts';
import type { CircleInput } from '../../../src/sewing/shaping/circle-input.ts';
import { type SectorBox, sectorBox, straightSide } from '../../../src/sewing/shaping/sector.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

// Geometry worked out here, with arcs as angle × radius; no source.

const SKIRT: CircleInput = {
  kind: { of: 'skirt', circles: 1, panels: 1 },
  edge: mm(700),
  long: mm(600),
  seam: ZERO,
  side: ZERO,
  hem: ZERO,
  cloth: undefined,
};
const at = (set: Partial<CircleInput>) => circle({ ...SKIRT, ...set });
const plan = (set: Partial<CircleInput>) => solved(at(set));
const skirt = (circles: number, panels = 1) => ({ of: 'skirt', circles, panels }) as const;
const gores = (count: number, hem: number) => ({ of: 'gores', count, hem: mm(hem) }) as const;
const rings = (radius: number) => ({ of: 'flounce', by: 'radius', radius: mm(radius) }) as const;
const full = (times: number) => ({ of: 'flounce', by: 'times', times }) as const;

describe('examples', () => {
  test('six gores of 12 at the edge and 30 at the hem, 60 long: 0.3 rad between radii of 40 and 100', () => {
    const { piece, hemLine } = plan({ kind: gores(6, 1800), edge: mm(720), long: mm(600) });
    expect(toMm(piece.inner)).toBeCloseTo(400, 6);
    expect(toMm(piece.outer)).toBeCloseTo(1000, 6);
    expect(piece.angle).toBeCloseTo(0.3, 9);
    expect(toMm(hemLine)).toBeCloseTo(1800, 6);
    // Cut with straight edges it narrows by 9 to each side of its middle.
    expect(toMm(straightSide(piece))).toBeCloseTo(Math.sqrt(600 ** 2 + 90 ** 2), 6);
  });

  test('two half circles are one: 5 mm out is 31.4 mm more all round, and a radius tells its round', () => {
    const two = plan({ kind: skirt(1, 2) });
    expect(toMm(edgeError(two, mm(5)))).toBeCloseTo(31.4159, 3);
    expect(toMm(roundOf(two, mm(100)))).toBeCloseTo(628.3185, 3);
  });

  test('of each ring that is slit two allowances are lost', () => {
    // Two rings of radius 100 with sides of 10: 2 × (628.32 − 20).
    const found = plan({ kind: rings(100), edge: mm(1216.6), side: mm(10) });
    expect(found.pieces).toBe(2);
    expect(toMm(roundOf(found, mm(120)))).toBeCloseTo(2 * (240 * Math.PI - 20), 3);
  });

  test('an edge that one ring just holds takes one', () => {
    // 2π × 100 mm is 5 026 548.2 units.
    const of = (edge: number) => plan({ kind: rings(100), edge: edge as Length }).pieces;
    expect([of(5_026_548), of(5_026_549), of(5_026_551)]).toEqual([1, 1, 2]);
  });

  test('a half circle with sides is as much higher as one of them, a whole one has none', () => {
    const half = plan({ kind: skirt(1 / 2), side: mm(15) });
    expect(half.box.wide).toBeCloseTo(2 * half.cutHem, 3);
    expect(half.box.high).toBeCloseTo(half.cutHem + mm(15), 3);
    const whole = plan({ side: mm(15) });
    expect(whole.box.wide).toBeCloseTo(2 * whole.cutHem, 3);
  });
});

describe('what a refusal says will do does, and less does not', () => {
  const about = (value: number, mms: number) => expect(value / mm(1)).toBeCloseTo(mms, 3);

  test('cloth: the shorter way of a piece, for half a circle its radius', () => {
    const outer = 700 / Math.PI + 600;
    about(
      boundTold((cloth) => at({ kind: skirt(1 / 2), cloth: cloth as Length }), 8, 'cloth', 'least'),
      outer,
    );
  });

  test('a seam less than the radius it is cut inside of', () => {
    const told = (seam: number) =>
      at({ kind: gores(6, 1800), edge: mm(720), long: mm(600), seam: seam as Length });
    about(boundTold(told, mm(500), 'seam', 'under'), 400);
  });

  test.each([
    [1.5, 1, 2],
    [2, 1, 2],
    [3, 2, 3],
    [7, 3, 7],
  ])('%s circles in %s panels are more than a turn each: %s panels', (circles, panels, least) => {
    const told = (n: number) => at({ kind: skirt(circles, n) });
    expect(boundTold(told, panels, 'panels', 'least')).toBe(least);
  });

  test.each([1, 2, 5])('gores that open by 230 cm over 5 cm: 7.32 turns, from %s on 8', (count) => {
    const told = (n: number) => at({ long: mm(50), kind: gores(n, 3000) });
    expect(boundTold(told, count, 'gores', 'least')).toBe(8);
  });

  test('no gores are enough for a hem of more than 60 turns', () => {
    const told = (hem: number) =>
      at({ long: mm(50), kind: { of: 'gores', count: 60, hem: hem as Length } });
    about(boundTold(told, mm(50_000), 'sweep', 'most'), 700 + 60 * 2 * Math.PI * 50);
    // Of 59 and a half 60 are.
    const many = at({ long: mm(50), kind: gores(1, 700 + 59.5 * 2 * Math.PI * 50) });
    expect(many).toMatchObject({ problems: [{ kind: 'too-few', field: 'gores', least: 60 }] });
  });

  test('rings: 200 of them at the most, each with its slit', () => {
    // An edge of 200 × 2π cm: 2π cm a ring and two sides of 1 cm.
    const edge = mm(Math.round(200 * 2 * Math.PI * 10));
    const least = (edge / mm(1) / 200 + 20) / (2 * Math.PI);
    const told = (radius: number) =>
      at({ kind: { of: 'flounce', by: 'radius', radius: radius as Length }, edge, side: mm(10) });
    about(boundTold(told, mm(5), 'radius', 'least'), least);
    // A ring so much times as full has its depth ÷ (times − 1) as a radius: 10 cm deep.
    const deep = (long: Length) => (value: number) =>
      at({ kind: full(value), edge, side: mm(10), long });
    const times = deep(mm(100));
    const refused = times(12);
    if (refused.ok) throw new Error('that is all seam');
    const [problem] = refused.problems;
    const most = problem && 'most' in problem ? Number(problem.most) : Number.NaN;
    // In hundredths, as it is typed, down.
    expect(most).toBe(Math.floor(100 * (1 + 100 / least)) / 100);
    expect([times(most).ok, times(most + 0.01).ok, times(1.05).ok]).toEqual([true, false, true]);
    // So shallow that none would do it has to be deeper first.
    const long = (of: number) => deep(of as Length)(3);
    const shallow = boundTold(long, mm(0.1), 'long', 'least');
    about(shallow, least / 20);
    expect(deep(length(Math.ceil(shallow)))(1.05).ok).toBe(true);
  });

  test('no more than ten circles and sixty pieces', () => {
    expect(boundTold((n) => at({ kind: skirt(n, 60) }), 12, 'circles', 'most')).toBe(10);
    expect(at({ kind: gores(0, 3000) }).ok).toBe(false);
    expect(at({ kind: gores(6, 0) }).ok).toBe(false);
    expect(fieldsOf(at({ kind: gores(6, 0), edge: ZERO }))).toEqual(['edge', 'sweep']);
  });
});

describe('the least rectangle of cloth', () => {
  const box = (inner: number, outer: number, degrees: number, side: number) =>
    sectorBox(
      { inner: mm(inner), outer: mm(outer), angle: (degrees * Math.PI) / 180 },
      exactLength(mm(side)),
    );
  const sized = ({ grain, wide, high }: SectorBox) => [
    grain,
    Number(toMm(wide).toFixed(2)),
    Number(toMm(high).toFixed(2)),
  ];

  test.each<[string, Parameters<typeof box>, [string, number, number]]>([
    // By its side 100 × 100; by its middle 141.42 × 100.
    ['a quarter takes less along a side', [0, 100, 90, 0], ['side', 100, 100]],
    // By its middle 200 sin 9° × (100 − 40 cos 9°); by its side 100 sin 18° × (100 − 40 cos 18°): 1894 to 1915.
    ['a narrow piece along its middle', [40, 100, 18, 0], ['middle', 31.29, 60.49]],
    ['more than a quarter along its middle', [0, 100, 120, 0], ['middle', 173.21, 100]],
    // The side 10 outside ends 10 beyond the point; the other at 150°: 10 cos 30° below it.
    ['a point with its allowances', [0, 100, 60, 10], ['side', 101.17, 108.66]],
    ['a quarter with its allowances', [0, 100, 90, 10], ['side', 110, 110]],
  ])('%s', (_, piece, expected) => {
    expect(sized(box(...piece))).toEqual(expected);
  });
});
