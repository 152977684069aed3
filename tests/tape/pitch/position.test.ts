import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { centred } from '../../../src/tape/picture/space.ts';
import {
  densityAt,
  distanceAt,
  fitProjective,
  graduationAt,
  type PositionModel,
  type TrackedPhase,
} from '../../../src/tape/pitch/position.ts';
import { withResidual } from '../../../src/tape/pitch/residual.ts';

/** Half the length of the row, px. */
const REACH = 900;
const TABLE = { from: -800, step: 40 };

/** Models of rows that a person would photograph: 3 to 100 px a graduation, the horizon outside. */
const models: fc.Arbitrary<PositionModel> = fc
  .record({
    pitch: fc.double({ min: 3, max: 100, noNaN: true }),
    start: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
    bend: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
    wave: fc.option(fc.double({ min: -0.3, max: 0.3, noNaN: true }), { nil: undefined }),
  })
  .map(({ pitch, start, bend, wave }) => {
    const straight = { a: 1 / pitch, b: start, c: bend / REACH };
    if (wave === undefined) return straight;
    const values = Float32Array.from(
      { length: 41 },
      (_, i) => wave * Math.sin(i / 8) * (3 / pitch),
    );
    return { ...straight, residual: { ...TABLE, values } };
  });
const distances = fc.double({ min: -REACH, max: REACH, noNaN: true });

describe('the model of a row', () => {
  test('distance undoes graduation', () => {
    fc.assert(
      fc.property(models, distances, (model, t) => {
        expect(distanceAt(model, graduationAt(model, centred(t)))).toBeCloseTo(t, 2);
      }),
    );
  });

  test('density is the slope of graduation', () => {
    fc.assert(
      fc.property(models, distances, (model, t) => {
        // The table's slope is taken over a step to either side, so that it is smooth.
        const reach = model.residual ? TABLE.step : 0.01;
        const rise =
          graduationAt(model, centred(t + reach)) - graduationAt(model, centred(t - reach));
        const slope = rise / (2 * reach);
        expect(Math.abs(densityAt(model, centred(t)) / slope - 1)).toBeLessThan(0.02);
      }),
    );
  });

  test('a residual is level beyond its ends and straight between its values', () => {
    const residual = { from: 10, step: 5, values: Float32Array.of(1, 3) };
    const model = { a: 0, b: 0, c: 0, residual };
    expect([-50, 10, 12.5, 15, 99].map((t) => graduationAt(model, centred(t)))).toEqual([
      1, 1, 2, 3, 3,
    ]);
  });
});

/** What a tracker sees of `truth` when it believes in `model`. */
function tracked(truth: PositionModel, model: PositionModel, pitch: number): TrackedPhase[] {
  const places: TrackedPhase[] = [];
  for (let t = -REACH; t <= REACH; t += pitch) {
    const phase = graduationAt(truth, centred(t)) - graduationAt(model, centred(t));
    places.push({ t: centred(t), phase, quality: 0.9, pitch });
  }
  return places;
}

describe('the fit', () => {
  const truth = { a: 0.1, b: 0.2, c: 0.0003 };
  const believed = { a: 0.098, b: 0, c: 0.0002 };

  test('finds the model that made the phases', () => {
    fc.assert(
      fc.property(models, (made) => {
        const straight = { a: made.a, b: made.b, c: made.c };
        // About as near as spectra come.
        const near = { a: made.a * 1.01, b: made.b + 0.1, c: made.c * 0.95 };
        const fit = fitProjective(tracked(straight, near, 20), near);
        expect(fit?.a).toBeCloseTo(made.a, 8);
        expect(fit?.b).toBeCloseTo(made.b, 6);
        expect(fit?.c).toBeCloseTo(made.c, 8);
      }),
    );
  });

  test('places that slipped by one graduation hardly move it', () => {
    const places = tracked(truth, believed, 10).map((place, i) =>
      i % 9 ? place : { ...place, phase: place.phase + 1 },
    );
    const fit = fitProjective(places, believed);
    for (const t of [-REACH, 0, REACH]) {
      expect(
        Math.abs(graduationAt(fit!, centred(t)) - graduationAt(truth, centred(t))),
      ).toBeLessThan(0.02);
    }
  });

  test('too few clear places, or a scale that runs backwards, is no fit', () => {
    const few = tracked(truth, believed, 10).slice(0, 11);
    expect(fitProjective(few, believed)).toBeNull();
    const dull = tracked(truth, believed, 10).map((place) => ({ ...place, quality: 0.3 }));
    expect(fitProjective(dull, believed)).toBeNull();
    const backward = { a: -0.1, b: 0, c: 0 };
    expect(fitProjective(tracked(backward, believed, 10), believed)).toBeNull();
  });

  test('a horizon within the stretch seen is no fit', () => {
    const steep = { a: 0.1, b: 0, c: 0.97 / REACH };
    const ahead = tracked(steep, believed, 10).filter(({ t }) => t > -REACH + 10);
    expect(fitProjective(ahead, believed)).toBeNull();
  });
});

describe('the residual', () => {
  const straight = { a: 0.1, b: 0, c: 0 };
  const bow = (t: number) => 0.6 * (t / REACH) ** 2;
  const bent = tracked(straight, straight, 10).map((place) => ({ ...place, phase: bow(place.t) }));

  test('takes up a bend', () => {
    const model = withResidual(bent, straight);
    for (const t of [-700, -300, 0, 450, 800]) {
      expect(Math.abs(graduationAt(model, centred(t)) - 0.1 * t - bow(t))).toBeLessThan(0.005);
    }
  });

  test('adds to the residual that is there', () => {
    const once = withResidual(bent, straight);
    const rest = bent.map((p) => ({
      ...p,
      phase: 0.1 * p.t + 2 * bow(p.t) - graduationAt(once, p.t),
    }));
    expect(graduationAt(withResidual(rest, once), centred(800))).toBeCloseTo(80 + 2 * bow(800), 2);
  });

  test('a straight row keeps its model, and so does one hardly seen', () => {
    const near = bent.map((place) => ({ ...place, phase: 0.05 * Math.sin(place.t) }));
    expect(withResidual(near, straight)).toBe(straight);
    expect(withResidual(bent.slice(0, 11), straight)).toBe(straight);
  });
});
