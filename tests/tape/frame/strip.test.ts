import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bandSignal,
  type Strip,
  sampleColumns,
  smoothed,
  strip,
} from '../../../src/tape/frame/strip.ts';
import { alongRow } from '../../../src/tape/picture/space.ts';
import { number } from '../made/even-numbers.ts';
import { rowFrame, toImage } from '../made/plain-places.ts';

/** Grey that grows by 1 each px to the right and by 3 each px down. */
const RAMP = {
  width: 200,
  height: 120,
  values: Float32Array.from({ length: 200 * 120 }, (_, i) => (i % 200) + 3 * Math.floor(i / 200)),
};

test('a strip is the field at the places of its frame', () => {
  const bent = fc.record({
    shear: number(-0.4, 0.4),
    shearRate: number(-1e-3, 1e-3),
    bow2: number(-1e-3, 1e-3),
    bow3: number(-1e-6, 1e-6),
    bowFrom: number(-20, 20),
  });
  fc.assert(
    fc.property(number(60, 140), number(40, 80), number(-4, 4), bent, (x, y, angle, bend) => {
      const frame = { ...rowFrame([x, y], angle), ...bend };
      const { from, to, width, height, reach, values } = strip(RAMP, frame, 6);
      expect([width, height, reach]).toEqual([to - from + 1, 13, 6]);
      values.forEach((value, i) => {
        const [px, py] = toImage(frame, from + (i % width), Math.floor(i / width) - reach);
        const inside = px >= 0 && py >= 0 && px < 198.99 && py < 118.99;
        if (inside) expect(value).toBeCloseTo(px + 3 * py, 2);
        else if (px < -0.1 || py < -0.1 || px > 199.1 || py > 119.1) expect(value).toBeNaN();
      });
    }),
    { numRuns: 20 },
  );
});

test('a row that misses the picture has an empty strip', () => {
  expect(strip(RAMP, rowFrame([-900, 0], -0.8), 6)).toMatchObject({ width: 0, height: 13 });
  expect(strip(RAMP, rowFrame([-900, 0], -0.8), 6).values).toHaveLength(0);
});

test('columns go where they are told, each in its own steps, until the picture ends', () => {
  const columns = { u: [4, -200], v: [-2, 0], step: [2, 1] };
  const out = sampleColumns(RAMP, rowFrame([100, 50], 0), columns, 3);
  const [first, none] = [[104 + 144, 104 + 150, 104 + 156], Number.NaN];
  expect([...out]).toEqual(first.flatMap((value) => [value, none]));
});

describe('the signal along a band', () => {
  const NONE = Number.NaN;
  const STRIP: Strip = {
    from: alongRow(0),
    to: alongRow(3),
    width: 4,
    height: 3,
    reach: 1,
    values: Float32Array.from([NONE, 1, 2, NONE, NONE, 3, NONE, NONE, NONE, 5, 6, 7]),
  };

  test('is minus the mean of its rows, ends taken from beside', () => {
    expect([...bandSignal(STRIP, -1, 1)]).toEqual([-3, -3, -4, -7]);
  });

  test('takes only the rows asked for', () => {
    expect([...bandSignal(STRIP, -1, 0)]).toEqual([-2, -2, -2, -2]);
    expect([...bandSignal(STRIP, 1, 1)]).toEqual([-5, -5, -6, -7]);
  });
});

describe('smoothed', () => {
  const SIGNALS = fc
    .array(fc.integer({ min: -100, max: 100 }), { minLength: 1, maxLength: 60 })
    .map((values) => Float32Array.from(values));
  const SIGMAS = number(0.5, 12);

  // A bell smooths a wave of frequency f to exp(−2π²σ²f²) of its height (from memory: the
  // Fourier transform of a Gaussian).
  test('a wave is left with its share', () => {
    const wave = Float32Array.from({ length: 400 }, (_, i) => Math.cos((2 * Math.PI * i) / 20));
    const out = smoothed(wave, 4);
    const share = Math.exp((-2 * Math.PI ** 2 * 16) / 400);
    for (let i = 20; i < 380; i++) expect(out[i]).toBeCloseTo(share * wave[i]!, 2);
  });

  test('keeps a constant and the bounds of the signal', () => {
    fc.assert(
      fc.property(SIGNALS, SIGMAS, (signal, sigma) => {
        const out = smoothed(signal, sigma);
        expect(Math.max(...out)).toBeLessThanOrEqual(Math.max(...signal) + 1e-3);
        expect(Math.min(...out)).toBeGreaterThanOrEqual(Math.min(...signal) - 1e-3);
        expect(out).toHaveLength(signal.length);
      }),
    );
  });

  test('turned round before or after is the same', () => {
    fc.assert(
      fc.property(SIGNALS, SIGMAS, (signal, sigma) => {
        const before = smoothed(signal.slice().reverse(), sigma);
        smoothed(signal, sigma)
          .reverse()
          .forEach((value, i) => {
            expect(value).toBeCloseTo(before[i]!, 3);
          });
      }),
    );
  });
});
