import fc from 'fast-check';
import { expect, test } from 'vitest';
import { crossingFigure } from '../../src/drawing/crossing-figure.ts';
import type { Figure, LineStyle, Point } from '../../src/drawing/figure.ts';
import { stripCorner, stripPart } from '../../src/drawing/strip-figure.ts';
import type { DrawnStrip } from '../../src/drawing/strip-places.ts';

const ROW = Array.from({ length: 50 }, (_, i) => 4 + 8 * i);
const STRIP: DrawnStrip = {
  length: 400,
  width: 20,
  pitch: 8,
  hole: 2,
  radius: undefined,
  rows: [
    { across: 5, sides: [ROW] },
    { across: 15, sides: [ROW.slice(0, -1).map((at) => at + 4)] },
  ],
};

const ringsOf = (figure: Figure, style: LineStyle) =>
  figure.flatMap((shape) =>
    'line' in shape && shape.line === style && shape.points.length === 13
      ? [centreOf(shape.points)]
      : [],
  );

function centreOf(points: readonly Point[]): Point & { across: number } {
  const ring = points.slice(1);
  const mean = (of: (point: Point) => number) =>
    ring.reduce((sum, point) => sum + of(point), 0) / ring.length;
  const xs = ring.map(({ x }) => x);
  return {
    x: mean(({ x }) => x),
    y: mean(({ y }) => y),
    across: Math.max(...xs) - Math.min(...xs),
  };
}

test('the start of a strip is drawn to scale: holes at their places, as wide as the punch', () => {
  const holes = ringsOf(stripPart(STRIP, 'start'), 'cut');
  const first = holes.filter(({ y }) => y < 10);
  expect(first.map(({ x }) => Math.round(x * 1000) / 1000)).toEqual(ROW.slice(0, 11));
  for (const { y, across } of first) {
    expect(y).toBeCloseTo(5, 6);
    expect(across).toBeCloseTo(2, 6);
  }
  expect(holes.filter(({ y }) => y > 10)[0]?.x).toBeCloseTo(8, 6);
});

test('the middle of a strip is drawn round its middle, with the numbers of the holes there', () => {
  const figure = stripPart(STRIP, 'middle');
  const xs = ringsOf(figure, 'cut')
    .filter(({ y }) => y < 10)
    .map(({ x }) => x);
  expect((Math.min(...xs) + Math.max(...xs)) / 2).toBeCloseTo(200, 6);
  const labels = figure.flatMap((shape) => ('label' in shape ? [shape.label] : []));
  expect(labels).toContain(String(ROW.indexOf(Math.min(...xs.map(Math.round))) + 1));
});

test('bent round a radius, each row keeps its own distance from the middle of the bend', () => {
  const bent = {
    ...STRIP,
    radius: 100,
    rows: [{ across: 5, sides: [ROW.map((at) => at * 1.05)] }],
  };
  const middle = { x: 0, y: 110 };
  const holes = ringsOf(stripPart(bent, 'start'), 'cut');
  expect(holes.length).toBeGreaterThan(9);
  for (const { x, y } of holes) {
    expect(Math.hypot(x - middle.x, y - middle.y)).toBeCloseTo(105, 6);
  }
  const [one, two] = holes;
  const chord = Math.hypot((two?.x ?? 0) - (one?.x ?? 0), (two?.y ?? 0) - (one?.y ?? 0));
  expect(2 * 105 * Math.asin(chord / 210)).toBeCloseTo(8.4, 6);
});

test('the corner hole stands at the margin from both edges', () => {
  fc.assert(
    fc.property(fc.integer({ min: 30, max: 150 }), (angle) => {
      const turn = (angle * Math.PI) / 180;
      const back = 5 / Math.tan(turn / 2);
      const rows = [
        {
          across: 5,
          sides: [
            [100 - back - 8, 100 - back],
            [back, back + 8],
          ],
        },
      ];
      const holes = ringsOf(stripCorner({ ...STRIP, rows }, 100, angle), 'cut');
      const corner = holes[1] ?? { x: 0, y: 0 };
      expect(corner.y).toBeCloseTo(5, 6);
      // The other edge leaves the corner at the angle, inside is to its left.
      const off = corner.x * Math.sin(turn) + corner.y * Math.cos(turn);
      expect(Math.abs(off)).toBeCloseTo(5, 6);
    }),
  );
});

test('a crossing shows what is made, what is to be punched, and crosses out what clashes', () => {
  const figure = crossingFigure({
    lower: 20,
    upper: 16,
    angle: 60,
    hole: 2,
    made: [{ x: 1, y: -5 }],
    over: [
      { x: 1, y: -5, meets: 'shared' },
      { x: 6, y: -5, meets: 'clear' },
      { x: 2.5, y: 5, meets: 'clash' },
    ],
    names: { lower: 'lower', upper: 'upper' },
    moved: undefined,
  });
  expect(ringsOf(figure, 'hole')).toHaveLength(1);
  const punched = ringsOf(figure, 'cut');
  expect(punched.map(({ x }) => Math.round(x * 10) / 10)).toEqual([6, 2.5]);
  const crossed = figure.flatMap((shape) =>
    'line' in shape && shape.line === 'clash' ? [shape.points] : [],
  );
  expect(crossed).toHaveLength(2);
  for (const [from, to] of crossed) {
    expect(((from?.x ?? 0) + (to?.x ?? 0)) / 2).toBeCloseTo(2.5, 6);
    expect(((from?.y ?? 0) + (to?.y ?? 0)) / 2).toBeCloseTo(5, 6);
  }
  // The edges of the upper strip stand at the angle, its width apart.
  const edges = figure.flatMap((shape) =>
    'line' in shape && shape.line === 'cloth' ? [shape.points] : [],
  );
  const [one, two] = edges.slice(2);
  const way = Math.atan2(
    (one?.[1]?.y ?? 0) - (one?.[0]?.y ?? 0),
    (one?.[1]?.x ?? 0) - (one?.[0]?.x ?? 0),
  );
  expect((way * 180) / Math.PI).toBeCloseTo(60, 6);
  const apart = Math.abs(
    ((two?.[0]?.x ?? 0) - (one?.[0]?.x ?? 0)) * Math.sin(way) -
      ((two?.[0]?.y ?? 0) - (one?.[0]?.y ?? 0)) * Math.cos(way),
  );
  expect(apart).toBeCloseTo(16, 6);
});
