import type { RowFrame } from '../frame/frame.ts';
import type { Strip } from '../frame/strip.ts';
import { leastSquares } from '../numerics/solve.ts';
import { alongRow, centred } from '../picture/space.ts';
import { fromCentre } from './along.ts';
import {
  EDGE,
  FEWEST_PIXELS,
  LEAST_GRADIENT,
  LEAST_REACH_PX,
  LEAST_SHEAR,
  MOST_SHEAR,
  MOST_TURNED,
  REACH_PITCHES,
  SHEAR_AGREES,
  SHEAR_FEWEST_PLACES,
  SHEAR_HELD,
  SHEAR_OUTLIER,
  SHEAR_ROUNDS,
  STROKE_REACH_PX,
} from './limits.ts';
import type { RowPitch } from './pitch-spectrum.ts';
import { densityAt, graduationAt } from './position.ts';

/** Px between graduations in the middle of the row. */
export const middlePitch = ({ model }: RowPitch) => 1 / Math.abs(densityAt(model, centred(0)));

/** Rows to either side whose strokes tell the shear: about one graduation's length of stroke. */
export const strokeReach = (pitch: RowPitch) =>
  Math.round(
    Math.max(LEAST_REACH_PX, Math.min(STROKE_REACH_PX, REACH_PITCHES * middlePitch(pitch))),
  );

/** A local shear and how far to trust it; `place` runs from −1 to 1 over the strip. */
export interface LocalShear {
  readonly place: number;
  readonly shear: number;
  readonly weight: number;
}

/** The frame with its strokes leaning by so much more. */
export function leaned(
  frame: RowFrame<'measuring'>,
  lean: { shear: number; rate: number },
): RowFrame<'measuring'> {
  return { ...frame, shear: frame.shear + lean.shear, shearRate: frame.shearRate + lean.rate };
}

/** The shear, linear in the place, that most local ones agree on; a cautious one has a prior of none. */
export function agreedShear(
  places: readonly LocalShear[],
  outlier: number,
  passes: number,
  prior: number,
): { level: number; slope: number } | null {
  const rows = places.map(({ place, shear, weight }) => [1, place, shear, weight]);
  const held = prior ? [...rows, [0, 1, 0, prior]] : rows;
  let line: { level: number; slope: number } | null = null;
  for (let pass = 0; pass < passes; pass++) {
    const [level, slope] = leastSquares(held, 2) ?? [];
    if (level === undefined || slope === undefined) return null;
    line = { level, slope };
    for (const [i, { place, shear, weight }] of places.entries()) {
      const off = (shear - level - slope * place) / outlier;
      (rows[i] as number[])[3] = weight / (1 + off * off);
    }
  }
  return line;
}

/**
 * By how much the strokes lean from the frame, from the gradients at the graduations only, so
 * that the texture of cloth has little say. Null when too little is seen or nothing leans.
 */
export function shearFromStrokes(strip: Strip<'measuring'>, pitch: RowPitch) {
  const near = nearGraduations(strip, pitch);
  const low = Math.max(strip.from, pitch.followed?.from ?? strip.from);
  const high = Math.min(strip.from + strip.width - 1, pitch.followed?.to ?? strip.to);
  const window = Math.max(60, 4 * middlePitch(pitch));
  const half = Math.max(1, strip.width / 2);
  const middle = strip.from + half;
  const places: LocalShear[] = [];
  for (let u = low; u + window <= high; u += window / 2) {
    const start = Math.max(1, Math.ceil(u - strip.from));
    const end = Math.min(strip.width - 1, u + window - strip.from);
    const local = localShear(strip, near, start, end, strokeReach(pitch));
    if (local) places.push({ place: (u + window / 2 - middle) / half, ...local });
  }
  if (places.length < SHEAR_FEWEST_PLACES) return null;
  const line = agreedShear(places, SHEAR_AGREES, SHEAR_ROUNDS, SHEAR_HELD * places.length);
  if (!line) return null;
  const [level, slope] = [Math.abs(line.level), Math.abs(line.slope)];
  if (!(level < MOST_SHEAR && slope < MOST_SHEAR)) return null;
  if (level < LEAST_SHEAR && slope < LEAST_SHEAR) return null;
  const rate = line.slope / half;
  return { shear: line.level - rate * middle, rate };
}

/**
 * 1 for the columns where a stroke's edge can be. With a plain signal the ink may be half a
 * graduation off, light on dark, so both places count.
 */
function nearGraduations(strip: Strip<'measuring'>, pitch: RowPitch): Uint8Array {
  const reach = Math.max(EDGE.least, Math.min(EDGE.share * middlePitch(pitch), EDGE.most));
  const bothPlaces = !pitch.followed && !pitch.smoothing;
  const fromWhole = (k: number) => Math.abs(k - Math.round(k));
  const near = new Uint8Array(strip.width);
  for (let i = 0; i < near.length; i++) {
    const t = fromCentre(pitch, alongRow(i + strip.from));
    const k = graduationAt(pitch.model, t);
    const off = bothPlaces ? Math.min(fromWhole(k), fromWhole(k + 0.5)) : fromWhole(k);
    if (off <= reach * Math.abs(densityAt(pitch.model, t))) near[i] = 1;
  }
  return near;
}

/** The lean that most gradients of a window agree on: along a stroke, grey doesn't change. */
function localShear(
  strip: Strip<'measuring'>,
  near: Uint8Array,
  start: number,
  end: number,
  reach: number,
) {
  const { width, values } = strip;
  const leans: number[] = [];
  const strengths: number[] = [];
  for (let i = start; i < end; i++) {
    if (!near[i]) continue;
    for (let row = strip.reach - reach + 2; row < strip.reach + reach - 1; row++) {
      const at = row * width + i;
      const along = (values[at + 1] as number) - (values[at - 1] as number);
      const across = (values[at + width] as number) - (values[at - width] as number);
      if (!(Math.abs(along) > LEAST_GRADIENT)) continue;
      // Not-a-number, where the picture ends, fails both.
      if (!(Math.abs(across) <= MOST_TURNED * Math.abs(along))) continue;
      leans.push(across / along);
      strengths.push(Math.min(1, along * along));
    }
  }
  if (leans.length < FEWEST_PIXELS) return null;
  let shear = 0;
  let count = 0;
  for (let pass = 0; pass < 4; pass++) {
    let [total, sum] = [1e-9, 0];
    count = 0;
    for (let i = 0; i < leans.length; i++) {
      const lean = leans[i] as number;
      const off = (lean + shear) / SHEAR_OUTLIER;
      const trust = pass ? 1 / (1 + off * off) : 1;
      const weight = trust * (strengths[i] as number);
      total += weight;
      sum += weight * lean;
      count += trust;
    }
    shear = -sum / total;
  }
  return { shear, weight: Math.sqrt(count) };
}
