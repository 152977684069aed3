import { describe, expect, test } from 'vitest';
import type { Field } from '../../../src/tape/picture/field.ts';
import { alongRow } from '../../../src/tape/picture/space.ts';
import { pitchSeeds } from '../../../src/tape/pitch/pitch-seeds.ts';
import { followed } from '../../../src/tape/pitch/pitch-tracking.ts';
import { millimetresSeen, misread, plainFrame } from '../made/followed-scene.ts';
import { drawScene, placeOf, type Scene, seeded } from '../made/stroke-scene.ts';

const PLAIN: Scene = {
  width: 900,
  height: 260,
  turn: 0,
  pxPerMm: 9,
  strokeLength: 3,
  at: [450, 110],
  noise: 20,
};

/** The scene with something of even grey laid over it from one mm to another. */
function covered(scene: Scene, from: number, to: number): Field<never> {
  const drawn = drawScene(scene);
  const [left] = placeOf(scene, from, 0);
  const [right] = placeOf(scene, to, 0);
  const values = drawn.values.map((value, i) => {
    const x = i % scene.width;
    return x > left && x < right ? 120 : value;
  });
  return { ...drawn, values };
}

describe('a row followed from a seed', () => {
  test('a short stretch in the picture is enough', () => {
    const scene = { ...PLAIN, reach: 14 };
    const frame = plainFrame(scene);
    const [pitch] = pitchSeeds(drawScene(scene), frame, 2);
    const { worst, offsets } = misread(scene, frame, pitch!);
    expect(offsets).toHaveLength(1);
    expect(worst).toBeLessThan(0.3);
    expect(Math.abs(pitch!.followed!.count - 29)).toBeLessThan(4);
    // Beyond the stretch nothing counts.
    const [end] = placeOf(scene, 20, 0);
    const beyond = pitch!.track.filter(({ u }) => u > end - 450);
    expect(beyond.length).toBeGreaterThan(5);
    expect(beyond.every(({ quality }) => quality === 0)).toBe(true);
  });

  test('no graduation is lost or won under a finger', () => {
    const scene = { ...PLAIN, tilt: [0.003, 0] as const };
    const frame = plainFrame(scene);
    const [pitch] = pitchSeeds(covered(scene, 8, 16), frame, 2);
    const seen = millimetresSeen(scene).filter((mm) => mm < 7 || mm > 17);
    const { worst, offsets } = misread(scene, frame, pitch!, seen);
    expect(offsets).toHaveLength(1);
    expect(worst).toBeLessThan(0.6);
    expect(pitch!.followed!.count).toBeGreaterThan(60);
  });

  test('a wide cover ends the walk rather than guess', () => {
    const scene = { ...PLAIN, width: 1200, at: [600, 110] as const };
    const frame = plainFrame(scene);
    const [pitch] = pitchSeeds(covered(scene, 0, 25), frame, 2);
    expect(pitch!.followed!.to).toBeLessThan(6 * 9);
  });

  test('a bare picture has no seeds', () => {
    const random = seeded(9);
    const values = Float32Array.from({ length: 900 * 260 }, () => 150 + 4 * random());
    expect(pitchSeeds({ width: 900, height: 260, values }, plainFrame(PLAIN), 3)).toEqual([]);
  });
});

test('a pattern too faint to be print is no seed', () => {
  const weave = (contrast: number) => {
    const grey = (_: unknown, i: number) =>
      150 + contrast * Math.cos((2 * Math.PI * (i % 900)) / 12);
    return { width: 900, height: 260, values: Float32Array.from({ length: 900 * 260 }, grey) };
  };
  expect(pitchSeeds(weave(1), plainFrame(PLAIN), 1)).toEqual([]);
  expect(pitchSeeds(weave(20), plainFrame(PLAIN), 1)).toHaveLength(1);
});

describe('the walk', () => {
  /** Strokes at each whole graduation of a course that no projective model fits. */
  const course = (t: number) => t / 10 + 0.8 * Math.sin(t / 150);
  const signal = Float32Array.from({ length: 1000 }, (_, i) =>
    Math.cos(2 * Math.PI * course(i - 500)),
  );
  const seed = { u: alongRow<'measuring'>(500), pitch: 9.6, band: [-3, 3] as const, signal };

  test('keeps to a course that bends both ways', () => {
    const pitch = followed(seed, alongRow(0));
    expect(pitch!.model.residual).toBeDefined();
    for (const { t, phase, u } of pitch!.track) {
      if (u < 60 || u > 940) continue;
      expect(Math.abs(phase)).toBeLessThan(0.05);
      expect(t).toBeCloseTo(u - 500, 9);
    }
    expect(Math.abs(pitch!.followed!.count - (course(490) - course(-490)))).toBeLessThan(4);
  });

  test('leads nowhere in noise', () => {
    const random = seeded(4);
    const noise = Float32Array.from({ length: 1000 }, () => random());
    const found = followed({ ...seed, signal: noise }, alongRow(0));
    expect(found?.followed?.count ?? 0).toBeLessThan(40);
  });
});
