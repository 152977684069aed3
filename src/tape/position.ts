import { leastSquares, median } from './solve.ts';

/**
 * Which graduation stands at a distance t (px along the row, from the row's centre):
 * k(t) = (a·t + b)/(c·t + 1) + residual(t). A straight tape seen by a pinhole camera has no
 * residual; bends and the lens leave a smooth one.
 */
export interface PositionModel {
  /** Graduations per px at the centre, when b is 0. */
  readonly a: number;
  /** The graduation, whole or not, at the centre. */
  readonly b: number;
  /** Per px: how fast the graduations crowd together away from the camera. */
  readonly c: number;
  readonly residual?: Residual;
}

/** A table of graduations over t, `step` px apart; straight between and level beyond its ends. */
export interface Residual {
  readonly from: number;
  readonly step: number;
  readonly values: Float32Array;
}

/** How far the picture stands from the model at one place of the row. */
export interface TrackedPhase {
  /** Px along the row from its centre. */
  readonly t: number;
  /** Graduations by which the picture is ahead of the model. */
  readonly phase: number;
  /** 1 for a pure tone of the model's frequency, 0 for none; noise gives about 0.2. */
  readonly quality: number;
  /** Px from one graduation to the next here. */
  readonly pitch: number;
}

const FIT_QUALITY = 0.4;
const RESIDUAL_QUALITY = 0.45;
/** Below this many tracked places a fit says more about noise than about the tape. */
const FEWEST = 12;
/** Graduations off the fit at which a place counts half. */
const FIT_OUTLIER = 0.08;
/** The horizon must stay outside the stretch seen: |c·t| < 1 with a margin. */
const MOST_FORESHORTENING = 0.95;
/** When nine places in ten are within this many graduations, the model needs no residual. */
const STRAIGHT_ENOUGH = 0.06;
/** Pitches over which the residual is smoothed: 1 sigma, and where the weight ends. */
const SMOOTHING_PITCHES = 5;
const SMOOTHING_REACH = 4;

function residualAt(model: PositionModel, t: number): number {
  const table = model.residual;
  if (!table) return 0;
  const { values } = table;
  const place = (t - table.from) / table.step;
  const last = values.length - 1;
  if (place <= 0) return values[0] as number;
  if (place >= last) return values[last] as number;
  const index = place | 0;
  const part = place - index;
  return (values[index] as number) * (1 - part) + (values[index + 1] as number) * part;
}

/** The graduation at t px from the row's centre; whole on a line when ink is on the lines. */
export function graduationAt(model: PositionModel, t: number): number {
  return (model.a * t + model.b) / (model.c * t + 1) + residualAt(model, t);
}

const projectiveDensity = (model: PositionModel, t: number) =>
  (model.a - model.b * model.c) / (model.c * t + 1) ** 2;

/** Graduations per px at t. */
export function densityAt(model: PositionModel, t: number): number {
  const smooth = projectiveDensity(model, t);
  if (!model.residual) return smooth;
  const { step } = model.residual;
  return smooth + (residualAt(model, t + step) - residualAt(model, t - step)) / (2 * step);
}

/** Px from the row's centre at which graduation k stands: the inverse of `graduationAt`. */
export function distanceAt(model: PositionModel, k: number): number {
  let t = (k - model.b) / (model.a - model.c * k);
  // The residual is small and smooth: Newton with the projective slope settles in 4 steps.
  if (model.residual) {
    for (let step = 0; step < 4; step++) {
      t -= (graduationAt(model, t) - k) / projectiveDensity(model, t);
    }
  }
  return t;
}

/**
 * The projective model nearest to the phases tracked against `model`: least squares, reweighted
 * so that a slipped place has little say. Null with fewer than 12 good places, a backward scale
 * or a horizon within the stretch.
 */
export function fitProjective(
  track: readonly TrackedPhase[],
  model: PositionModel,
): PositionModel | null {
  const good = track.filter(({ quality }) => quality > FIT_QUALITY);
  if (good.length < FEWEST) return null;
  const scale = good.reduce((most, { t }) => Math.max(most, Math.abs(t)), 1);
  const found = good.map(({ t, phase }) => graduationAt(model, t) + phase);
  // The equation is multiplied through by c·t + 1, so that its weight is given back by the square.
  const given = good.map(({ t, quality }) => quality * quality * (1 + model.c * t) ** 2);
  const rows = good.map(({ t }, i) => {
    const k = found[i] as number;
    return [t / scale, 1, (-t / scale) * k, k, given[i] as number];
  });
  let fit: PositionModel | null = null;
  for (let pass = 0; pass < 4; pass++) {
    const [slope, start, bend] = leastSquares(rows, 3) ?? [];
    if (slope === undefined || start === undefined || bend === undefined) return null;
    fit = { a: slope / scale, b: start, c: bend / scale };
    for (const [i, row] of rows.entries()) {
      const off = (found[i] as number) - graduationAt(fit, (good[i] as TrackedPhase).t);
      row[4] = (given[i] as number) / (1 + (off / FIT_OUTLIER) ** 2);
    }
  }
  if (!fit || !(fit.a > 0) || Math.abs(fit.c) * scale > MOST_FORESHORTENING) return null;
  return fit;
}

/**
 * The model with the smooth part of the tracked phases added to its residual; the same model
 * when the track is too thin, or already straight.
 */
export function withResidual(track: readonly TrackedPhase[], model: PositionModel): PositionModel {
  const good = track.filter((p) => p.quality > RESIDUAL_QUALITY && Math.abs(p.phase) < 3);
  const first = good[0];
  const last = good[good.length - 1];
  if (!first || !last || good.length < FEWEST) return model;
  const sizes = good.map(({ phase }) => Math.abs(phase)).sort((one, other) => one - other);
  if ((sizes[Math.floor(good.length * 0.9)] as number) < STRAIGHT_ENOUGH) return model;
  const count = Math.max(4, Math.min(200, Math.round(good.length / 2)));
  const step = (last.t - first.t) / (count - 1);
  const width = SMOOTHING_PITCHES * median(good.map(({ pitch }) => pitch));
  const targets = good.map(({ t, phase }) => residualAt(model, t) + phase);
  const values = new Float32Array(count);
  for (let i = 0; i < count; i++) {
    values[i] = localLevel(good, targets, first.t + i * step, width) ?? values[i - 1] ?? 0;
  }
  return { ...model, residual: { from: first.t, step, values } };
}

/** A straight line through the targets near t, by weight; its height at t. Null with under 4. */
function localLevel(
  good: readonly TrackedPhase[],
  targets: readonly number[],
  t: number,
  width: number,
): number | null {
  let [count, total, first, second, level, slope] = [0, 0, 0, 0.05, 0, 0];
  for (let i = 0; i < good.length; i++) {
    const place = good[i] as TrackedPhase;
    const x = (place.t - t) / width;
    if (Math.abs(x) >= SMOOTHING_REACH) continue;
    const weight = place.quality * Math.exp(-0.5 * x * x);
    const target = targets[i] as number;
    count++;
    total += weight;
    first += weight * x;
    second += weight * x * x;
    level += weight * target;
    slope += weight * x * target;
  }
  const spread = total * second - first * first;
  if (count < 4 || spread < 1e-12) return null;
  return (second * level - first * slope) / spread;
}
