import { describe, expect, test } from 'vitest';
import type { Field } from '../../../src/tape/picture/field.ts';
import { takenAs } from '../../../src/tape/picture/field.ts';
import { type CandidateRow, candidateRows } from '../../../src/tape/rows/candidate-rows.ts';
import { strokeCells } from '../../../src/tape/rows/stroke-cells.ts';
import { drawScene, placeOf, type Scene, seeded } from '../made/stroke-scene.ts';

const PLAIN: Scene = {
  width: 800,
  height: 560,
  turn: 0,
  pxPerMm: 7,
  strokeLength: 4,
  at: [400, 280],
};

const draw = (
  width: number,
  height: number,
  grey: (x: number, y: number) => number,
): Field<never> => ({
  width,
  height,
  values: Float32Array.from({ length: width * height }, (_, i) =>
    grey(i % width, Math.floor(i / width)),
  ),
});

/** The angle between two lines, at most a quarter turn. */
function between(one: number, other: number): number {
  const turn = Math.abs(one - other) % Math.PI;
  return Math.min(turn, Math.PI - turn);
}

describe('the best row', () => {
  test.each([
    ['level', {}],
    ['turned by 30°', { turn: Math.PI / 6 }],
    ['upright', { turn: Math.PI / 2 }],
    ['upside down', { turn: Math.PI + 0.2 }],
    ['going away', { tilt: [0.006, 0.002], turn: 0.4 }],
    ['near the edge of the picture', { at: [400, 60] }],
    ['noisy', { noise: 60, turn: 1 }],
    ['short', { reach: 18, turn: 2 }],
    ['fine', { pxPerMm: 4.5, turn: 2.4 }],
    ['coarse', { pxPerMm: 14, turn: 0.1 }],
  ] as const)('of a tape %s is within 4° and 14 px of its strokes', (_, changes) => {
    const scene: Scene = { ...PLAIN, ...changes };
    const [best] = candidateRows(drawScene(scene), 3);
    if (!best) throw new Error('no row');
    const start = placeOf(scene, -15, 2);
    const end = placeOf(scene, 15, 2);
    const angle = Math.atan2(end[1] - start[1], end[0] - start[0]);
    expect(between(best.angle, angle)).toBeLessThan((4 * Math.PI) / 180);
    const [x, y] = placeOf(scene, 0, 2);
    const away =
      (y - best.centreY) * Math.cos(best.angle) -
      (x - best.centreX) * Math.sin(best.angle) -
      best.offset;
    expect(Math.abs(away)).toBeLessThan(14);
  });
});

test('two tapes give two rows before any other', () => {
  const upper = drawScene({ ...PLAIN, at: [400, 120] });
  const lower = drawScene({ ...PLAIN, at: [400, 440], turn: 0.3 });
  // The light of both pictures is the same: ink wins.
  const values = upper.values.map((value, i) => Math.min(value, lower.values[i]!));
  const [first, second] = candidateRows({ ...upper, values }, 2);
  const angles = [first!, second!].map(({ angle }) => angle).sort((a, b) => a - b);
  expect(angles[0]).toBeCloseTo(0, 1);
  expect(angles[1]).toBeCloseTo(0.3, 1);
});

test('a narrow row comes before a broad field of the same strokes', () => {
  const field = draw(800, 560, (x, y) => {
    const cloth = y > 60 && y < 360;
    const tape = y >= 470 && y < 494;
    return (cloth || tape) && x % 7 < 2 ? 40 : 200;
  });
  const [best] = candidateRows(field, 1);
  expect(best?.angle).toBeCloseTo(0, 6);
  expect(Math.abs(best!.centreY + best!.offset - 482)).toBeLessThan(14);
});

// A level row is also one of 180°, from its other side: it must not come twice.
test.each([0, 0.02, -0.02, 0.8])('a row at %d rad comes once', (turn) => {
  const rows = candidateRows(drawScene({ ...PLAIN, turn, at: [400, 120] }), 4);
  const same = (one: CandidateRow, other: CandidateRow) => {
    if (between(one.angle, other.angle) > 0.12) return false;
    const facing = Math.abs(one.angle - other.angle) < 1 ? 1 : -1;
    return Math.abs(one.offset - facing * other.offset) <= 24;
  };
  const twins = rows.flatMap((one, i) => rows.slice(i + 1).filter((other) => same(one, other)));
  expect(twins).toEqual([]);
  expect(rows.length).toBeGreaterThan(0);
});

describe('no row', () => {
  test.each<[string, Field]>([
    ['in an even picture', draw(300, 200, () => 120)],
    ['in an empty one', draw(0, 0, () => 0)],
    ['in one smaller than a square', draw(7, 5, (x) => 50 * x)],
    ['along the edge of a table', draw(300, 200, (x, y) => (y + 0.2 * x > 110 ? 200 : 40))],
    ['in a slope of light', draw(300, 200, (x, y) => 40 + x / 3 + y / 4)],
  ])('%s', (_, field) => {
    expect(candidateRows(takenAs(field), 5)).toEqual([]);
  });

  test('when none is wanted', () => {
    expect(candidateRows(drawScene(PLAIN), 0)).toEqual([]);
  });
});

test('the best comes first, and never more than wanted', () => {
  const rows = candidateRows(drawScene({ ...PLAIN, noise: 80 }), 9);
  expect(rows.length).toBeLessThanOrEqual(9);
  const scores = rows.map(({ score }) => score);
  expect(scores).toEqual([...scores].sort((a, b) => b - a));
});

describe('squares of strokes', () => {
  test('strokes weigh much, a lone edge and noise little', () => {
    const random = seeded(3);
    const heaviest = (grey: (x: number, y: number) => number) =>
      Math.max(0, ...strokeCells(draw(96, 96, grey)).map(({ weight }) => weight));
    const strokes = heaviest((x, y) => (x % 7 < 2 && y > 30 && y < 66 ? 40 : 200));
    expect(strokes).toBeGreaterThan(0.5);
    expect(heaviest((x) => (x < 50 ? 40 : 200))).toBeLessThan(0.2 * strokes);
    expect(heaviest(() => 120 + 60 * random())).toBeLessThan(0.5 * strokes);
  });

  test('know the direction across the strokes', () => {
    const turn = 0.7;
    const wave = (x: number, y: number) =>
      120 + 60 * Math.sin(x * Math.cos(turn) + y * Math.sin(turn));
    const cells = strokeCells(draw(96, 96, wave));
    expect(cells).toHaveLength(100);
    for (const { cos2, sin2 } of cells) {
      expect(Math.atan2(sin2, cos2) / 2).toBeCloseTo(turn, 1);
    }
  });

  test('in a tenth of the light weigh about the same', () => {
    const weight = (light: number) =>
      strokeCells(draw(96, 96, (x) => light * (x % 7 < 2 ? 100 : 250)))[0]?.weight ?? 0;
    expect(weight(0.3) / weight(1)).toBeGreaterThan(0.8);
  });
});
