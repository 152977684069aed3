import { leastSquares } from '../numerics/solve.ts';
import { centred, type FromCentre, type In, type Space } from '../picture/space.ts';
import {
  FIT_OUTLIER,
  FIT_QUALITY,
  LEAST_SLOPE,
  MOST_FORESHORTENING,
  POSITION_FEWEST,
} from './limits.ts';

/**
 * Which graduation stands at a distance t (px along the row, from the row's centre):
 * k(t) = (a·t + b)/(c·t + 1) + residual(t). A straight tape seen by a pinhole camera has no
 * residual; bends and the lens leave a smooth one. One of px of one space is none of another's.
 */
export interface PositionModel<S extends Space = Space> extends In<S> {
  /** Graduations per px at the centre, when b is 0. */
  readonly a: number;
  /** The graduation, whole or not, at the centre. */
  readonly b: number;
  /** Per px: how fast the graduations converge away from the camera. */
  readonly c: number;
  readonly residual?: Residual;
}

/** A table of graduations over a place, `step` apart; straight between and level beyond its ends. */
export interface Residual {
  readonly from: number;
  readonly step: number;
  readonly values: Float32Array;
}

/** How far the picture stands from the model at one place of the row. */
export interface TrackedPhase<S extends Space = Space> {
  readonly t: FromCentre<S>;
  /** Graduations by which the picture is ahead of the model. */
  readonly phase: number;
  /** 1 for a pure tone of the model's frequency, 0 for none; noise gives about 0.2. */
  readonly quality: number;
  /** Px from one graduation to the next here. */
  readonly pitch: number;
}

/** Graduations that the residual adds at t: 0 without one. */
export function residualAt<S extends Space>(
  model: PositionModel<S>,
  t: FromCentre<NoInfer<S>>,
): number {
  return model.residual ? tableAt(model.residual, t) : 0;
}

/** The value of a table at a place. */
export function tableAt({ from, step, values }: Residual, at: number): number {
  const place = (at - from) / step;
  const last = values.length - 1;
  if (place <= 0) return values[0] as number;
  if (place >= last) return values[last] as number;
  const index = place | 0;
  const part = place - index;
  return (values[index] as number) * (1 - part) + (values[index + 1] as number) * part;
}

/** The graduation at t px from the row's centre; whole on a line when ink is on the lines. */
export function graduationAt<S extends Space>(
  model: PositionModel<S>,
  t: FromCentre<NoInfer<S>>,
): number {
  return (model.a * t + model.b) / (model.c * t + 1) + residualAt(model, t);
}

const projectiveDensity = (model: PositionModel, t: number) =>
  (model.a - model.b * model.c) / (model.c * t + 1) ** 2;

/** Graduations per px at t. */
export function densityAt<S extends Space>(
  model: PositionModel<S>,
  t: FromCentre<NoInfer<S>>,
): number {
  const smooth = projectiveDensity(model, t);
  if (!model.residual) return smooth;
  const { step } = model.residual;
  return (
    smooth +
    (residualAt(model, centred(t + step)) - residualAt(model, centred(t - step))) / (2 * step)
  );
}

/** Px from the row's centre at which graduation k stands: the inverse of `graduationAt`. */
export function distanceAt<S extends Space>(model: PositionModel<S>, k: number): FromCentre<S> {
  let t = centred<S>((k - model.b) / (model.a - model.c * k));
  // The residual is smooth: Newton settles in 4 steps, with the slope that it has where the tape bends much.
  if (model.residual) {
    for (let step = 0; step < 4; step++) {
      const slope = Math.max(densityAt(model, t), LEAST_SLOPE * projectiveDensity(model, t));
      t = centred(t - (graduationAt(model, t) - k) / slope);
    }
  }
  return t;
}

/**
 * The projective model nearest to the phases tracked against `model`: least squares, reweighted
 * so that a slipped place has little say. Null with fewer than 12 good places, a backward scale
 * or a horizon within the stretch.
 */
export function fitProjective<S extends Space>(
  track: readonly TrackedPhase<S>[],
  model: PositionModel<S>,
): PositionModel<S> | null {
  const good = track.filter(({ quality }) => quality > FIT_QUALITY);
  if (good.length < POSITION_FEWEST) return null;
  const scale = good.reduce((most, { t }) => Math.max(most, Math.abs(t)), 1);
  const found = good.map(({ t, phase }) => graduationAt(model, t) + phase);
  // The equation is multiplied through by c·t + 1, so that its weight is given back by the square.
  const given = good.map(({ t, quality }) => quality * quality * (1 + model.c * t) ** 2);
  const rows = good.map(({ t }, i) => {
    const k = found[i] as number;
    return [t / scale, 1, (-t / scale) * k, k, given[i] as number];
  });
  let fit: PositionModel<S> | null = null;
  for (let pass = 0; pass < 4; pass++) {
    const [slope, start, bend] = leastSquares(rows, 3) ?? [];
    if (slope === undefined || start === undefined || bend === undefined) return null;
    fit = { a: slope / scale, b: start, c: bend / scale };
    for (const [i, row] of rows.entries()) {
      const off = (found[i] as number) - graduationAt(fit, (good[i] as TrackedPhase<S>).t);
      row[4] = (given[i] as number) / (1 + (off / FIT_OUTLIER) ** 2);
    }
  }
  if (!fit || !(fit.a > 0) || Math.abs(fit.c) * scale > MOST_FORESHORTENING) return null;
  return fit;
}
