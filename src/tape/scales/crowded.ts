import type { Claim } from '../claims/claim.ts';
import type { FollowedRow } from '../graduations/followed-row.ts';
import { makeSheet, type Sheet } from '../graduations/sheet.ts';
import type { Field } from '../picture/field.ts';
import {
  CLEAR_MM,
  CROWDED_FARTHEST_MM,
  CROWDED_PER_TICK,
  CROWDED_WINDOW_TICKS,
  LEAST_SEEN,
  LEAST_SHARE,
  LEAST_STROKES,
  PAST_TICKS,
  SLAB_MM,
} from './limits.ts';
import { seamsOf } from './seam.ts';

/** A stretch beside a scale's lines, away from its numbers, where strokes of something else stand. */
export interface Crowded {
  /** Graduations. */
  readonly from: number;
  readonly to: number;
  /** Where they begin across the row, in graduations, and to which side they go on. */
  readonly across: number;
  readonly outwards: 1 | -1;
}

/**
 * Looks for strokes beyond the outer end of a scale's lines: those of another length of tape lying
 * close beside this one, or coming out from under it. What is there isn't this scale's to tell.
 */
export function crowdedBeside(work: Field<'measuring'>, row: FollowedRow, claim: Claim): Crowded[] {
  const { frame, pitch, range, pattern } = row;
  const outwards = claim.across > pattern.zoneMiddle ? -1 : 1;
  const end = outwards > 0 ? pattern.zoneTo : pattern.zoneFrom;
  const beyond = (mm: number) => end + (outwards * mm) / claim.mmPerTick;
  const [near, far] = [beyond(CLEAR_MM), beyond(CROWDED_FARTHEST_MM)];
  const [low, high] = [Math.min(near, far), Math.max(near, far)];
  const sheet = makeSheet(work, frame, pitch, range[0], range[1], CROWDED_PER_TICK, low, high);
  const slab = Math.max(1, Math.round((SLAB_MM / claim.mmPerTick) * CROWDED_PER_TICK));
  const least = LEAST_SHARE * pattern.contrast;
  const width = CROWDED_WINDOW_TICKS * CROWDED_PER_TICK;
  const slabs = Math.floor(sheet.height / slab);
  const all = windows(sheet.width, width);
  const slabAt = (i: number) => (outwards > 0 ? i * slab : sheet.height - (i + 1) * slab);
  const found: Crowded[] = seamsOf(work, row, claim).map(({ from, to, across }) => {
    return { from: from - PAST_TICKS, to: to + PAST_TICKS, across, outwards };
  });
  for (const x of all) {
    for (let i = 0; i < slabs; i++) {
      const y = slabAt(i);
      if (strokesIn(sheet, x, width, y, slab, least) < LEAST_STROKES) continue;
      const from = range[0] + x / CROWDED_PER_TICK;
      const to = from + CROWDED_WINDOW_TICKS + PAST_TICKS;
      // Up to the strokes it may be bare tape of that length already.
      found.push({ from: from - PAST_TICKS, to, across: end, outwards });
      break;
    }
  }
  return found;
}

/** Where windows begin that overlap by half, the last one up to the end. */
function windows(length: number, width: number): number[] {
  const starts: number[] = [];
  for (let x = 0; x + width < length; x += width >> 1) starts.push(x);
  return [...starts, Math.max(0, length - width)];
}

/** How often strokes rise and fall in a window of the sheet; 0 where they are no darker than cloth. */
function strokesIn(
  { values, width: stride }: Sheet,
  x: number,
  width: number,
  y: number,
  height: number,
  least: number,
): number {
  const means: number[] = [];
  for (let column = x; column < Math.min(stride, x + width); column++) {
    let mean = 0;
    for (let row = y; row < y + height; row++)
      mean += (values[row * stride + column] as number) / height;
    if (!Number.isNaN(mean)) means.push(mean);
  }
  if (means.length < LEAST_SEEN * width) return 0;
  const flat = withoutSlope(means);
  let [squares, strokes, was] = [0, 0, 0];
  for (const value of flat) {
    squares += value * value;
    const is = Math.abs(value) < least / 2 ? was : Math.sign(value);
    if (is < 0 && was >= 0) strokes++;
    was = is;
  }
  return Math.sqrt(squares / flat.length) > least ? strokes : 0;
}

/** The signal less the straight line through it. */
function withoutSlope(signal: readonly number[]): number[] {
  const middle = (signal.length - 1) / 2;
  let [mean, slope, spread] = [0, 0, 0];
  signal.forEach((value, i) => {
    mean += value / signal.length;
    slope += value * (i - middle);
    spread += (i - middle) ** 2;
  });
  return signal.map((value, i) => value - mean - (slope / spread) * (i - middle));
}
