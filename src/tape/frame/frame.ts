import type { Field } from '../picture/field.ts';
import {
  type AlongRow,
  alongRow,
  type In,
  type Place,
  placeIn,
  type Scaling,
  type Space,
} from '../picture/space.ts';
import { BORDER_PX, CLOSE_ENOUGH_PX, LEAST_SLOPE, MOST_ROUNDS } from './limits.ts';

/** A direction in the picture, as x and y of a vector. */
export type Direction = readonly [x: number, y: number];

/** A place as px along a row and px across it. */
export type InRow<S extends Space> = readonly [u: AlongRow<S>, v: number];

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
export interface RowFrame<S extends Space = Space> extends In<S> {
  readonly origin: Place<S>;
  /** Of length 1. */
  readonly along: Direction;
  /** Of length 1, a quarter turn from `along` towards it. */
  readonly across: Direction;
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
export function rowFrame<S extends Space>(origin: Place<S>, angle: number): RowFrame<S> {
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

/** How far it goes across for each px along, at u. */
export function bowSlope(frame: RowFrame, u: number): number {
  const q = u - frame.bowFrom;
  return (2 * frame.bow2 + 3 * frame.bow3 * q) * q;
}

/** The picture place of (u, v). */
export function toImage<S extends Space>(
  frame: RowFrame<S>,
  u: AlongRow<NoInfer<S>>,
  v: number,
): Place<S> {
  const { origin, along, across } = frame;
  const x = u + v * (frame.shear + frame.shearRate * u);
  const y = v + bowAt(frame, u);
  return placeIn(
    origin[0] + x * along[0] + y * across[0],
    origin[1] + x * along[1] + y * across[1],
  );
}

/** The (u, v) of a picture place: undoes `toImage` near the row, to less than 0.001 px. */
export function toFrame<S extends Space>(frame: RowFrame<S>, [x, y]: Place<NoInfer<S>>): InRow<S> {
  const { origin, along, across } = frame;
  const dx = x - origin[0];
  const dy = y - origin[1];
  const alongLine = dx * along[0] + dy * along[1];
  const acrossLine = dx * across[0] + dy * across[1];
  let u = alongLine;
  let v = acrossLine;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    v = acrossLine - bowAt(frame, u);
    const before = u;
    u = (alongLine - v * frame.shear) / (1 + v * frame.shearRate);
    if (Math.abs(u - before) < CLOSE_ENOUGH_PX) break;
  }
  return [alongRow(u), v];
}

/** The frame's origin moved so many px straight across its line. */
export function originAside<S extends Space>(
  { origin, across }: RowFrame<S>,
  px: number,
): Place<S> {
  return placeIn(origin[0] + px * across[0], origin[1] + px * across[1]);
}

/** The same frame in the pixels of another space; whole coordinates are pixel centres. */
export function scaledFrame<From extends Space, To extends Space>(
  frame: RowFrame<From>,
  scale: Scaling<From, To>,
): RowFrame<To> {
  const moved = (value: number) => value * scale + (scale - 1) / 2;
  const { along, across, shear } = frame;
  return {
    along,
    across,
    shear,
    origin: placeIn(moved(frame.origin[0]), moved(frame.origin[1])),
    shearRate: frame.shearRate / scale,
    bow2: frame.bow2 / scale,
    bow3: frame.bow3 / (scale * scale),
    bowFrom: frame.bowFrom * scale,
  };
}

/** The whole u from and to which the frame's straight line lies in the picture; from > to: never. */
export function extent<S extends Space>(
  frame: RowFrame<S>,
  field: Field<NoInfer<S>>,
): readonly [from: AlongRow<S>, to: AlongRow<S>] {
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
  return [alongRow(Math.ceil(from)), alongRow(Math.floor(to))];
}
