import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { trendBasis, withoutTrend } from '../../../src/tape/numerics/trend.ts';
import type { Field } from '../../../src/tape/picture/field.ts';
import { centred } from '../../../src/tape/picture/space.ts';
import { pitchBySpectra } from '../../../src/tape/pitch/pitch-spectrum.ts';
import { densityAt } from '../../../src/tape/pitch/position.ts';
import { bestCourse, spectraOf } from '../../../src/tape/pitch/spectra.ts';
import { misread, plainFrame } from '../made/followed-scene.ts';
import { drawScene, type Scene, seeded } from '../made/stroke-scene.ts';

const PLAIN: Scene = {
  width: 800,
  height: 300,
  turn: 0.1,
  pxPerMm: 9,
  strokeLength: 3,
  at: [400, 130],
  noise: 20,
};

describe('the pitch of a drawn row', () => {
  test('every graduation is found where it was drawn', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.3, max: 0.3, noNaN: true }),
        fc.double({ min: 8, max: 20, noNaN: true }),
        fc.double({ min: -0.004, max: 0.004, noNaN: true }),
        (turn, pxPerMm, tilt) => {
          const scene = { ...PLAIN, turn, pxPerMm, tilt: [(tilt * pxPerMm) / 9, 0] as const };
          const frame = plainFrame(scene);
          const pitch = pitchBySpectra(drawScene(scene), frame);
          expect(pitch).not.toBeNull();
          const { worst, offsets } = misread(scene, frame, pitch!);
          expect(offsets).toHaveLength(1);
          // The strokes widen with the scale, and their edges' noise with them.
          expect(worst).toBeLessThan(0.1 + 0.02 * pxPerMm);
        },
      ),
      // The example: smoothed noise scores more than the row, and has no phase.
      { numRuns: 8, examples: [[0, 8.356928356928357, 0]] },
    );
  });

  test('wide graduations under coarse grain are found by smoothing', () => {
    const scene = { ...PLAIN, turn: 0, pxPerMm: 48, strokeLength: 1, noise: 0, width: 1200 };
    const drawn = drawScene(scene);
    const random = seeded(2);
    const values = drawn.values.map((value) => value + 90 * (random() - 0.5));
    const frame = plainFrame(scene);
    const pitch = pitchBySpectra({ ...drawn, values }, frame);
    expect(pitch?.smoothing).toBeGreaterThan(0);
    expect(1 / densityAt(pitch!.model, centred(0))).toBeCloseTo(48, 0);
  });

  test('nothing is found in noise or in a row shorter than a window', () => {
    const random = seeded(5);
    const values = Float32Array.from({ length: 800 * 300 }, () => 80 + 90 * random());
    const noise: Field<never> = { width: 800, height: 300, values };
    const found = pitchBySpectra(noise, plainFrame(PLAIN));
    expect(found?.score ?? 0).toBeLessThan(0.2);
    const short = { ...PLAIN, width: 250, at: [125, 130] as const };
    expect(pitchBySpectra(drawScene(short), plainFrame(short))).toBeNull();
  });
});

describe('the spectra', () => {
  test('a pure tone on a slope has strength √½ at its frequency and hardly any far off', () => {
    const signal = Float32Array.from(
      { length: 512 },
      (_, i) => Math.cos(i * 0.1 * 2 * Math.PI) + i / 50,
    );
    const { middles, strengths } = spectraOf(signal);
    expect(middles).toEqual([128, 192, 256, 320, 384]);
    for (let window = 0; window < middles.length; window++) {
      const at = (bin: number) => strengths[window * 512 + bin]!;
      expect(at(102)).toBeCloseTo(Math.SQRT1_2, 1);
      expect(at(80)).toBeLessThan(0.02);
      expect(at(200)).toBeLessThan(0.02);
    }
  });

  test('each window shows its own stretch of the row, as it would alone', () => {
    const random = seeded(8);
    const signal = Float32Array.from({ length: 600 }, (_, i) => random() + Math.cos((i / 30) ** 2));
    const { middles, strengths } = spectraOf(signal);
    expect(middles).toHaveLength(6);
    for (const [window, middle] of middles.entries()) {
      const alone = spectraOf(signal.slice(middle - 128, middle + 128)).strengths;
      for (let bin = 0; bin < 512; bin++) {
        expect(strengths[window * 512 + bin]).toBeCloseTo(alone[bin]!, 6);
      }
    }
  });

  test('a tone that slows down along the row gives its middle frequency and its bend', () => {
    const half = 600;
    const course = (t: number) => (0.07 * t) / (1 + (0.3 * t) / half);
    const signal = Float32Array.from({ length: 2 * half + 1 }, (_, i) =>
      Math.cos(2 * Math.PI * course(i - half)),
    );
    const found = bestCourse(spectraOf(signal), signal.length, 1 / 42, 1 / 3.2);
    expect(found?.frequency).toBeCloseTo(0.07, 2);
    expect(Math.abs(found!.bend - 0.3)).toBeLessThan(0.05);
    expect(found?.score).toBeGreaterThan(0.5);
    const atLeast = (least: number) =>
      bestCourse(spectraOf(signal), signal.length, 1 / 42, 1 / 3.2, least);
    expect(atLeast(found!.score)).toEqual(found);
    expect(atLeast(found!.score + 1e-3)).toBeNull();
  });

  test('a quadratic trend leaves nothing, whatever it is', () => {
    const terms = fc.double({ min: -5, max: 5, noNaN: true });
    const basis = trendBasis(120, 3);
    fc.assert(
      fc.property(terms, terms, terms, (a, b, c) => {
        const signal = Float32Array.from(
          { length: 200 },
          (_, i) => a + (b * i) / 100 + c * (i / 100) ** 2,
        );
        const out = new Float64Array(120);
        withoutTrend(signal, 40, basis, 3, out);
        for (const value of out) expect(Math.abs(value)).toBeLessThan(1e-4);
      }),
    );
  });
});
