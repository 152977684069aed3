import fc from 'fast-check';
import { expect, test } from 'vitest';
import { extent, type RowFrame, scaledFrame, toFrame } from '../../../src/tape/frame/frame.ts';
import { scalingOf } from '../../../src/tape/picture/space.ts';
import { number } from '../made/even-numbers.ts';
import { rowFrame, toImage } from '../made/plain-places.ts';

/** Frames such as rows of real pictures have: slanted, converging and bent within reason. */
const FRAMES: fc.Arbitrary<RowFrame<never>> = fc
  .record({
    x: number(0, 1300),
    y: number(0, 900),
    angle: number(-4, 4),
    shear: number(-0.5, 0.5),
    shearRate: number(-5e-4, 5e-4),
    bow2: number(-6e-5, 6e-5),
    bow3: number(-5e-8, 5e-8),
    bowFrom: number(-200, 200),
  })
  .map(({ x, y, angle, ...rest }) => ({ ...rowFrame([x, y], angle), ...rest }));

const ALONG = number(-600, 600);
const ACROSS = number(-40, 40);

test('a plain frame runs along its angle, v a quarter turn on', () => {
  const frame = rowFrame([10, 20], Math.PI / 6);
  const [x, y] = toImage(frame, 100, 0);
  expect([x, y]).toEqual([expect.closeTo(10 + 50 * Math.sqrt(3)), expect.closeTo(70)]);
  expect(toImage(frame, 0, 10)).toEqual([expect.closeTo(5), expect.closeTo(20 + 5 * Math.sqrt(3))]);
});

test('slant and bow as written down for the frame', () => {
  const frame = {
    ...rowFrame([0, 0], 0),
    shear: 0.1,
    shearRate: 0.001,
    bow2: 0.002,
    bow3: 1e-5,
    bowFrom: 40,
  };
  // u = 100, v = 5: 100 + 5·(0.1 + 0.1) = 101; 5 + 0.002·60² + 0.00001·60³ = 14.36.
  expect(toImage(frame, 100, 5)).toEqual([expect.closeTo(101, 9), expect.closeTo(14.36, 9)]);
});

// Derived here: all strokes of a flat tape meet in one point, so a stroke at u, whose
// slant is shear + shearRate·u, passes through it.
test('strokes whose slant is linear meet in one point', () => {
  fc.assert(
    fc.property(number(-0.5, 0.5), number(1e-4, 5e-4), ALONG, (shear, shearRate, u) => {
      const frame = { ...rowFrame([5, 6], 0.4), shear, shearRate };
      const meeting = toImage(frame, 0, -1 / shearRate);
      const here = toImage(frame, u, -1 / shearRate);
      expect(Math.hypot(here[0] - meeting[0], here[1] - meeting[1])).toBeLessThan(1e-6);
    }),
  );
});

test('to the picture and back', () => {
  fc.assert(
    fc.property(FRAMES, ALONG, ACROSS, (frame, u, v) => {
      const [u2, v2] = toFrame(frame, toImage(frame, u, v));
      expect(Math.abs(u2 - u)).toBeLessThan(1e-3);
      expect(Math.abs(v2 - v)).toBeLessThan(1e-3);
    }),
    { numRuns: 1000 },
  );
});

test('a larger picture has the same frame, larger', () => {
  fc.assert(
    fc.property(FRAMES, ALONG, ACROSS, fc.constantFrom(0.5, 1, 1.5, 2, 3), (frame, u, v, z) => {
      const [x, y] = toImage(frame, u, v);
      const [bigX, bigY] = toImage(scaledFrame(frame, scalingOf(z)), u * z, v * z);
      // The middle of a pixel is at whole coordinates: 0 becomes (z − 1) / 2.
      expect(bigX).toBeCloseTo((x + 0.5) * z - 0.5, 6);
      expect(bigY).toBeCloseTo((y + 0.5) * z - 0.5, 6);
    }),
  );
});

const PICTURE = { width: 400, height: 300, values: new Float32Array() };

test('the extent is all of the line that lies in the picture, 2 px clear', () => {
  expect(extent(rowFrame([50, 100], 0), PICTURE)).toEqual([-48, 347]);
  expect(extent(rowFrame([50, 100], Math.PI / 2), PICTURE)).toEqual([-98, 197]);
  const inside = ([x, y]: readonly [number, number], slack: number) =>
    Math.min(x - 2, y - 2, 397 - x, 297 - y) >= -slack;
  fc.assert(
    fc.property(number(10, 390), number(10, 290), number(-4, 4), (x, y, angle) => {
      const frame = rowFrame([x, y], angle);
      const [from, to] = extent(frame, PICTURE);
      for (const u of [from, to]) expect(inside(toImage(frame, u, 0), 1e-6)).toBe(true);
      for (const u of [from - 1, to + 1]) expect(inside(toImage(frame, u, 0), -1e-6)).toBe(false);
    }),
  );
});

test('a line beside the picture has no extent', () => {
  const [from, to] = extent(rowFrame([-500, 0], -Math.PI / 4), PICTURE);
  expect(from).toBeGreaterThan(to);
});
