import type { RowFrame } from '../frame/frame.ts';
import { bandSignal, type Strip, strip } from '../frame/strip.ts';
import { mmPerUnit, type TapeUnit } from '../graduations/tape-unit.ts';
import { fieldOf, logOf } from '../picture/field.ts';
import type { GreyImage } from '../picture/grey-image.ts';
import { type AlongRow, alongRow, type FromCentre } from '../picture/space.ts';
import { type PhasePoint, phaseTrack } from '../pitch/phase.ts';
import { fitProjective, graduationAt, type PositionModel } from '../pitch/position.ts';
import { withResidual } from '../pitch/residual.ts';
import {
  APART,
  BANDS_MM,
  FARTHEST_BAND_PX,
  FEWEST_LINES,
  FOLLOWED_QUALITY,
  LEAST_BAND_PX,
  LEAST_HALF_PX,
  LEAST_LEAN_DOUBT,
  LEAST_PITCH_PX,
  MOST_MISSED,
  ROUNDS,
  TOUCH_AGREES_TICKS,
  WINDOW,
} from './limits.ts';
import { type Along, type SpreadModel, worseThan } from './touch-fit.ts';

/** A scale followed from line to line between the touches. */
export interface FollowedLines extends SpreadModel {
  readonly mmPerTick: number;
  /** How far the lines lean from square, in px along for each px across, if that could be seen. */
  readonly lean?: Lean;
}

/** As `RowFrame` has it; `doubt` is 1 sigma. */
export interface Lean {
  readonly shear: number;
  readonly shearRate: number;
  readonly doubt: number;
}

/** Touched lines are counted from where their frame begins. */
const CENTRE = alongRow<'picture'>(0);

/** Distances between lines of printed scales, in mm. */
const LINE_STEPS: Readonly<Record<TapeUnit, readonly number[]>> = {
  cm: [1, 0.5, 5],
  mm: [1, 0.5, 5],
  inch: [16, 8, 32, 10, 4].map((parts) => mmPerUnit.inch / parts),
};

/** The lines of the scale nearest to the touches, followed through the picture; undefined when they can't be. */
export function followedLines(
  image: GreyImage,
  frame: RowFrame<'picture'>,
  along: readonly Along[],
  plain: PositionModel<'picture'>,
  unit: TapeUnit,
): FollowedLines | undefined {
  const bands = BANDS_MM.map(([low, high]) => bandPx(low / plain.a, high / plain.a));
  const reach = Math.max(...bands.flat().map(Math.abs)) + 1;
  const pixels = strip(logOf(fieldOf(image)), frame, reach);
  let best: { found: Tracked; quality: number; band: readonly [number, number] } | undefined;
  for (const band of bands) {
    const dark = bandSignal(pixels, ...band);
    for (const ink of [1, -1]) {
      const signal = ink === 1 ? dark : dark.map((value) => -value);
      for (const mmPerTick of LINE_STEPS[unit]) {
        const found = followAt(signal, pixels.from, along, plain, mmPerTick);
        if (found && found.quality > (best?.quality ?? FOLLOWED_QUALITY)) {
          best = { found, quality: found.quality, band };
        }
      }
    }
  }
  if (!best) return undefined;
  const lean = leanOf(pixels, best.band, along, best.found.model);
  return { ...best.found, ...(lean ? { lean } : {}) };
}

type Tracked = FollowedLines & { readonly quality: number };

function bandPx(low: number, high: number): [number, number] {
  const limited = (px: number) => Math.max(-FARTHEST_BAND_PX, Math.min(FARTHEST_BAND_PX, px));
  const from = Math.round(limited(low));
  return [from, Math.max(from + LEAST_BAND_PX, Math.round(limited(high)))];
}

