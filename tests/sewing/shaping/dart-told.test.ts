import { describe, expect, test } from 'vitest';
import { type Length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import {
  type DartInput,
  dartEdge,
  type EdgeInput,
  wedge,
  wedgeOf,
} from '../../../src/sewing/shaping/dart.ts';
import { type TwoEnded, twoEnded } from '../../../src/sewing/shaping/dart-turned.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

// Geometry worked out here: triangles whose sides and angles are whole; no source.

const rounded = (x: number) => Number(toMm(x as Length).toFixed(6));

describe('a dart by its opening', () => {
  // 60° between legs of 100: three equal sides. 30 across between legs of 25: half of a 3, 4, 5 triangle each.
  test.each<[DartInput, [number, number, number]]>([
    [{ opening: { by: 'angle', angle: 60 }, leg: mm(100) }, [60, 100, 86.60254]],
    [{ opening: { by: 'angle', angle: 90 }, leg: mm(100) }, [90, 141.421356, 70.710678]],
    [{ opening: { by: 'width', width: mm(30) }, leg: mm(25) }, [73.739795, 30, 20]],
    [{ opening: { by: 'width', width: mm(100) }, leg: mm(100) }, [60, 100, 86.60254]],
  ])('%j', (input, [degrees, width, middle]) => {
    const dart = solved(wedge(input));
    expect((dart.angle * 180) / Math.PI).toBeCloseTo(degrees, 5);
    expect([rounded(dart.width), rounded(dart.middle)]).toEqual([width, middle]);
  });

  test('as wide as 170° open, and no wider', () => {
    const at = (width: number) =>
      wedge({ opening: { by: 'width', width: width as Length }, leg: mm(100) });
    const under = boundTold(at, mm(210), 'width', 'under');
    expect(rounded(under)).toBeCloseTo(200 * Math.sin((85 * Math.PI) / 180), 5);
    const turned = (angle: number) => wedge({ opening: { by: 'angle', angle }, leg: mm(100) });
    expect(boundTold(turned, 180, 'angle', 'most')).toBe(170);
    expect([turned(0.5).ok, turned(0.49).ok]).toEqual([true, false]);
  });
});

describe('a dart with a point at both ends', () => {
  const input = { width: mm(30), above: mm(20), below: mm(36) };

  test('half its width, and 20 and 36: legs of 25 and 39', () => {
    const { above, below }: TwoEnded = solved(twoEnded(input));
    expect([rounded(above), rounded(below)]).toEqual([25, 39]);
  });

  test.each(['width', 'above', 'below'] as const)('no %s, no dart', (field) => {
    expect(fieldsOf(twoEnded({ ...input, [field]: ZERO }))).toEqual([field]);
  });
});

describe('its raw edge', () => {
  const EDGE: EdgeInput = { slant: 90, other: 90, seam: ZERO, piece: undefined, leg: mm(100) };
  const sixty = wedgeOf(Math.PI / 3, mm(100));
  const at = (set: Partial<EdgeInput>) => dartEdge({ ...EDGE, ...set }, sixty);

  test('square to a leg of 100 and 30° on: 100 ÷ cos 30°, with an allowance of 10 for each 110', () => {
    const { tip, cutTip, cutLeg, kink } = solved(at({ seam: mm(10) }));
    expect([rounded(tip), rounded(cutTip), rounded(cutLeg)]).toEqual([115.470054, 127.017059, 110]);
    expect(kink).toBeCloseTo(0, 12);
  });

  test('a slant that would never meet the middle is told the most that does', () => {
    // 170° from the middle line, and half of 60° of it is the dart's.
    const refused = at({ slant: 150 });
    expect(refused).toMatchObject({ problems: [{ field: 'slant', given: 150, least: 20 }] });
    const [told] = refused.ok ? [] : refused.problems;
    expect(told && 'most' in told ? Number(told.most) : 0).toBeCloseTo(140, 9);
    expect([at({ slant: 140 }).ok, at({ slant: 140.1 }).ok]).toEqual([true, false]);
    // However blunt it is, and of a narrow dart.
    expect(at({ slant: 170 })).toMatchObject({ problems: [{ field: 'slant', most: 140 }] });
    const narrow = dartEdge({ ...EDGE, slant: 165 }, wedgeOf(Math.PI / 18, mm(100)));
    expect(narrow).toMatchObject({ problems: [{ field: 'slant', most: 160 }] });
    // Of half a radian 14.32° are one side’s: a number that can be typed.
    const half = (slant: number) => dartEdge({ ...EDGE, slant }, wedgeOf(0.5, mm(100)));
    expect(half(159)).toMatchObject({ problems: [{ field: 'slant', most: 155.67 }] });
    expect([half(155.67).ok, half(155.68).ok]).toEqual([true, false]);
    // Of 20° just 160°, the bluntest of all, and of all wider ones half a degree less for each.
    for (let degrees = 20; degrees <= 150; degrees++) {
      const dart = wedgeOf((degrees * Math.PI) / 180, mm(100));
      expect(dartEdge({ ...EDGE, slant: 170 - degrees / 2 }, dart).ok, `${degrees}°`).toBe(true);
    }
  });

  test('bounds of both slants, and a piece wider than the opening', () => {
    expect([at({ slant: 20 }).ok, at({ other: 20 }).ok, at({ other: 160 }).ok]).toEqual([
      true,
      true,
      true,
    ]);
    const wide = solved(wedge({ opening: { by: 'width', width: mm(100) }, leg: mm(100) }));
    const narrow = (x: number) => dartEdge({ ...EDGE, piece: x as Length }, wide);
    expect(boundTold(narrow, mm(90), 'piece', 'over')).toBe(mm(100));
    expect(fieldsOf(at({ seam: mm(-1), piece: mm(90) }))).toEqual(['seam']);
  });
});
