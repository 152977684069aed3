import type { Field } from '../../../src/tape/picture/field.ts';

/** A flat piece of tape in a picture: a stroke every mm, from 0 to `strokeLength` across it. */
export interface Scene {
  readonly width: number;
  readonly height: number;
  /** Direction of the row in the picture, in radians. */
  readonly turn: number;
  readonly pxPerMm: number;
  /** In mm. */
  readonly strokeLength: number;
  /** Length of every tenth stroke, when it is a longer one, in mm. */
  readonly tenthLength?: number;
  /** Where the tape's 0 comes to lie. */
  readonly at: readonly [number, number];
  /** How much further away each mm along and across is, as a share of the distance. */
  readonly tilt?: readonly [number, number];
  /** Half the curvature of the row in its own plane, per mm. */
  readonly bend?: number;
  /** Length of the row to either side of 0, in mm. */
  readonly reach?: number;
  /** Grey levels of noise. */
  readonly noise?: number;
}

const STROKE_MM = 0.3;
/** Samples a side within one pixel. */
const FINE = 3;

/** Plane to picture, row after row: derived here from turn, scale, place and tilt. */
function projection({ turn, pxPerMm, at, tilt = [0, 0] }: Scene): readonly number[] {
  const [c, s] = [pxPerMm * Math.cos(turn), pxPerMm * Math.sin(turn)];
  const [gx, gy] = tilt;
  return [c + at[0] * gx, at[0] * gy - s, at[0], s + at[1] * gx, c + at[1] * gy, at[1], gx, gy, 1];
}

function apply(m: readonly number[], x: number, y: number): [number, number] {
  const part = (i: number) => m[i]! * x + m[i + 1]! * y + m[i + 2]!;
  return [part(0) / part(6), part(3) / part(6)];
}

function inverse(m: readonly number[]): number[] {
  const minor = (a: number, b: number, c: number, d: number) => m[a]! * m[d]! - m[b]! * m[c]!;
  return [
    minor(4, 5, 7, 8),
    -minor(1, 2, 7, 8),
    minor(1, 2, 4, 5),
    -minor(3, 5, 6, 8),
    minor(0, 2, 6, 8),
    -minor(0, 2, 3, 5),
    minor(3, 4, 6, 7),
    -minor(0, 1, 6, 7),
    minor(0, 1, 3, 4),
  ];
}

/** Where the point `along` mm from 0 and `across` mm from the row's edge lies in the picture. */
export function placeOf(scene: Scene, along: number, across: number): [number, number] {
  const bend = scene.bend ?? 0;
  const slope = 2 * bend * along;
  const side = across / Math.hypot(1, slope);
  return apply(projection(scene), along - slope * side, bend * along ** 2 + side);
}

/** The scene drawn with a slow shade from left to right. */
export function drawScene(scene: Scene): Field<never> {
  const { width, height, noise = 0 } = scene;
  const back = inverse(projection(scene));
  const random = seeded(7);
  const values = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const ink = inkShare(scene, back, x, y);
      const light = 1 - (0.4 * x) / width;
      values[y * width + x] = (200 - 160 * ink) * light + noise * (random() - 0.5);
    }
  }
  return { width, height, values };
}

function inkShare(scene: Scene, back: readonly number[], x: number, y: number): number {
  if (!nearRow(scene, ...apply(back, x, y))) return 0;
  let count = 0;
  for (let j = 0; j < FINE; j++) {
    for (let i = 0; i < FINE; i++) {
      const [px, py] = [x + (i + 0.5) / FINE - 0.5, y + (j + 0.5) / FINE - 0.5];
      if (isInk(scene, ...apply(back, px, py))) count++;
    }
  }
  return count / FINE ** 2;
}

/** Most of a picture is bare: no pixel of it needs a closer look. */
function nearRow(scene: Scene, x: number, y: number): boolean {
  const { bend = 0, strokeLength, tenthLength = strokeLength } = scene;
  const rise = y - bend * x ** 2;
  return rise > -1 && rise < 1.5 * tenthLength + 1;
}

function isInk(scene: Scene, x: number, y: number): boolean {
  const { bend = 0, reach = 1e3, strokeLength } = scene;
  // The foot of a point on the bent row, to the second order of the bend.
  const rise = y - bend * x ** 2;
  const along = x + 2 * bend * x * rise;
  const across = rise / Math.hypot(1, 2 * bend * x);
  const length = Math.round(along) % 10 === 0 ? (scene.tenthLength ?? strokeLength) : strokeLength;
  if (across < 0 || across > length || Math.abs(along) > reach) return false;
  return Math.abs(along - Math.round(along)) < STROKE_MM / 2;
}

/** Numbers from 0 to 1 that are the same on every run (a linear congruential generator). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