function followAt(
  signal: Float32Array,
  from: AlongRow<'picture'>,
  along: readonly Along[],
  plain: PositionModel<'picture'>,
  mmPerTick: number,
): Tracked | undefined {
  const first = along[0] as Along;
  const last = along[along.length - 1] as Along;
  const pitch = (mmPerTick * (last.t - first.t)) / (last.mm - first.mm);
  if (pitch < LEAST_PITCH_PX || (last.t - first.t) / pitch < FEWEST_LINES) return undefined;
  let model: PositionModel<'picture'> = {
    a: plain.a / mmPerTick,
    b: plain.b / mmPerTick,
    c: plain.c,
  };
  let track: PhasePoint<'picture'>[] = [];
  for (let pass = 0; pass < ROUNDS; pass++) {
    track = between(phaseTrack(signal, from, CENTRE, model, WINDOW), along, pitch);
    const bent = fitProjective(track, model);
    if (!bent) return undefined;
    model = bent;
  }
  const bent = rootMeanSquare(track);
  // A lens bends the scale more than a plane seen aslant does: the lines between tell how.
  model = withResidual(track, model);
  track = between(phaseTrack(signal, from, CENTRE, model, WINDOW), along, pitch);
  const weights = along.map(({ spread }) => 1 / spread ** 2);
  const weight = sum(weights);
  const away = along.map(({ t, mm }) => graduationAt(model, t) - mm / mmPerTick);
  // The phase tells a line only from its neighbours, and beside the touched places lines may
  // slant: which line it is, and where on it, the touches tell.
  const shift = sum(away.map((ticks, i) => ticks * (weights[i] as number))) / weight;
  model = { ...model, a: model.a - shift * model.c, b: model.b - shift };
  const off = away.map((ticks) => ticks - shift);
  const agrees = off.every((ticks, i) => {
    const missed = (MOST_MISSED * (along[i] as Along).spread) / pitch;
    return Math.abs(ticks) < Math.max(TOUCH_AGREES_TICKS, missed);
  });
  if (!agrees) return undefined;
  const quality = sum(track.map((point) => point.quality)) / track.length;
  const scatter = rootMeanSquare(track);
  const misses = off.map((ticks, i) => (ticks * pitch) / (along[i] as Along).spread);
  const worse = worseThan(misses, along.length - 1);
  const level = worse / Math.sqrt(weight) / pitch;
  const middle = (first.t + last.t) / 2;
  const spreadAt = (t: FromCentre<'picture'>) => {
    return Math.hypot(level, scatter, bent * beyond((2 * (t - middle)) / (last.t - first.t)));
  };
  return { model, mmPerTick, quality, spreadAt };
}

/**
 * How a scale goes on past the touches at −1 and 1, in its scatter between them, if that is
 * Legendre's cubic, as a lens makes it: of mean square 1/7, and 2 sigma of what is there.
 */
function beyond(z: number): number {
  const most = Math.max(1, Math.abs(z));
  return (Math.sqrt(7) * (2.5 * most ** 3 - 1.5 * most - 1)) / 2;
}

function rootMeanSquare(track: readonly PhasePoint[]): number {
  return Math.sqrt(sum(track.map(({ phase }) => phase * phase)) / track.length);
}

function between(track: readonly PhasePoint<'picture'>[], along: readonly Along[], pitch: number) {
  const low = (along[0] as Along).t - pitch;
  const high = (along[along.length - 1] as Along).t + pitch;
  return track.filter(({ t }) => t > low && t < high);
}

/** How the lines lean, from where they cross the two halves of a band. */
function leanOf(
  pixels: Strip<'picture'>,
  [low, high]: readonly [number, number],
  along: readonly Along[],
  model: PositionModel<'picture'>,
): Lean | undefined {
  const cut = Math.floor((low + high) / 2);
  const apart = (high - low + 1) / 2;
  if (apart < LEAST_HALF_PX) return undefined;
  const tracks = [bandSignal(pixels, low, cut), bandSignal(pixels, cut + 1, high)].map((signal) =>
    between(phaseTrack(signal, pixels.from, CENTRE, model, WINDOW), along, 0),
  );
  const [near, far] = tracks as [PhasePoint<'picture'>[], PhasePoint<'picture'>[]];
  const seen = near.flatMap(({ t, phase, quality, pitch }, i) => {
    const other = far[i];
    if (!other || Math.min(quality, other.quality) < FOLLOWED_QUALITY) return [];
    const ticks = other.phase - phase;
    return [{ t, lean: (-(ticks - Math.round(ticks)) * pitch) / apart }];
  });
  return seen.length < near.length / 2 ? undefined : lineThrough(seen);
}

function lineThrough(seen: readonly { readonly t: number; readonly lean: number }[]) {
  const middle = sum(seen.map(({ t }) => t)) / seen.length;
  const level = sum(seen.map(({ lean }) => lean)) / seen.length;
  const wide = sum(seen.map(({ t }) => (t - middle) ** 2));
  const shearRate = sum(seen.map(({ t, lean }) => (t - middle) * (lean - level))) / wide;
  const shear = level - shearRate * middle;
  const misses = seen.map(({ t, lean }) => lean - shear - shearRate * t);
  const scatter = Math.hypot(...misses) / Math.sqrt(seen.length);
  const places = Math.max(1, seen.length / APART);
  return {
    shear,
    shearRate,
    doubt: Math.hypot(LEAST_LEAN_DOUBT, (2 * scatter) / Math.sqrt(places)),
  };
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
