import type { Strip } from '../frame/strip.ts';
import { BAND_REACH, MOST_ENERGY } from './limits.ts';

/** Where strokes sit across a row, in one stretch of it. */
export interface StrokePlace {
  readonly u: number;
  readonly v: number;
  readonly weight: number;
}

/** What counts as the edge of a stroke, in the log-grey differences of a strip. */
export interface StrokeEdge {
  readonly leastAlong: number;
  /** How many times its squared gradient across the row takes off its energy. */
  readonly acrossCost: number;
}

/**
 * Energy of the edges that stand square on the row, for every sample of the strip.
 * Where the picture ends beside a sample it is NaN, so that a band reaching over the
 * border never wins: what is cut off there would move its middle.
 */
export function strokeEnergy(strip: Strip, edge: StrokeEdge): Float32Array {
  const { width, height, values } = strip;
  const energy = new Float32Array(width * height);
  for (let j = 1; j < height - 1; j++) {
    for (let i = j * width + 1; i < (j + 1) * width - 1; i++) {
      const along = (values[i + 1] as number) - (values[i - 1] as number);
      if (!(Math.abs(along) > edge.leastAlong)) continue;
      const across = (values[i + width] as number) - (values[i - width] as number);
      const square = along * along - edge.acrossCost * across * across;
      energy[i] = Math.min(MOST_ENERGY, Math.max(0, square));
    }
  }
  return energy;
}

/**
 * Where across the row the strokes of columns `start` to `start + length` sit.
 *
 * @param lean how ready to believe each v, 0 to 1.
 * @returns undefined where there are none.
 */
export function strokePlace(
  strip: Strip,
  energy: Float32Array,
  start: number,
  length: number,
  lean: (v: number) => number,
): StrokePlace | undefined {
  const profile = energyAcross(strip, energy, start, length);
  let best = 0;
  let middle = 0;
  for (let j = BAND_REACH; j < strip.height - BAND_REACH; j++) {
    const score = lean(j - strip.reach) * bandEnergy(profile, j);
    if (!(score > best)) continue;
    best = score;
    middle = j;
  }
  if (best <= 0) return undefined;
  return {
    u: strip.from + start + length / 2,
    v: middle - strip.reach + centroid(profile, middle),
    weight: Math.sqrt(best),
  };
}

function energyAcross(
  { width, height }: Strip,
  energy: Float32Array,
  start: number,
  length: number,
): Float32Array {
  return new Float32Array(height).map((_, j) => {
    let sum = 0;
    for (let i = j * width + start; i < j * width + start + length; i++) {
      sum += energy[i] as number;
    }
    return sum;
  });
}

/** The energy about row j of the profile, its middle counting most. */
function bandEnergy(profile: Float32Array, j: number): number {
  let sum = 0;
  for (let q = -BAND_REACH; q <= BAND_REACH; q++) {
    sum += (profile[j + q] as number) * (1 - Math.abs(q) / (BAND_REACH + 1));
  }
  return sum;
}

function centroid(profile: Float32Array, middle: number): number {
  let sum = 0;
  let moment = 0;
  for (let q = -BAND_REACH; q <= BAND_REACH; q++) {
    sum += profile[middle + q] as number;
    moment += q * (profile[middle + q] as number);
  }
  return moment / sum;
}
