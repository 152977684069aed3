import fc from 'fast-check';
import { expect, test } from 'vitest';
import { extentOf, movedOnCloth, type PieceShown } from '../../../src/screens/lay/lay-shown.ts';
import { panned, wholeView, zoomed } from '../../../src/screens/lay/lay-view.ts';

const piece: PieceShown = {
  ...{ key: '0', name: 'Front', turned: false, tilt: 0, mirrored: false, onFold: false },
  outline: [
    [100, 200],
    [400, 200],
    [400, 500],
    [100, 500],
  ],
};

const frames = fc.record({
  width: fc.double({ min: 100, max: 2000, noNaN: true }),
  height: fc.double({ min: 100, max: 2000, noNaN: true }),
});
const sizes = fc.tuple(
  fc.double({ min: 100, max: 3000, noNaN: true }),
  fc.double({ min: 10, max: 30_000, noNaN: true }),
);

test('the whole lay is seen, to one scale both ways', () => {
  fc.assert(
    fc.property(sizes, frames, ([width, length], frame) => {
      const view = wholeView(width, length, frame);
      expect(view.x).toBeLessThan(0);
      expect(view.y).toBeLessThan(0);
      expect(view.x + view.wide).toBeGreaterThan(width);
      expect(view.y + view.high).toBeGreaterThan(length);
      expect(view.wide / view.high).toBeCloseTo(frame.width / frame.height, 9);
    }),
    { seed: 18 },
  );
});

test('closer, the place between the fingers stays where it is', () => {
  const frame = { width: 360, height: 300 };
  fc.assert(
    fc.property(sizes, fc.double({ min: 0.2, max: 5, noNaN: true }), ([width, length], times) => {
      const whole = wholeView(width, length, frame);
      const at = [width / 3, length / 4] as const;
      const view = zoomed(whole, times, at, whole);
      const share = (seen: typeof whole) => [
        (at[0] - seen.x) / seen.wide,
        (at[1] - seen.y) / seen.high,
      ];
      const [before, after] = [share(whole), share(view)];
      expect(after[0]).toBeCloseTo(before[0]!, 9);
      expect(after[1]).toBeCloseTo(before[1]!, 9);
      expect(view.wide).toBeLessThanOrEqual(2 * whole.wide);
    }),
    { seed: 18 },
  );
});

test('panned however far, some of the cloth is in view', () => {
  const whole = wholeView(1400, 2000, { width: 360, height: 300 });
  const near = zoomed(whole, 4, [700, 1000], whole);
  for (const far of [-1e6, 1e6]) {
    const { x, y, wide, high } = panned(near, far, far, whole);
    expect(x + wide).toBeGreaterThan(whole.x);
    expect(x).toBeLessThan(whole.x + whole.wide);
    expect(y + high).toBeGreaterThan(whole.y);
    expect(y).toBeLessThan(whole.y + whole.high);
  }
});

test('a piece that is moved stays on the cloth, and on the fold', () => {
  expect(extentOf(piece)).toEqual({ along: [100, 400], across: [200, 500] });
  expect(movedOnCloth(piece, { width: 700 }, [-1000, 1000])).toEqual([-100, 200]);
  expect(movedOnCloth(piece, { width: 700 }, [50, -1000])).toEqual([50, -200]);
  expect(movedOnCloth({ ...piece, onFold: true }, { width: 700 }, [50, 80])).toEqual([50, 0]);
});
