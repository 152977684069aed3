import { directions, originAside, type RowFrame, rowFrame, toFrame } from '../frame/frame.ts';
import { bandSignal, strip } from '../frame/strip.ts';
import { leastSquares } from '../numerics/solve.ts';
import { type Field, logOf } from '../picture/field.ts';
import { type AlongRow, alongRow, placeIn } from '../picture/space.ts';
import { fromCentre } from './along.ts';
import type { BendPlace } from './bend-walk.ts';
import {
  BAND_REACH,
  BENT_FEWEST,
  BENT_MOST_LEAN,
  BENT_MOST_OFF,
  BENT_TABLE,
  FORESHORTENED,
  TRACK_SIGMA,
} from './limits.ts';
import { phaseTrack } from './phase.ts';
import { BANDS } from './pitch-spectrum.ts';
import { fitProjective, graduationAt, type PositionModel, type TrackedPhase } from './position.ts';
import type { Refined } from './refine.ts';

/**
 * The frame and the pitch along a tape that was followed round a bend, as far as one frame takes
 * up the bend and the lines aren't seen too much at a slant; undefined where that is hardly any.
 */
export function bentRow(
  work: Field<'measuring'>,
  followed: readonly BendPlace[],
): Refined | undefined {
  const clear = Math.max(...followed.map(({ pitch }) => pitch)) * FORESHORTENED;
  let places = longestRun(followed, ({ pitch }) => pitch > clear);
  while (places.length >= BENT_FEWEST) {
    const frame = frameThrough(places);
    if (!frame) return undefined;
    const off = places.map((place) => offFrame(frame, place));
    const leanOff = Math.max(...off.map(({ lean }) => lean));
    const isTakenUp = leanOff < BENT_MOST_LEAN && off.every(({ aside }) => aside < BENT_MOST_OFF);
    if (isTakenUp) return pitchThrough(work, frame, places, leanOff);
    const worse = ({ aside, lean }: OffFrame) =>
      Math.max(aside / BENT_MOST_OFF, lean / BENT_MOST_LEAN);
    const isFirstWorse = worse(off[0] as OffFrame) > worse(off[off.length - 1] as OffFrame);
    places = isFirstWorse ? places.slice(1) : places.slice(0, -1);
  }
  return undefined;
}

interface OffFrame {
  /** Pitches. */
  readonly aside: number;
  /** Px along for each px across. */
  readonly lean: number;
}

/** How far the lines at a place are off the frame, and how far their lean is. */
function offFrame(frame: RowFrame<'measuring'>, place: BendPlace): OffFrame {
  const [u, v] = toFrame(frame, place.at);
  const lean = Math.abs(shearIn(frame, place) - frame.shear - frame.shearRate * u);
  return { aside: Math.abs(v) / place.pitch, lean };
}

function longestRun<T>(all: readonly T[], is: (one: T) => boolean): readonly T[] {
  let [best, run]: T[][] = [[], []];
  for (const one of all) {
    run = is(one) ? [...(run as T[]), one] : [];
    if (run.length > (best as T[]).length) best = run;
  }
  return best as T[];
}

/** A frame whose bow is the cubic nearest to the places, and its shear the straight line nearest to their leans. */
function frameThrough(places: readonly BendPlace[]): RowFrame<'measuring'> | undefined {
  const [first, last] = [places[0] as BendPlace, places[places.length - 1] as BendPlace];
  const [right, down] = [last.at[0] - first.at[0], last.at[1] - first.at[1]];
  const [chord, half] = [Math.atan2(down, right), Math.hypot(right, down) / 2];
  const middle = placeIn<'measuring'>(first.at[0] + right / 2, first.at[1] + down / 2);
  const flat = rowFrame(middle, chord);
  const rows = places.map(({ at, quality }) => {
    const [u, v] = toFrame(flat, at);
    const t = u / half;
    return [1, t, t * t, t ** 3, v, quality];
  });
  const [level, slope, square, cube] = leastSquares(rows, 4) ?? [];
  if (level === undefined || slope === undefined || square === undefined || cube === undefined)
    return undefined;
  const bowed: RowFrame<'measuring'> = {
    ...flat,
    ...directions(chord + Math.atan(slope / half)),
    origin: originAside(flat, level),
    bow2: square / half ** 2,
    bow3: cube / half ** 3,
  };
  const leans = places.map((place) => [
    1,
    toFrame(bowed, place.at)[0] / half,
    shearIn(bowed, place),
    place.quality,
  ]);
  const [shear, rate] = leastSquares(leans, 2) ?? [];
  if (shear === undefined || rate === undefined) return undefined;
  return { ...bowed, shear, shearRate: rate / half };
}

/** How the lines at a place lean against a frame's own square. */
function shearIn({ along, across }: RowFrame, { angle, lean }: BendPlace): number {
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  const [x, y] = [lean * cosine - sine, lean * sine + cosine];
  return (x * along[0] + y * along[1]) / (x * across[0] + y * across[1]);
}

function pitchThrough(
  work: Field<'measuring'>,
  frame: RowFrame<'measuring'>,
  places: readonly BendPlace[],
  leanOff: number,
): Refined | undefined {
  const along = strip(logOf(work), frame, BAND_REACH);
  const stands = places.map((place) => ({ ...place, u: toFrame(frame, place.at)[0] }));
  const [first, last] = [stands[0], stands[stands.length - 1]];
  if (!first || !last || along.width === 0) return undefined;
  const centre = alongRow<'measuring'>((first.u + last.u) / 2);
  const steps = stands.map(({ u, tick, quality, pitch }) => {
    return { t: fromCentre({ centre }, u), phase: tick, quality, pitch };
  });
  const model = modelThrough(steps);
  if (!model) return undefined;
  const band = BANDS[1] as (typeof BANDS)[number];
  const signal = bandSignal(along, ...band);
  const from: AlongRow<'measuring'> = alongRow(first.u - first.pitch);
  const to: AlongRow<'measuring'> = alongRow(last.u + last.pitch);
  const track = phaseTrack(signal, along.from, centre, model, TRACK_SIGMA).map((point) =>
    point.u < from || point.u > to ? { ...point, quality: 0 } : point,
  );
  const count = Math.abs(last.tick - first.tick);
  const pitch = { model, centre, track, band, smoothing: 0, signal, ink: 1, score: 1 } as const;
  return {
    frame,
    pitch: {
      ...pitch,
      from: along.from,
      to: along.to,
      followed: { from, to, pitch: first.pitch, count, leanOff },
    },
  };
}

/** The projective model nearest to the places, and what they are off it as its residual. */
function modelThrough(
  steps: readonly TrackedPhase<'measuring'>[],
): PositionModel<'measuring'> | undefined {
  const straight = fitProjective(steps, { a: 0, b: 0, c: 0 });
  const [first, last] = [steps[0], steps[steps.length - 1]];
  if (!straight || !first || !last) return undefined;
  const count = BENT_TABLE * steps.length;
  const step = (last.t - first.t) / (count - 1);
  const values = new Float32Array(count);
  const off = (at: number) => {
    const { t, phase } = steps[at] as TrackedPhase<'measuring'>;
    return phase - graduationAt(straight, t);
  };
  let at = 0;
  for (let i = 0; i < count; i++) {
    const t = first.t + i * step;
    while (at + 2 < steps.length && (steps[at + 1]?.t as number) < t) at++;
    const [from, to] = [steps[at]?.t as number, steps[at + 1]?.t as number];
    const share = (t - from) / (to - from);
    values[i] = off(at) * (1 - share) + off(at + 1) * share;
  }
  return { ...straight, residual: { from: first.t, step, values } };
}
