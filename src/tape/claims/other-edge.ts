import { toFrame, toImage } from '../frame/frame.ts';
import type { FollowedRow } from '../graduations/followed-row.ts';
import { mmPerUnit } from '../graduations/tape-unit.ts';
import { alongAt, fromCentre, nextAlong } from '../pitch/along.ts';
import { densityAt, distanceAt } from '../pitch/position.ts';
import {
  LEAST_PATTERNS,
  NEAREST_MM,
  OTHER_EDGE_FARTHEST_MM,
  OTHER_EDGE_PARALLEL,
  OTHER_EDGE_SAME_SIZE,
} from './limits.ts';

const TENTH_MM = mmPerUnit.inch / 10;

/**
 * Parts of an inch along the other edge, in millimetres a graduation, by the pattern of its lines:
 * where half inches are as long as inches, sixteenths repeat after eight.
 */
const INCH_PARTS: Readonly<Record<number, readonly number[]>> = {
  8: [mmPerUnit.inch / 8, mmPerUnit.inch / 16],
  10: [TENTH_MM],
  16: [mmPerUnit.inch / 16],
};
const NONE: readonly number[] = [];

/**
 * Whether graduations taken for millimetres must be millimetres: the other edge has the lines of
 * inches, in eighths, tenths or sixteenths, and the 25.4 between the two comes out. Its numbers
 * needn't have been read. Were the graduations tenths of an inch, those lines would be of no unit.
 */
export function millimetresByOtherEdge(row: FollowedRow, others: readonly FollowedRow[]): boolean {
  return others.some((other) =>
    (INCH_PARTS[other.pattern.subdivisions] ?? NONE).some((mm) => isOtherEdge(row, other, 1, mm)),
  );
}

/** Whether graduations taken for millimetres must be tenths of an inch, by the millimetres along the other edge. */
export function tenthsByOtherEdge(row: FollowedRow, others: readonly FollowedRow[]): boolean {
  return others.some(
    (other) => other.pattern.subdivisions === 10 && isOtherEdge(row, other, TENTH_MM, 1),
  );
}

/** Whether the other row is beside this one, and its graduations are `otherMm` if those of this are `mm`. */
function isOtherEdge(
  { frame, pitch }: FollowedRow,
  other: FollowedRow,
  mm: number,
  otherMm: number,
): boolean {
  const { valid, subdivisions } = other.pattern;
  const [from, to] = other.range;
  if (!valid || to - from < LEAST_PATTERNS * subdivisions) return false;
  const t = distanceAt(other.pitch.model, (from + to) / 2);
  const here = alongAt(other.pitch, (from + to) / 2);
  const [u, v] = toFrame(frame, toImage(other.frame, here, 0));
  const [nextU, nextV] = toFrame(frame, toImage(other.frame, nextAlong(here), 0));
  if (Math.abs(nextV - v) > OTHER_EDGE_PARALLEL * Math.abs(nextU - u)) return false;
  const density = Math.abs(densityAt(pitch.model, fromCentre(pitch, u)));
  const away = Math.abs(v) * density * mm;
  if (!(away > NEAREST_MM && away < OTHER_EDGE_FARTHEST_MM)) return false;
  const ratio = density / Math.abs(densityAt(other.pitch.model, t));
  return Math.abs(Math.log((ratio * mm) / otherMm)) < OTHER_EDGE_SAME_SIZE;
}
