import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boxOf, type Outline, type Point, signedArea } from '../../../src/lay/outline.ts';
import { pieceOutline } from '../../../src/lay/pieces/piece-outline.ts';
import { selfCrossing } from '../../../src/lay/pieces/self-crossing.ts';
import { SIMPLIFIED_MM, simplified } from '../../../src/lay/pieces/simplify.ts';
import { outlines, rectangle, shared } from '../lays.ts';

/** How far outside an outline a place lies, in mm; 0 within. */
function outside(outline: Outline, [x, y]: Point): number {
  let within = false;
  let near = Infinity;
  outline.forEach(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length]!;
    if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) within = !within;
    const [ux, uy] = [bx - ax, by - ay];
    const t = Math.min(1, Math.max(0, ((x - ax) * ux + (y - ay) * uy) / (ux * ux + uy * uy)));
    near = Math.min(near, Math.hypot(x - ax - t * ux, y - ay - t * uy));
  });
  return within ? 0 : near;
}

const onWays = (outline: Outline) =>
  outline.flatMap(([x, y], i) => {
    const [u, v] = outline[(i + 1) % outline.length]!;
    return [0, 0.2, 0.5, 0.8].map((share): Point => [x + share * (u - x), y + share * (v - y)]);
  });

function expectAround(outer: Outline, outline: Outline, within: number) {
  expect(Math.max(...outline.map((place) => outside(outer, place)))).toBeLessThan(1e-6);
  expect(Math.max(...onWays(outer).map((place) => outside(outline, place)))).toBeLessThan(
    within + 1e-6,
  );
  expect(selfCrossing(outer)).toBeUndefined();
}

/** Outlines that swing in and out as a drawn one does, with 50 to 300 corners. */
const waves = fc
  .record({
    corners: fc.integer({ min: 50, max: 300 }),
    size: fc.integer({ min: 20, max: 900 }),
    swing: fc.array(fc.double({ min: -0.12, max: 0.12, noNaN: true }), {
      minLength: 5,
      maxLength: 5,
    }),
    shake: fc.double({ min: 0, max: 0.4, noNaN: true }),
  })
  .map(({ corners, size, swing, shake }) =>
    Array.from({ length: corners }, (_, i): Point => {
      const angle = (2 * Math.PI * i) / corners;
      const far = swing.reduce((sum, by, k) => sum + by * Math.cos((k + 1) * angle + k), 1);
      const away = size * far + shake * Math.sin(i * i);
      return [away * Math.cos(angle), away * Math.sin(angle)];
    }),
  );

test('no place of a piece lies outside its simplified outline, nor that far from the piece', () => {
  const law = fc.property(waves, (outline) => {
    const outer = simplified(outline);
    expect(outer.length).toBeLessThanOrEqual(outline.length);
    expectAround(outer, outline, SIMPLIFIED_MM);
  });
  fc.assert(law, { seed: 18, numRuns: 40 });
});

test('jagged outlines of many corners keep their place as well', () => {
  const law = fc.property(outlines(21, 60), (outline) =>
    expectAround(simplified(outline), outline, SIMPLIFIED_MM),
  );
  fc.assert(law, { seed: 18, numRuns: 40 });
});

test('pieces as they are sewn come to 40 corners or fewer, half a millimetre away where that is enough', () => {
  const sleeve = pieceOutline({
    kind: 'points',
    points: [
      [0, 100],
      [450, 0],
      [600, 0],
      [640, 220],
      [600, 440],
      [450, 440],
      [0, 340],
    ],
    rises: [8, 0, -30, 40, -30, 0, 5],
  });
  if (!sleeve.ok) throw new Error('no sleeve');
  const circle = Array.from({ length: 360 }, (_, i): Point => {
    const angle = (i * Math.PI) / 180;
    return [300 * Math.cos(angle), 300 * Math.sin(angle)];
  });
  for (const outline of [sleeve.value.outline, circle]) {
    const outer = simplified(outline);
    expect(outer.length).toBeLessThanOrEqual(40);
    expect(outer.length).toBeGreaterThanOrEqual(12);
    expectAround(outer, outline, SIMPLIFIED_MM);
    // All of it lies within, by a library that shares nothing with this.
    expect(shared(outline, outer)).toBeCloseTo(signedArea(outline), 2);
  }
  expectAround(simplified(sleeve.value.outline), sleeve.value.outline, 0.5);
});

test('what has few corners already stays, less those on a straight way', () => {
  expect(simplified(rectangle(300, 200))).toEqual(rectangle(300, 200));
  const withMiddle: Outline = [
    [0, 0],
    [150, 0],
    [300, 0],
    [300, 200],
    [0, 200],
  ];
  expect(simplified(withMiddle)).toEqual(rectangle(300, 200));
});

test('on the fold nothing comes to lie below it, and the fold stays as long at least', () => {
  const law = fc.property(waves, (outline) => {
    const half = outline.filter(([, y]) => y > 1).map(([x, y]): Point => [x, y - 1]);
    const [first, last] = [half[0]!, half.at(-1)!];
    const piece: Outline = [[first[0], 0], ...half, [last[0], 0]];
    const outer = simplified(piece, 0);
    expect(boxOf(outer).y0).toBe(0);
    const low = (one: Outline) => one.filter(([, y]) => y === 0).map(([x]) => x);
    expect(Math.max(...low(outer))).toBeGreaterThanOrEqual(Math.max(...low(piece)) - 1e-9);
    expect(Math.min(...low(outer))).toBeLessThanOrEqual(Math.min(...low(piece)) + 1e-9);
    expectAround(outer, piece, SIMPLIFIED_MM);
  });
  fc.assert(law, { seed: 18, numRuns: 40 });
});

test('two edges that almost touch are never joined', () => {
  // A slit of a tenth of a millimetre, with a bow on both sides of its mouth.
  const slit: Point[] = [
    [200, 99.95],
    [100, 99.95],
    [100, 100.05],
    [200, 100.05],
  ];
  const bow = (y: number, to: number) =>
    Array.from(
      { length: 20 },
      (_, i): Point => [200 + 20 * Math.sin((i * Math.PI) / 19), y + ((to - y) * i) / 19],
    );
  const outline: Outline = [[0, 0], ...bow(0, 99), ...slit, ...bow(101, 200), [0, 200]];
  expectAround(simplified(outline), outline, SIMPLIFIED_MM);
});
