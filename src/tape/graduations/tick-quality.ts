import { FLAT, THERE } from './limits.ts';
import type { Sheet } from './sheet.ts';
import type { TickContrast, TickZone } from './tick-contrast.ts';

/** The mean of each column of the sheet over the common zone; NaN where the picture ends. */
export function zoneProfile({ width, values }: Sheet, { from, to }: TickZone): Float64Array {
  const profile = new Float64Array(width);
  for (let x = 0; x < width; x++) {
    let sum = 0;
    let count = 0;
    for (let y = from; y <= to; y++) {
      const value = values[y * width + x] as number;
      if (Number.isNaN(value)) continue;
      sum += value;
      count++;
    }
    profile[x] = sum / count;
  }
  return profile;
}

/**
 * Share of the pitch that is dark at the common zone, 0 to 1. Lines are thin: well below one half
 * if dark is taken for ink rightly, well above if light lines stand on a dark ground.
 */
export function dutyOf(profile: Float64Array, perTick: number, ticks: number): number {
  let dark = 0;
  let all = 0;
  for (let tick = 1; tick < ticks - 1; tick++) {
    const pitch = profile.subarray(tick * perTick, (tick + 1) * perTick);
    const [low, high] = rangeOf(pitch);
    if (pitch.some(Number.isNaN) || high - low < FLAT) continue;
    for (const value of pitch) if (value < (low + high) / 2) dark++;
    all += perTick;
  }
  return all ? dark / all : 0.5;
}

/** Share of the expected graduations that are there, 0 to 1, counted where the row shows any ink at all. */
export function presenceOf(
  profile: Float64Array,
  perTick: number,
  contrast: TickContrast,
  zone: TickZone,
): number {
  let there = 0;
  let all = 0;
  for (let tick = 1; tick < contrast.ticks - 1; tick++) {
    const mean = zoneContrast(contrast, zone, tick);
    const [low, high] = rangeOf(profile.subarray((tick - 0.5) * perTick, (tick + 1.5) * perTick));
    if (Number.isNaN(mean) || high - low < 0.5 * zone.contrast) continue;
    all++;
    if (mean > THERE * zone.contrast) there++;
  }
  return all ? there / all : 0;
}

function zoneContrast({ values, ticks }: TickContrast, zone: TickZone, tick: number): number {
  let sum = 0;
  let count = 0;
  for (let y = zone.from; y <= zone.to; y++) {
    const value = values[y * ticks + tick] as number;
    if (Number.isNaN(value)) continue;
    sum += value;
    count++;
  }
  return sum / count;
}

function rangeOf(values: Float64Array): [low: number, high: number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return [low, high];
}
