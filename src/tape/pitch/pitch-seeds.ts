import type { RowFrame } from '../frame/frame.ts';
import { bandSignal, strip } from '../frame/strip.ts';
import { trendBasis, withoutTrend } from '../numerics/trend.ts';
import type { Field } from '../picture/field.ts';
import { logOf } from '../picture/field.ts';
import { type AlongRow, alongRow } from '../picture/space.ts';
import {
  BAND_REACH,
  DIP,
  DIP_BEFORE_TOP,
  HIGH_PEAK,
  PEAKS,
  PITCH_SEEDS_BLANK,
  PITCH_SEEDS_LEAST_LIKENESS,
  PITCH_SEEDS_TREND_EVERY,
  SAME_PITCH,
  SECOND_SHARE,
  SHIFT_SHARE,
  SUPPORT,
  WINDOWS,
} from './limits.ts';
import { BANDS, type RowPitch } from './pitch-spectrum.ts';
import { followed, type Seed } from './pitch-tracking.ts';

interface LikelySeed extends Seed {
  readonly strength: number;
  /** Px of the window it was found in. */
  readonly window: number;
}

const trends = WINDOWS.map((length) => ({
  length,
  basis: trendBasis(length, PITCH_SEEDS_TREND_EVERY),
}));

/**
 * Pitches found locally and followed outwards, the best supported first: for rows that bend, are
 * covered in part or show only a short stretch. At most `want`.
 *
 * @param likely whether a pitch, in px, is worth following from a place u of the row.
 */
export function pitchSeeds(
  work: Field<'measuring'>,
  frame: RowFrame<'measuring'>,
  want: number,
  likely: (u: AlongRow<'measuring'>, pitch: number) => boolean = () => true,
): RowPitch[] {
  const along = strip(logOf(work), frame, BAND_REACH);
  const found: LikelySeed[] = [];
  for (const band of BANDS) {
    const signal = bandSignal(along, band[0], band[1]);
    for (const { length, basis } of trends) {
      const flat = new Float64Array(length);
      for (let start = 0; start + length <= along.width; start += length >> 1) {
        withoutTrend(signal, start, basis, PITCH_SEEDS_TREND_EVERY, flat);
        const u = alongRow<'measuring'>(along.from + start + length / 2);
        for (const peak of peaksOf(flat)) {
          if (likely(u, peak.pitch)) found.push({ ...peak, u, band, signal, window: length });
        }
      }
    }
  }
  return distinct(ranked(found, along.width), want)
    .map((seed) => followed(seed, along.from))
    .filter((pitch) => pitch !== null);
}

function peaksOf(flat: Float64Array): { pitch: number; strength: number }[] {
  const likeness = selfLikeness(flat);
  if (!likeness) return [];
  const at = (shift: number) => likeness[shift] as number;
  const last = likeness.length - 1;
  const isPeak = (shift: number) => at(shift) > at(shift - 1) && at(shift) >= at(shift + 1);
  let top = 0;
  let low = 1;
  for (let shift = 3; shift < last; shift++) {
    low = Math.min(low, at(shift));
    if (low < DIP_BEFORE_TOP && isPeak(shift)) top = Math.max(top, at(shift));
  }
  const peaks: { pitch: number; strength: number }[] = [];
  if (top < PITCH_SEEDS_LEAST_LIKENESS) return peaks;
  low = 1;
  for (let shift = 3; shift < last && peaks.length < PEAKS; shift++) {
    low = Math.min(low, at(shift));
    if (low >= DIP || !isPeak(shift) || at(shift) <= HIGH_PEAK * top) continue;
    const pitch = shift + vertex(at(shift - 1), at(shift), at(shift + 1));
    const length = Math.sqrt(Math.min(1, flat.length / pitch / 12));
    const share = peaks.length ? SECOND_SHARE : 1;
    peaks.push({ pitch, strength: at(shift) * (at(shift) - low) * length * share });
    low = at(shift);
  }
  return peaks;
}

/** How like the window is to itself shifted by 0, 1, 2, … px: its correlation. Null when blank. */
function selfLikeness(flat: Float64Array): Float32Array | null {
  const length = flat.length;
  const energy = new Float64Array(length + 1);
  for (let i = 0; i < length; i++) energy[i + 1] = (energy[i] as number) + (flat[i] as number) ** 2;
  const whole = energy[length] as number;
  if (!(whole / length >= PITCH_SEEDS_BLANK)) return null;
  const likeness = new Float32Array(Math.floor(length / SHIFT_SHARE) + 1);
  for (let shift = 2; shift < likeness.length; shift++) {
    let product = 0;
    for (let i = shift; i < length; i++)
      product += (flat[i - shift] as number) * (flat[i] as number);
    const before = (energy[length - shift] as number) + 1e-6;
    const after = whole - (energy[shift] as number) + 1e-6;
    likeness[shift] = product / Math.sqrt(before * after);
  }
  likeness[0] = 1;
  likeness[1] = 0.5 * (1 + (likeness[2] as number));
  return likeness;
}

/** Of the parabola through three neighbours: where it peaks, from the middle one. */
function vertex(left: number, middle: number, right: number): number {
  const bend = left - 2 * middle + right;
  return bend < 0 ? (0.5 * (left - right)) / bend : 0;
}

/** By strength and by how many windows of the same band show a like pitch, slowly changing. */
function ranked(found: readonly LikelySeed[], length: number): LikelySeed[] {
  const rank = (seed: LikelySeed) => {
    let support = 0;
    for (const other of found) {
      if (other.band !== seed.band) continue;
      const change = Math.abs(Math.log(other.pitch / seed.pitch));
      const allowed = SUPPORT.least + (SUPPORT.along * Math.abs(other.u - seed.u)) / length;
      if (change < allowed) support += other.strength * (other.window / SUPPORT.window);
    }
    return seed.strength * Math.sqrt(support);
  };
  return found
    .map((seed) => ({ seed, rank: rank(seed) }))
    .sort((one, other) => other.rank - one.rank)
    .map(({ seed }) => seed);
}

function distinct(seeds: readonly LikelySeed[], want: number): LikelySeed[] {
  const kept: LikelySeed[] = [];
  for (const seed of seeds) {
    if (kept.length >= want) break;
    const known = kept.some(({ pitch }) => Math.abs(Math.log(pitch / seed.pitch)) < SAME_PITCH);
    if (!known) kept.push(seed);
  }
  return kept;
}
