import type { Field } from '../picture/field.ts';

export type Point = readonly [x: number, y: number];

/**
 * Coordinates laid along a row of strokes, in picture pixels. `u` runs along the row
 * from `origin`, `v` across it. The picture place of (u, v) is
 *
 *     origin + (u + v·(shear + shearRate·u))·along + (v + bow(u))·across
 *     bow(u) = bow2·q² + bow3·q³,  q = u − bowFrom
 *
 * so that every stroke runs along v. A shear linear in u is exact for a flat tape seen
 * from anywhere, as all its strokes meet in one vanishing point; the bow takes up a
 * bent tape and a lens that bends straight lines.
 */
export interface RowFrame {
  readonly origin: Point;
  /** Of length 1. */
  readonly along: Point;
  /** Of length 1, a quarter turn from `along` towards it. */
  readonly across: Point;
  readonly shear: number;
  /** Per pixel. */
  readonly shearRate: number;
  /** Per pixel. */
  readonly bow2: number;
  /** Per square pixel. */
  readonly bow3: number;
  readonly bowFrom: number;
}

/** A straight frame with square strokes. `angle` in radians, from the x axis towards y. */
export function rowFrame(origin: Point, angle: number): RowFrame {
  return { origin, ...directions(angle), shear: 0, shearRate: 0, bow2: 0, bow3: 0, bowFrom: 0 };
}

/** The directions along and across a row at an angle in radians. */
export function directions(angle: number): Pick<RowFrame, 'along' | 'across'> {
  const along = [Math.cos(angle), Math.sin(angle)] as const;
  return { along, across: [-along[1], along[0]] };
}

/** How far the row lies across the straight line of its frame at u. */
export function bowAt(frame: RowFrame, u: number): number {
  const q = u - frame.bowFrom;
  return (frame.bow2 + frame.bow3 * q) * q * q;
}

/** The picture place of (u, v). */
export function toImage(frame: RowFrame, u: number, v: number): Point {
  const { origin, along, across } = frame;
  const x = u + v * (frame.shear + frame.shearRate * u);
  const y = v + bowAt(frame, u);
  return [origin[0] + x * along[0] + y * across[0], origin[1] + x * along[1] + y * across[1]];
}

/** A bow turns the strokes' foot by a little; each round shrinks what is left several times. */
const MOST_ROUNDS = 6;
const CLOSE_ENOUGH_PX = 1e-4;

/** The (u, v) of a picture place: undoes `toImage` near the row, to less than 0.001 px. */
export function toFrame(frame: RowFrame, x: number, y: number): Point {
  const { origin, along, across } = frame;
  const dx = x - origin[0];
  const dy = y - origin[1];
  const alongRow = dx * along[0] + dy * along[1];
  const acrossRow = dx * across[0] + dy * across[1];
  let u = alongRow;
  let v = acrossRow;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    v = acrossRow - bowAt(frame, u);
    const before = u;
    u = (alongRow - v * frame.shear) / (1 + v * frame.shearRate);
    if (Math.abs(u - before) < CLOSE_ENOUGH_PX) break;
  }
  return [u, v];
}

/** The same frame in the picture enlarged `scale` times; whole coordinates are pixel centres. */
export function scaledFrame(frame: RowFrame, scale: number): RowFrame {
  const moved = (value: number) => value * scale + (scale - 1) / 2;
  return {
    ...frame,
    origin: [moved(frame.origin[0]), moved(frame.origin[1])],
    shearRate: frame.shearRate / scale,
    bow2: frame.bow2 / scale,
    bow3: frame.bow3 / (scale * scale),
    bowFrom: frame.bowFrom * scale,
  };
}

/** Clear of the border, where a gradient has no neighbour. */
const BORDER_PX = 2;
/** Steeper than this against an axis, its borders are never met. */
const LEAST_SLOPE = 1e-9;

/** The whole u from and to which the frame's straight line lies in the picture; from > to: never. */
export function extent(frame: RowFrame, field: Field): readonly [from: number, to: number] {
  const { origin, along } = frame;
  let from = -1e9;
  let to = 1e9;
  const clip = (start: number, direction: number, size: number) => {
    if (Math.abs(direction) < LEAST_SLOPE) return;
    const near = (BORDER_PX - start) / direction;
    const far = (size - BORDER_PX - 1 - start) / direction;
    from = Math.max(from, Math.min(near, far));
    to = Math.min(to, Math.max(near, far));
  };
  clip(origin[0], along[0], field.width);
  clip(origin[1], along[1], field.height);
  return [Math.ceil(from), Math.floor(to)];
}
