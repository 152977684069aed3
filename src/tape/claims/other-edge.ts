import { toFrame, toImage } from '../frame/frame.ts';
import type { FollowedRow } from '../graduations/followed-row.ts';
import { mmPerUnit } from '../graduations/tape-unit.ts';
import { densityAt, distanceAt } from '../pitch/position.ts';

/** Parts of an inch along the other edge, in millimetres a graduation, by the pattern of its lines. */
const TENTH_MM = mmPerUnit.inch / 10;
const INCH_PARTS: Readonly<Record<number, number>> = {
  8: mmPerUnit.inch / 8,
  10: TENTH_MM,
  16: mmPerUnit.inch / 16,
};
/** Two edges of one tape show a millimetre equally large, up to this share when it is seen at a slant. */
const SAME_SIZE = 0.06;
/** Nearer than this the lines are the row's own; farther they are on another tape, mm. */
const NEAREST_MM = 7;
const FARTHEST_MM = 45;
const PARALLEL = 0.08;
/** A pattern of lines is believed when it was seen so many times over. */
const LEAST_PATTERNS = 2;

/**
 * Whether graduations taken for millimetres must be millimetres: the other edge has the lines of
 * inches, in eighths, tenths or sixteenths, and the 25.4 between the two comes out. Its numbers
 * needn't have been read. Were the graduations tenths of an inch, those lines would be of no unit.
 */
export function millimetresByOtherEdge(row: FollowedRow, others: readonly FollowedRow[]): boolean {
  return others.some((other) => isOtherEdge(row, other, 1, INCH_PARTS[other.pattern.subdivisions]));
}

/** Whether graduations taken for millimetres must be tenths of an inch, by the millimetres along the other edge. */
export function tenthsByOtherEdge(row: FollowedRow, others: readonly FollowedRow[]): boolean {
  return others.some((other) =>
    isOtherEdge(row, other, TENTH_MM, other.pattern.subdivisions === 10 ? 1 : undefined),
  );
}

/** Whether the other row is beside this one, and its graduations are `otherMm` if those of this are `mm`. */
function isOtherEdge(
  { frame, pitch }: FollowedRow,
  other: FollowedRow,
  mm: number,
  otherMm: number | undefined,
): boolean {
  const { valid, subdivisions } = other.pattern;
  const [from, to] = other.range;
  if (!valid || otherMm === undefined || to - from < LEAST_PATTERNS * subdivisions) return false;
  const t = distanceAt(other.pitch.model, (from + to) / 2);
  const at = toImage(other.frame, t + other.pitch.centre, 0);
  const next = toImage(other.frame, t + other.pitch.centre + 1, 0);
  const [u, v] = toFrame(frame, at[0], at[1]);
  const [nextU, nextV] = toFrame(frame, next[0], next[1]);
  if (Math.abs(nextV - v) > PARALLEL * Math.abs(nextU - u)) return false;
  const density = Math.abs(densityAt(pitch.model, u - pitch.centre));
  const away = Math.abs(v) * density * mm;
  if (!(away > NEAREST_MM && away < FARTHEST_MM)) return false;
  const ratio = density / Math.abs(densityAt(other.pitch.model, t));
  return Math.abs(Math.log((ratio * mm) / otherMm)) < SAME_SIZE;
}
