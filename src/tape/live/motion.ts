import { leastSquares } from '../numerics/solve.ts';
import type { Field } from '../picture/field.ts';
import { boxDown, sample } from '../picture/field.ts';
import type { GreyImage } from '../picture/grey-image.ts';
import type { Point } from '../picture/place.ts';
import {
  ALIKE,
  COPY_PX,
  FEWEST,
  LEAST_CONTRAST,
  ONE_MOTION_PX,
  PATCH_PX,
  REACH_PX,
} from './limits.ts';

/** A turn, a change of size and a shift: how a hand moves the camera from one frame to the next. */
export interface Motion {
  /** x' = cosine·x − sine·y + right, y' = sine·x + cosine·y + down; the size is in cosine and sine. */
  readonly cosine: number;
  readonly sine: number;
  readonly right: number;
  readonly down: number;
}

/** Follows places from one frame into the next; undefined when too few of them are found again. */
export function motionBetween(
  before: GreyImage,
  after: GreyImage,
  places: readonly Point[],
): Motion | undefined {
  const factor = Math.max(1, Math.round(Math.max(before.width, before.height) / COPY_PX));
  const first = boxDown<'motion'>(before, factor);
  const second = boxDown<'motion'>(after, factor);
  const inCopy = ({ x, y }: Point): Point<'motion'> => ({
    x: (x + 0.5) / factor - 0.5,
    y: (y + 0.5) / factor - 0.5,
  });
  const sums = sumsOf(second);
  const moves = places.map(inCopy).flatMap((place) => foundAgain(first, second, sums, place));
  const kept = largestGroup(moves);
  if (kept.length < FEWEST) return undefined;
  const rows = kept.flatMap(({ from, to }) => [
    [from.x, -from.y, 1, 0, to.x, 1],
    [from.y, from.x, 0, 1, to.y, 1],
  ]);
  const [cosine, sine, right, down] = leastSquares(rows, 4) ?? [];
  if (cosine === undefined || sine === undefined || right === undefined || down === undefined) {
    return undefined;
  }
  const half = (factor - 1) / 2;
  return {
    cosine,
    sine,
    right: right * factor + half - cosine * half + sine * half,
    down: down * factor + half - sine * half - cosine * half,
  };
}

interface Move {
  readonly from: Point<'motion'>;
  readonly to: Point<'motion'>;
}

function foundAgain(
  first: Field<'motion'>,
  second: Field<'motion'>,
  sums: Sums,
  from: Point<'motion'>,
): Move[] {
  const patch = patchOf(first, from.x, from.y);
  if (!patch || patch.contrast < LEAST_CONTRAST) return [];
  const scoreAt = (dx: number, dy: number) =>
    likenessThere(patch, second, sums, from.x + dx, from.y + dy);
  let best: { score: number; dx: number; dy: number } | undefined;
  for (let dy = -REACH_PX; dy <= REACH_PX; dy++) {
    for (let dx = -REACH_PX; dx <= REACH_PX; dx++) {
      const score = scoreAt(dx, dy);
      if (score > (best?.score ?? ALIKE)) best = { score, dx, dy };
    }
  }
  if (!best) return [];
  // A pixel of the copy is several of the frame: the top of the likeness lies between them.
  const { dx, dy, score } = best;
  const x = from.x + dx + topBetween(scoreAt(dx - 1, dy), score, scoreAt(dx + 1, dy));
  const y = from.y + dy + topBetween(scoreAt(dx, dy - 1), score, scoreAt(dx, dy + 1));
  return [{ from, to: { x, y } }];
}

/** Where a parabola through three neighbours has its top, from the middle one: −½ to ½. */
function topBetween(before: number, top: number, after: number): number {
  const bend = before - 2 * top + after;
  return bend < 0 ? Math.max(-0.5, Math.min(0.5, (0.5 * (before - after)) / bend)) : 0;
}

interface Patch {
  readonly values: Float32Array;
  readonly contrast: number;
}

const SIDE = 2 * PATCH_PX + 1;

/** A square of a field with its mean taken out; undefined at the border. */
function patchOf(field: Field<'motion'>, x: number, y: number): Patch | undefined {
  const left = Math.round(x) - PATCH_PX;
  const top = Math.round(y) - PATCH_PX;
  const outside = left < 0 || top < 0 || left + SIDE > field.width || top + SIDE > field.height;
  if (outside) return undefined;
  const values = new Float32Array(SIDE * SIDE);
  let sum = 0;
  for (let j = 0; j < SIDE; j++) {
    for (let i = 0; i < SIDE; i++) {
      const value = field.values[(top + j) * field.width + left + i] as number;
      values[j * SIDE + i] = value;
      sum += value;
    }
  }
  return centred(values, sum);
}

