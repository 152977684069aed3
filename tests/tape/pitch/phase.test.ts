import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toneAt, toneMeter } from '../../../src/tape/numerics/tone.ts';
import { alongRow, centred } from '../../../src/tape/picture/space.ts';
import { carrierOf, phaseTrack } from '../../../src/tape/pitch/phase.ts';
import { graduationAt } from '../../../src/tape/pitch/position.ts';
import { seeded } from '../made/stroke-scene.ts';

const FROM = -40;
const LENGTH = 1500;
const CENTRE = 700;
const model = { a: 0.08, b: 0.3, c: 0.0002 };

function signalOf(valueAt: (t: number) => number): Float32Array {
  return Float32Array.from({ length: LENGTH }, (_, i) => valueAt(i + FROM - CENTRE));
}

describe('the track', () => {
  test('a row that is ahead of its model by a part of a graduation shows just that', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.45, max: 0.45, noNaN: true }), (ahead) => {
        const signal = signalOf(
          (t) => 5 + Math.cos(2 * Math.PI * (graduationAt(model, centred(t)) + ahead)),
        );
        for (const { u, t, phase, quality, amplitude } of phaseTrack(
          signal,
          alongRow(FROM),
          alongRow(CENTRE),
          model,
          3,
        )) {
          expect(u - t).toBeCloseTo(CENTRE, 9);
          // At the row's ends the window is cut short.
          if (u < FROM + 60 || u > FROM + LENGTH - 60) continue;
          expect(phase).toBeCloseTo(ahead, 2);
          expect(quality).toBeGreaterThan(0.99);
          expect(amplitude).toBeCloseTo(0.5, 2);
        }
      }),
      { numRuns: 30 },
    );
  });

  test('a drift of several graduations is followed past half of one', () => {
    const drift = (t: number) => 2.5 * (t / 700) ** 2;
    const signal = signalOf((t) =>
      Math.cos(2 * Math.PI * (graduationAt(model, centred(t)) + drift(t))),
    );
    const track = phaseTrack(signal, alongRow(FROM), alongRow(CENTRE), model, 2.5);
    const whole = Math.round(track[60]!.phase - drift(track[60]!.t));
    for (const { t, phase } of track.slice(8, -8)) {
      expect(Math.abs(phase - whole - drift(t))).toBeLessThan(0.1);
    }
  });

  test('places stand one pitch apart', () => {
    const track = phaseTrack(signalOf(Math.cos), alongRow(FROM), alongRow(CENTRE), model, 3);
    for (let i = 1; i < track.length; i++) {
      const passed = graduationAt(model, track[i]!.t) - graduationAt(model, track[i - 1]!.t);
      expect(passed).toBeCloseTo(1, 1);
    }
  });

  test('neither noise nor a blank row has quality', () => {
    const random = seeded(3);
    const noise = phaseTrack(signalOf(random), alongRow(FROM), alongRow(CENTRE), model, 3);
    expect(noise.filter(({ quality }) => quality > 0.6)).toEqual([]);
    expect(
      phaseTrack(
        signalOf(() => 4),
        alongRow(FROM),
        alongRow(CENTRE),
        model,
        3,
      ).every(({ quality }) => quality < 0.01),
    ).toBe(true);
  });
});

describe('one place', () => {
  /** The same in two passes, with a bell and a cosine for each px. */
  function inTwoPasses(signal: Float32Array, place: number, sigma: number) {
    const reach = Math.ceil(2.2 * sigma);
    const start = Math.max(0, Math.round(place - reach));
    const end = Math.min(LENGTH - 1, Math.round(place + reach));
    const window = Array.from({ length: end - start + 1 }, (_, j) => start + j);
    const bell = (i: number) => Math.exp(-0.5 * ((i - place) / sigma) ** 2);
    const sum = (of: (i: number) => number) => window.reduce((all, i) => all + bell(i) * of(i), 0);
    const total = sum(() => 1);
    const mean = sum((i) => signal[i]!) / total;
    const turn = (i: number) => 2 * Math.PI * graduationAt(model, centred(i + FROM - CENTRE));
    const re = sum((i) => (signal[i]! - mean) * Math.cos(turn(i)));
    const im = -sum((i) => (signal[i]! - mean) * Math.sin(turn(i)));
    const deviation = Math.sqrt(sum((i) => (signal[i]! - mean) ** 2) / total) + 1e-4;
    const amplitude = Math.hypot(re, im) / total;
    return {
      phase: Math.atan2(im, re) / (2 * Math.PI),
      quality: (amplitude * Math.SQRT2) / deviation,
      amplitude,
    };
  }

  const random = seeded(11);
  const signal = signalOf((t) => -5 + Math.cos(0.5 * t) + random());
  const carrier = carrierOf(model, centred(FROM - CENTRE), LENGTH);

  test('one pass measures what two passes do', () => {
    const places = fc.double({ min: 0, max: LENGTH - 1, noNaN: true });
    fc.assert(
      fc.property(places, fc.double({ min: 5, max: 300, noNaN: true }), (place, sigma) => {
        const found = toneAt(signal, carrier, place, sigma);
        const slow = inTwoPasses(signal, place, sigma);
        expect(found.quality).toBeCloseTo(slow.quality, 6);
        expect(found.amplitude).toBeCloseTo(slow.amplitude, 6);
        // A tone that is hardly there has no phase to compare.
        if (slow.quality > 0.01)
          expect(Math.cos(2 * Math.PI * (found.phase - slow.phase))).toBeCloseTo(1, 6);
      }),
    );
  });

  test('a meter of steady tones tells how far a graduation is from where it was due', () => {
    const steady = Float32Array.from({ length: 600 }, (_, i) =>
      Math.cos((2 * Math.PI * (i - 300)) / 20),
    );
    const { phase, quality } = toneMeter(steady)(303, 0, 1 / 20, 44);
    expect(phase).toBeCloseTo(3 / 20, 3);
    expect(quality).toBeGreaterThan(0.99);
  });
});
