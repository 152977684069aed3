import type { RowFrame } from '../frame/frame.ts';
import type { Field } from '../picture/field.ts';
import type { RowPitch } from '../pitch/pitch-spectrum.ts';
import {
  APART_SHARE,
  APART_TENTHS,
  AS_GOOD,
  COMPARED_LENGTH,
  FOLDS,
  LEAST_FOLD_SCORE,
  LIGHT_FLOOR,
  LONGEST,
  LONGEST_ASKED,
  SEEN,
  TELLING,
  TICK_PATTERN_PER_TICK,
} from './limits.ts';
import { makeSheet, type TickRange } from './sheet.ts';
import {
  foldScore,
  type LongLine,
  longLine,
  modulo,
  rowsBeside,
  type Side,
} from './tick-classes.ts';
import { commonZone, type TickContrast, type TickZone, tickContrast } from './tick-contrast.ts';
import { dutyOf, presenceOf, zoneProfile } from './tick-quality.ts';

/** What the lengths of the graduations tell of a scale. */
export interface TickPattern extends LongLine {
  /** Where lines run beyond the short ones: the side of the numbers, usually. */
  readonly side: Side;
  readonly strength: number;
  /** Lines are as long left as right of the long line, and the half line comes second. */
  readonly symmetric: boolean;
  /** The pattern is that of centimetres, or of eighths or sixteenths of an inch. */
  readonly valid: boolean;
  /** Contrast of the median graduation, in log-grey. */
  readonly contrast: number;
  /** The zone that every graduation crosses, in graduations beside the row. */
  readonly zoneMiddle: number;
  readonly zoneFrom: number;
  readonly zoneTo: number;
  /** Share of the pitch that is dark: below one half unless print is lighter than its ground. */
  readonly duty: number;
  /** Share of the expected graduations that are there. */
  readonly presence: number;
  /** The long line of another fold, for scales whose numbers tell their subdivision. */
  classes(subdivisions: number, side: Side): LongLine;
}

/** Tells the pattern of line lengths in a stretch of graduations; null where there are no lines. */
export function tickPattern(
  work: Field<'measuring'>,
  frame: RowFrame<'measuring'>,
  pitch: RowPitch,
  [from, to]: TickRange,
): TickPattern | null {
  const sheet = makeSheet(
    work,
    frame,
    pitch,
    from - 0.5,
    to + 0.5,
    TICK_PATTERN_PER_TICK,
    -SEEN,
    SEEN,
  );
  const contrast = tickContrast(sheet);
  const zone = commonZone(contrast, SEEN * TICK_PATTERN_PER_TICK);
  if (!zone) return null;
  const profile = zoneProfile(sheet, zone);
  const toAcross = (y: number) => y / TICK_PATTERN_PER_TICK - SEEN;
  return {
    ...bestSide(contrast, zone, from),
    contrast: zone.contrast,
    zoneMiddle: toAcross(zone.middle),
    zoneFrom: toAcross(zone.from),
    zoneTo: toAcross(zone.to),
    duty: dutyOf(profile, TICK_PATTERN_PER_TICK, contrast.ticks),
    presence: presenceOf(profile, TICK_PATTERN_PER_TICK, contrast, zone),
    classes(subdivisions, side) {
      const rows = rowsBeside(contrast, zone, side, LONGEST_ASKED * TICK_PATTERN_PER_TICK);
      return longLine(contrast, zone, from, subdivisions, rows, LIGHT_FLOOR * zone.contrast);
    },
  };
}

type SidePattern = Pick<TickPattern, keyof LongLine | 'side' | 'strength' | 'symmetric' | 'valid'>;

const NO_PATTERN: SidePattern = {
  subdivisions: 0,
  longAt: 0,
  lengths: [],
  margin: 0,
  side: 1,
  strength: -1,
  symmetric: false,
  valid: false,
};

function bestSide(contrast: TickContrast, zone: TickZone, firstTick: number): SidePattern {
  let best = NO_PATTERN;
  for (const side of [1, -1] as const) {
    const found = sidePattern(contrast, zone, firstTick, side);
    if (!found) continue;
    const better = found.valid === best.valid ? found.strength > best.strength : found.valid;
    if (best === NO_PATTERN || better) best = found;
  }
  return best;
}

function sidePattern(
  contrast: TickContrast,
  zone: TickZone,
  firstTick: number,
  side: Side,
): SidePattern | null {
  const rows = rowsBeside(contrast, zone, side, LONGEST * TICK_PATTERN_PER_TICK);
  const scores = FOLDS.filter((fold) => contrast.ticks >= 2 * fold).map(
    (fold) => [fold, foldScore(contrast, zone, firstTick, fold, rows)] as const,
  );
  const top = Math.max(...scores.map(([, score]) => score));
  // Every multiple of the true fold explains as much: the smallest that does is the true one.
  const fold = scores.find(([, score]) => score > AS_GOOD * top)?.[0];
  if (!fold) return null;
  const line = longLine(contrast, zone, firstTick, fold, rows, Number.NEGATIVE_INFINITY);
  const symmetric = isSymmetric(line);
  return {
    ...line,
    side,
    symmetric,
    strength: top * (Math.max(...line.lengths) + 1),
    valid: TELLING.includes(fold) && line.margin >= 2 && top > LEAST_FOLD_SCORE && symmetric,
  };
}

function isSymmetric({ subdivisions, longAt, lengths }: LongLine): boolean {
  const at = (offset: number) => lengths[modulo(longAt + offset, subdivisions)] as number;
  let [apart, sum] = [0, 0];
  for (let offset = 1; offset < subdivisions / 2; offset++) {
    const right = Math.min(COMPARED_LENGTH, at(offset));
    const left = Math.min(COMPARED_LENGTH, at(-offset));
    apart += Math.abs(right - left);
    sum += right + left;
  }
  const halfAt = modulo(longAt + subdivisions / 2, subdivisions);
  const others = lengths.filter((_, index) => index !== longAt && index !== halfAt);
  return (
    (lengths[halfAt] ?? Number.NaN) >= Math.max(...others) &&
    apart <= Math.max(APART_TENTHS, APART_SHARE * sum)
  );
}

/**
 * How far lines can be seen before the digits begin, in tenths of a graduation beyond the common zone.
 *
 * @param across where the middle of the digits runs beside the row, in graduations
 * @param height of the digits, in graduations
 */
export function tenthsBeforeDigits(
  across: number,
  height: number,
  { zoneMiddle, zoneFrom, zoneTo }: Pick<TickPattern, 'zoneMiddle' | 'zoneFrom' | 'zoneTo'>,
): number {
  const gap = across > zoneMiddle ? across - zoneTo : zoneFrom - across;
  return Math.round(10 * (gap - height / 2));
}