/** Sums of samples and of their squares over all that lies above and left of each corner. */
interface Sums {
  readonly plain: Float64Array;
  readonly squared: Float64Array;
}

function sumsOf({ width, height, values }: Field<'motion'>): Sums {
  const line = width + 1;
  const plain = new Float64Array(line * (height + 1));
  const squared = new Float64Array(line * (height + 1));
  for (let y = 0; y < height; y++) {
    let [sum, squares] = [0, 0];
    for (let x = 0; x < width; x++) {
      const value = values[y * width + x] as number;
      sum += value;
      squares += value * value;
      const below = (y + 1) * line + x + 1;
      plain[below] = (plain[below - line] as number) + sum;
      squared[below] = (squared[below - line] as number) + squares;
    }
  }
  return { plain, squared };
}

/**
 * What `likeness` tells of a patch and the square about a place; 0 at the border. A frame asks
 * this some ten thousand times, so the square is neither copied nor are its sums added up anew.
 */
function likenessThere(
  patch: Patch,
  field: Field<'motion'>,
  sums: Sums,
  x: number,
  y: number,
): number {
  const { width, height, values } = field;
  const left = Math.round(x) - PATCH_PX;
  const top = Math.round(y) - PATCH_PX;
  if (left < 0 || top < 0 || left + SIDE > width || top + SIDE > height) return 0;
  const upper = top * (width + 1) + left;
  const lower = upper + SIDE * (width + 1);
  const within = (of: Float64Array) =>
    (of[lower + SIDE] as number) -
    (of[lower] as number) -
    (of[upper + SIDE] as number) +
    (of[upper] as number);
  const mean = within(sums.plain) / patch.values.length;
  const spread = within(sums.squared) / patch.values.length - mean * mean;
  let sum = 0;
  for (let j = 0; j < SIDE; j++) {
    const at = (top + j) * width + left;
    for (let i = 0; i < SIDE; i++) {
      sum += (patch.values[j * SIDE + i] as number) * (values[at + i] as number);
    }
  }
  const contrasts = patch.contrast * Math.sqrt(Math.max(0, spread));
  return sum / (patch.values.length * contrasts + 1e-6);
}

function centred(values: Float32Array, sum: number): Patch {
  const mean = sum / values.length;
  let squares = 0;
  for (let i = 0; i < values.length; i++) {
    const value = (values[i] as number) - mean;
    values[i] = value;
    squares += value * value;
  }
  return { values, contrast: Math.sqrt(squares / values.length) };
}

/** Correlation of two patches: 1 when one is the other in another light. */
function likeness(one: Patch, other: Patch): number {
  let sum = 0;
  for (let i = 0; i < one.values.length; i++) {
    sum += (one.values[i] as number) * (other.values[i] as number);
  }
  return sum / (one.values.length * one.contrast * other.contrast + 1e-6);
}

/** The moves that agree with one of them in their shift. */
function largestGroup(moves: readonly Move[]): Move[] {
  let best: Move[] = [];
  for (const { from, to } of moves) {
    const alike = moves.filter(
      (other) =>
        Math.abs(other.to.x - other.from.x - (to.x - from.x)) <= ONE_MOTION_PX &&
        Math.abs(other.to.y - other.from.y - (to.y - from.y)) <= ONE_MOTION_PX,
    );
    if (alike.length > best.length) best = alike;
  }
  return best;
}

/** How alike two pictures are at lists of places that should show the same (correlation). */
export function likenessAt(
  first: Field<'picture'>,
  firstPlaces: readonly Point[],
  second: Field<'picture'>,
  secondPlaces: readonly Point[],
): number {
  return likeness(lookedAt(first, firstPlaces), lookedAt(second, secondPlaces));
}

/** How much a picture changes over some places: the spread of its grey. */
export function contrastAt(field: Field<'picture'>, places: readonly Point[]): number {
  return lookedAt(field, places).contrast;
}

function lookedAt(field: Field<'picture'>, places: readonly Point[]): Patch {
  const values = new Float32Array(places.length);
  let sum = 0;
  // Several times as fast as `Float32Array.from`, and a frame does this some hundred times.
  for (let i = 0; i < values.length; i++) {
    const { x, y } = places[i] as Point;
    const value = sample(field, x, y);
    values[i] = value;
    sum += value;
  }
  return centred(values, sum);
}
