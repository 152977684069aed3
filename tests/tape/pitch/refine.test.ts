import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RowFrame } from '../../../src/tape/frame/frame.ts';
import { strip } from '../../../src/tape/frame/strip.ts';
import { logOf } from '../../../src/tape/picture/field.ts';
import { centred } from '../../../src/tape/picture/space.ts';
import { shearFromPhase } from '../../../src/tape/pitch/phase-shear.ts';
import { pitchSeeds } from '../../../src/tape/pitch/pitch-seeds.ts';
import { pitchBySpectra } from '../../../src/tape/pitch/pitch-spectrum.ts';
import { densityAt, graduationAt } from '../../../src/tape/pitch/position.ts';
import { halfOn, refine } from '../../../src/tape/pitch/refine.ts';
import { sharpness } from '../../../src/tape/pitch/sharpness.ts';
import { agreedShear, leaned, shearFromStrokes } from '../../../src/tape/pitch/shear.ts';
import { millimetresSeen, misread, plainFrame } from '../made/followed-scene.ts';
import { toFrame } from '../made/plain-places.ts';
import { drawScene, placeOf, type Scene } from '../made/stroke-scene.ts';

const TILTED: Scene = {
  width: 900,
  height: 320,
  turn: 0.08,
  pxPerMm: 10,
  strokeLength: 3.4,
  at: [450, 140],
  tilt: [0.002, 0.003],
  noise: 20,
};

/** How far along the row a stroke's foot lies from its head, px, the worst. */
function leaning(scene: Scene, frame: RowFrame): number {
  const across = (mm: number, share: number) =>
    toFrame(frame, ...placeOf(scene, mm, share * scene.strokeLength))[0];
  return Math.max(
    ...millimetresSeen(scene).map((mm) => Math.abs(across(mm, 0.1) - across(mm, 0.9))),
  );
}

describe('refine', () => {
  test('the frame leans as the strokes do, and the graduations stand where drawn at head and foot', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.25, max: 0.25, noNaN: true }),
        // About what a row fitted by its strokes is still off by.
        fc.double({ min: -0.04, max: 0.04, noNaN: true }),
        (turn, lean) => {
          const scene = { ...TILTED, turn };
          const drawn = drawScene(scene);
          const start = leaned(plainFrame(scene), { shear: lean, rate: 0 });
          const { frame, pitch } = refine(drawn, start, pitchBySpectra(drawn, start)!);
          expect(leaning(scene, frame)).toBeLessThan(0.6);
          for (const share of [0.1, 0.5, 0.9]) {
            const at = misread(
              scene,
              frame,
              pitch,
              millimetresSeen(scene),
              share * scene.strokeLength,
            );
            expect(at.offsets).toHaveLength(1);
            expect(at.worst).toBeLessThan(0.4);
          }
        },
      ),
      { numRuns: 6 },
    );
  });

  test('what it is given stays as it was, and a followed row keeps its ends', () => {
    const drawn = drawScene({ ...TILTED, reach: 20 });
    const start = Object.freeze(plainFrame(TILTED));
    const [seed] = pitchSeeds(drawn, start, 1);
    const before = structuredClone(seed);
    const { frame, pitch } = refine(drawn, start, seed!);
    expect(seed).toEqual(before);
    expect(pitch.followed).toEqual(before!.followed);
    expect(leaning({ ...TILTED, reach: 20 }, frame)).toBeLessThan(0.6);
    const beyond = pitch.track.filter(
      ({ u }) => u > pitch.followed!.to || u < pitch.followed!.from,
    );
    expect(beyond.length).toBeGreaterThan(5);
    expect(beyond.every(({ quality }) => quality === 0)).toBe(true);
  });

  test('half a graduation on, and back to the same graduations', () => {
    const drawn = drawScene(TILTED);
    const pitch = pitchBySpectra(drawn, plainFrame(TILTED))!;
    const light = halfOn(pitch);
    for (const t of [-300, 0, 250]) {
      expect(graduationAt(light.model, centred(t))).toBeCloseTo(
        graduationAt(pitch.model, centred(t)) + 0.5,
        9,
      );
      expect(densityAt(light.model, centred(t))).toBeCloseTo(densityAt(pitch.model, centred(t)), 9);
    }
    expect([pitch.ink, light.ink, halfOn(light).ink]).toEqual([1, -1, 1]);
  });
});

describe('the shear', () => {
  const scene = { ...TILTED, tilt: [0, 0] as const, turn: 0 };
  const drawn = drawScene(scene);
  const square = plainFrame(scene);
  const pitch = pitchBySpectra(drawn, square)!;
  const leans = [-0.2, -0.06, 0.09, 0.2];

  test.each(leans)('strokes and phases both tell a frame that leans by %f', (lean) => {
    const along = strip<'measuring'>(logOf(drawn), leaned(square, { shear: lean, rate: 0 }), 14);
    // Strokes are square to the drawn row: what is found is what was put on, taken back.
    for (const found of [shearFromStrokes(along, pitch), shearFromPhase(along, pitch)]) {
      expect(Math.abs(found!.shear + lean)).toBeLessThan(0.03);
      expect(Math.abs(found!.rate) * 400).toBeLessThan(0.03);
    }
  });

  test('lines are sharpest in the frame that stands as they do', () => {
    // Fainter, so that no line reaches the most that one may count.
    const faint = { ...drawn, values: drawn.values.map((value) => 150 + value / 4) };
    const sharp = (lean: number) =>
      sharpness(
        strip<'measuring'>(logOf(faint), leaned(square, { shear: lean, rate: 0 }), 14),
        pitch,
      );
    expect(sharp(0)).toBeGreaterThan(0.1);
    for (const lean of leans) expect(sharp(lean)).toBeLessThan(sharp(0));
    expect(sharp(0.2)).toBeLessThan(sharp(0.09));
  });

  test('a frame that stands right is left alone by the strokes', () => {
    expect(shearFromStrokes(strip(logOf(drawn), square, 14), pitch)).toBeNull();
  });

  test('one wild place in nine has little say', () => {
    const places = Array.from({ length: 27 }, (_, i) => {
      const place = (i - 13) / 13;
      return { place, shear: i % 9 ? 0.1 + 0.05 * place : 0.9, weight: 1 };
    });
    const line = agreedShear(places, 0.06, 6, 0);
    expect(line?.level).toBeCloseTo(0.1, 2);
    expect(line?.slope).toBeCloseTo(0.05, 2);
    expect(agreedShear(places.slice(0, 1), 0.06, 6, 0)).toBeNull();
  });
});
