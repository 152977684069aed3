import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import type { HoleRow, StripInput } from './strip.ts';
import type { StripHoles } from './strip-holes.ts';
import { apart, stretchOf, toCut } from './strip-room.ts';

/** Where material is left between holes, or between a hole and an edge. */
export type WebPlace = 'along' | 'rows' | 'edge' | 'end';

/** The least material left somewhere, clear of the holes. */
export interface Web {
  place: WebPlace;
  clear: ExactLength;
  /** Less than one hole diameter: it may tear. Common practice, no source. */
  thin: boolean;
}

/** A quotient may be this much short of a diameter and still be one, in 1/8000 mm. */
const NOISE = 1e-3;

/** Holes before and after the one in a corner that may be nearest: one side's pitch may be twice the other's. */
const NEXT_TO_CORNER: readonly (readonly [number, number])[] = [
  [1, 1],
  [1, 2],
  [2, 1],
];

/** The least material between the holes of a strip and round them, hole edge to hole edge. */
export function websOf(input: StripInput, { rows: found }: StripHoles): Web[] {
  const { width, margin, hole, rows } = input;
  const web = (place: WebPlace, clear: number): Web => ({
    place,
    clear: exactLength(clear),
    thin: clear < hole - NOISE,
  });
  const along = found.flatMap((row) => (row.count > 1 ? neighbours(input, row) : []));
  const ends = found.flatMap(({ across, ends: { start, end } }) =>
    [start, end].map((space) => toCut(input, across, space / stretchOf(input, across))),
  );
  return [
    ...(along.length === 0 ? [] : [web('along', Math.min(...along) - hole)]),
    ...(found.length < 2 ? [] : [web('rows', betweenRows(input, found) - hole)]),
    web('edge', (rows === 'one' ? Math.min(margin, width - margin) : margin) - hole / 2),
    web('end', Math.min(...ends) - hole / 2),
  ];
}

/** From hole to hole on a row, straight across: at each pitch, and past the hole in each corner. */
function neighbours(input: StripInput, { pitches, across, runs }: HoleRow): number[] {
  const stretch = stretchOf(input, across);
  const cos = Math.cos((input.angle * Math.PI) / 180);
  const along = pitches.map((pitch) => apart(input, [across, across], pitch / stretch));
  const spaces = runs.map(({ marks }) => marks.length - 1);
  const past = pitches.slice(1).flatMap((pitch, side) =>
    NEXT_TO_CORNER.flatMap(([before, after]) => {
      if (before > (spaces[side] ?? 0) || after > (spaces[side + 1] ?? 0)) return [];
      const [one, other] = [before * (pitches[side] ?? 0), after * pitch];
      return [Math.sqrt(one ** 2 + other ** 2 - 2 * one * other * cos)];
    }),
  );
  return [...along, ...past];
}

function betweenRows(input: StripInput, [row]: readonly HoleRow[]): number {
  const { width, margin, rows, corners } = input;
  const [one, other] = [margin, width - margin];
  // Along corners each row is filled by itself: anywhere two holes may stand side by side.
  if (!row || rows === 'level' || corners.length > 0) return other - one;
  const pitch = (row.pitches[0] ?? 0) / stretchOf(input, row.across);
  return apart(input, [one, other], pitch / 2);
}

/** A row punched with an iron of several teeth. */
export interface Strikes {
  /** For all rows together. */
  count: number;
  /** The iron's teeth stand at the wanted pitch: over its length it would be this far out. */
  off: ExactLength;
  /** So far out that holes would be seen not to meet: more than a quarter of one. Ours, no source. */
  fits: boolean;
}

/**
 * Strikes of an iron with k teeth, its first tooth set in the last hole made:
 * ⌈(n − 1)/(k − 1)⌉ for a row of n holes. That a tooth is set in the last hole:
 * blog.leathercraftlibrary.com (2015/12/08) and e-scoutcraft.com/leather/lacing.html.
 *
 * @param teeth at least 2
 */
export function strikesOf(input: StripInput, holes: StripHoles, teeth: number): Strikes {
  if (!(Number.isInteger(teeth) && teeth >= 2)) {
    throw new RangeError(`an iron has at least 2 teeth, not ${teeth}`);
  }
  const sides = holes.rows.flatMap(({ runs }) => runs.map(({ marks }) => marks.length));
  const pitches = holes.rows.flatMap((row) => row.pitches);
  const off = Math.max(...pitches.map((pitch) => Math.abs(pitch - input.pitch))) * (teeth - 1);
  return {
    // A single hole is a strike as well.
    count: sides.reduce((sum, count) => sum + Math.max(1, Math.ceil((count - 1) / (teeth - 1))), 0),
    off: exactLength(off),
    fits: off <= (input.hole as Length) / 4,
  };
}
