import type { LacingInput } from './lacing-input.ts';
import { hasTwoStrands } from './lacing-kinds.ts';
import { type Face, type LacePoint, pathOf, type Repeat } from './lacing-repeat.ts';

/** Where the two halves of a row worked from its middle begin: holes, the row's first being 0. */
export interface MiddleStart {
  left: number;
  right: number;
}

/**
 * The start in the middle, where there is one: a lace that goes both ways already has
 * no other start.
 *
 * Through one hole the lace has one end on each face. Running goes on from there as if
 * it had come so; any other lacing begins both its halves on one face, so with a
 * straight run from one hole to the next, of an odd count a half stitch off its middle.
 */
export function middleStart({
  kind,
  holes,
  start,
}: Pick<LacingInput, 'kind' | 'holes' | 'start'>): MiddleStart | undefined {
  if (start !== 'middle' || hasTwoStrands(kind)) return undefined;
  const middle = (holes - 1) / 2;
  if (kind === 'running' && Number.isInteger(middle)) return { left: middle, right: middle };
  const left = Math.floor(middle);
  return { left, right: left + 1 };
}

/** Stitches of each half, to the first hole and to the last. */
export function halfStitches({ left, right }: MiddleStart, holes: number): [number, number] {
  return [left, holes - 1 - right];
}

/** The ways of both halves over so many stitches each, along counted from the row's first hole. */
export function halfPaths(
  repeat: Repeat,
  { left, right }: MiddleStart,
  [toFirst, toLast]: readonly [number, number],
): [LacePoint[], LacePoint[]] {
  const mirrored = left === right ? turned(repeat) : repeat;
  return [moved(pathOf(mirrored, toFirst), left, -1), moved(pathOf(repeat, toLast), right, 1)];
}

/** The ways of a repeat over the whole row: one from its first hole, or two from its middle. */
export function waysOver(
  repeat: Repeat,
  input: Pick<LacingInput, 'kind' | 'holes' | 'start'>,
): LacePoint[][] {
  const start = middleStart(input);
  if (!start) return [pathOf(repeat, input.holes - 1)];
  return halfPaths(repeat, start, halfStitches(start, input.holes));
}

/** The run that joins both halves, on the face they do not begin on; none where they begin in one hole. */
export function joiningPath(
  { points: [first] }: Repeat,
  { left, right }: MiddleStart,
): LacePoint[] {
  if (!first || left === right) return [];
  const face = otherFace(first.face);
  return [left, right].map((along) => ({ along, across: first.across, face }));
}

/** A path from some hole of the row on, or backwards from there. */
export function moved(path: readonly LacePoint[], from: number, way: 1 | -1): LacePoint[] {
  return path.map((point) => ({ ...point, along: from + way * point.along }));
}

export function otherFace(face: Face): Face {
  return face === 'front' ? 'back' : 'front';
}

function turned({ points, advance }: Repeat): Repeat {
  return { points: points.map((point) => ({ ...point, face: otherFace(point.face) })), advance };
}
