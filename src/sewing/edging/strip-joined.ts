import { exactLength, type Length } from '../../lengths/length.ts';
import { mustBePositiveIfGiven } from '../length-checks.ts';
import type { Problem } from '../problem.ts';
import type { HoleRow, StripInput } from './strip.ts';
import { type Joins, joinsOf } from './strip-joins.ts';
import { alongFor, backOf, stretchOf } from './strip-room.ts';

/** What is wrong with the pieces, and with the places where the strip is crossed. */
export function joinProblems(
  { length, width, fit, corners }: StripInput,
  stock: Length | undefined,
  crossings: readonly Length[],
): Problem[] {
  // The joint that closes a loop is kept from a crossing like any other join.
  const closes = fit === 'loop' && corners.length === 0;
  const least = exactLength(closes ? Math.min(width, length / 2) : 0);
  const most = exactLength(length - least);
  const outside = crossings.find((at) => at < least || at > most);
  return [
    ...mustBePositiveIfGiven('stock', stock),
    ...(outside === undefined
      ? []
      : [{ kind: 'outside' as const, field: 'crossings', given: outside, least, most }]),
  ];
}

/**
 * Where a strip with these rows of holes is joined from pieces: `joinsOf` for holes
 * told along the strip. Where it is bent that is its middle line, and room is as on the
 * innermost row. A corner is left as far as its mitre reaches,
 * and like a crossing by a strip's width at least.
 */
export function stripJoins(
  strip: StripInput,
  rows: readonly HoleRow[],
  stock: Length,
  crossings: readonly Length[],
): Joins | undefined {
  const { length, width, corners, angle } = strip;
  const sides = [0, ...corners];
  const mitre = exactLength(Math.max(width, backOf(width, angle)));
  return joinsOf({
    length,
    stock,
    holes: rows.flatMap(({ runs, across }) =>
      runs.flatMap(({ marks }, side) =>
        marks.map(({ at }) => exactLength((sides[side] ?? 0) + at / stretchOf(strip, across))),
      ),
    ),
    half: alongFor(strip, strip.hole / 2),
    sound: alongFor(strip, 1.5 * strip.hole),
    avoid: [
      ...corners.map((at) => ({ at, clear: mitre })),
      ...crossings.map((at) => ({ at, clear: width })),
    ],
  });
}
