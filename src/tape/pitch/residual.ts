import { median } from '../numerics/order.ts';
import type { Space } from '../picture/space.ts';
import {
  FEWEST_NEAR,
  LEAST_QUALITY,
  LEVEL_HAND,
  LONGEST_TABLE,
  MOST_PHASE,
  NINE_IN_TEN,
  NO_SPREAD,
  RESIDUAL_FEWEST,
  SMOOTHING_PITCHES,
  SMOOTHING_REACH,
  STRAIGHT_ENOUGH,
} from './limits.ts';
import { type PositionModel, residualAt, type TrackedPhase } from './position.ts';

/**
 * The model with the smooth part of the tracked phases added to its residual; the same model
 * when the track is too thin, or already straight.
 */
export function withResidual<S extends Space>(
  track: readonly TrackedPhase<S>[],
  model: PositionModel<S>,
): PositionModel<S> {
  const good = track.filter((p) => p.quality > LEAST_QUALITY && Math.abs(p.phase) < MOST_PHASE);
  const first = good[0];
  const last = good[good.length - 1];
  if (!first || !last || good.length < RESIDUAL_FEWEST) return model;
  const sizes = good.map(({ phase }) => Math.abs(phase)).sort((one, other) => one - other);
  if ((sizes[Math.floor(good.length * NINE_IN_TEN)] as number) < STRAIGHT_ENOUGH) return model;
  const count = Math.max(FEWEST_NEAR, Math.min(LONGEST_TABLE, Math.round(good.length / 2)));
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
  let [count, total, first, second, level, slope] = [0, 0, 0, LEVEL_HAND, 0, 0];
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
  if (count < FEWEST_NEAR || spread < NO_SPREAD) return null;
  return (second * level - first * slope) / spread;
}
