import type { Random } from './random.ts';
import { softNoise } from './soft-noise.ts';

export type GroundKind =
  | 'plain weave'
  | 'twill'
  | 'stripes'
  | 'check'
  | 'knit'
  | 'felt'
  | 'wood'
  | 'paper'
  | 'board';

export interface GroundSpec {
  readonly kind: GroundKind;
  /** Grey of the ground, and of its stripes or squares. */
  readonly grey: number;
  readonly second: number;
  /** From thread to thread, mm. */
  readonly thread: number;
  /** From stripe to stripe, mm. */
  readonly stripe: number;
  /** Degrees by which the weave is turned on the bench. */
  readonly angle: number;
  /** Share by which folds lighten and darken it. */
  readonly folds: number;
}

/** A square of cloth that repeats, and larger folds over it. */
export interface Ground {
  readonly size: number;
  readonly perMm: number;
  readonly greys: Float32Array;
  readonly foldsSize: number;
  readonly foldsPerMm: number;
  readonly folds: Float32Array;
  readonly turn: readonly [number, number];
}

const SIZE = 512;
const FOLDS = 64;

export function groundOf(spec: GroundSpec, perMm: number, random: Random): Ground {
  const angle = (spec.angle * Math.PI) / 180;
  return {
    size: SIZE,
    perMm,
    greys: tile(spec, perMm, random),
    foldsSize: FOLDS,
    foldsPerMm: FOLDS / 300,
    folds: softNoise(random, FOLDS, 4, 5).map((value) => 1 + spec.folds * value),
    turn: [Math.cos(angle), Math.sin(angle)],
  };
}

function tile(spec: GroundSpec, perMm: number, random: Random): Float32Array {
  const { kind, grey } = spec;
  if (kind === 'paper') return grained(random, grey, 0.012, [1, 1]);
  if (kind === 'board') return grained(random, grey, 0.02, [1, 1]);
  if (kind === 'wood') return wood(random, grey);
  if (kind === 'felt') return felt(random, grey);
  return woven(spec, perMm, random);
}

function grained(random: Random, grey: number, share: number, [rx, ry]: [number, number]) {
  return softNoise(random, SIZE, rx, ry).map((value) => grey * (1 + share * value));
}

function felt(random: Random, grey: number): Float32Array {
  const [fine, coarse] = [softNoise(random, SIZE, 1), softNoise(random, SIZE, 7)];
  return fine.map((value, i) => grey * (1 + 0.09 * value + 0.05 * coarse[i]!));
}

/** Streaks along the board: fine pores and broad rings. */
function wood(random: Random, grey: number): Float32Array {
  const [pores, rings] = [softNoise(random, SIZE, 24, 0), softNoise(random, SIZE, 90, 5)];
  return pores.map((value, i) => grey * (1 + 0.03 * value + 0.07 * rings[i]!));
}

/** Threads over and under, each a little lighter or darker than the next. */
function woven(spec: GroundSpec, perMm: number, random: Random): Float32Array {
  // A whole number of fours of threads fits the square, or the weave would show a seam.
  const threads = Math.max(8, 4 * Math.round(SIZE / perMm / spec.thread / 4));
  const pitch = SIZE / threads;
  const fuzz = softNoise(random, SIZE, 1);
  const [warp, weft] = [0, 1].map(() =>
    Array.from({ length: threads }, () => 1 + 0.028 * random.normal()),
  ) as [number[], number[]];
  const bands = Math.max(1, Math.round(SIZE / perMm / spec.stripe));
  const second = (i: number) => ((i / threads) * bands) % 1 > 0.62;
  const relief = Math.min(0.28, 0.05 * pitch);
  return fuzz.map((value, i) => {
    const [u, v] = [(i % SIZE) / pitch, Math.floor(i / SIZE) / pitch];
    const [iu, iv] = [Math.floor(u), Math.floor(v)];
    const over = warpOver(spec.kind, iu, iv);
    const ridge = Math.sin(Math.PI * (over ? u - iu : v - iv));
    const tint = over ? warp[iu]! : weft[iv]!;
    return (
      threadGrey(spec, over, second(iu), second(iv)) *
      tint *
      (1 + relief * (ridge - 0.7) + 0.05 * value)
    );
  });
}

function warpOver(kind: GroundKind, iu: number, iv: number): boolean {
  if (kind === 'twill') return (iu + iv) % 4 < 3;
  if (kind === 'knit') return iu % 2 === 0;
  return (iu + iv) % 2 === 0;
}

function threadGrey(spec: GroundSpec, over: boolean, warp: boolean, weft: boolean): number {
  const { kind, grey, second } = spec;
  if (kind === 'stripes') return warp ? second : grey;
  if (kind === 'check') return (over ? warp : weft) ? second : grey;
  return grey;
}
