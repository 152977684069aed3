import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import type { HoleRow, StripHoles, StripInput } from './strip.ts';
import { apart, betweenRows, stretchOf, thirdSide, toCut } from './strip-room.ts';
import { isOutline } from './strip-sides.ts';

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

/** Holes before and after the one in a corner that may be nearest: a side's pitch may be twice the next one's. */
const NEXT_TO_CORNER: readonly (readonly [number, number])[] = [
  [1, 1],
  [1, 2],
  [2, 1],
];

/** The least material between the holes of a strip and round them, hole edge to hole edge. */
export function websOf(input: StripInput, { rows: found }: StripHoles): Web[] {
  const { width, margin, hole } = input;
  const web = (place: WebPlace, clear: number): Web => ({
    place,
    clear: exactLength(clear),
    thin: clear < hole - NOISE,
  });
  const beside = betweenRows(input, found);
  const along = found.flatMap((row) => (row.count > 1 ? neighbours(input, row) : []));
  const ends = found.flatMap(({ across, ends: cut }) =>
    (cut ? [cut.start, cut.end] : []).map((space) =>
      toCut(input, across, space / stretchOf(input, across)),
    ),
  );
  return [
    ...(along.length === 0 ? [] : [web('along', Math.min(...along) - hole)]),
    ...(beside === undefined ? [] : [web('rows', beside - hole)]),
    web('edge', Math.min(margin, width - margin) - hole / 2),
    ...(ends.length === 0 ? [] : [web('end', Math.min(...ends) - hole / 2)]),
  ];
}

/** From hole to hole on a row, straight across: at each pitch, and past the hole in each corner. */
function neighbours(input: StripInput, { pitches, across }: HoleRow): number[] {
  const stretch = stretchOf(input, across);
  const turn = (input.angle * Math.PI) / 180;
  return pitches.flatMap((pitch, side) => {
    // Behind a cut end there is none: so much further on, no hole is nearer than the next one.
    const before = pitches[side - 1] ?? (isOutline(input) ? pitches.at(-1) : undefined) ?? 0;
    return [
      apart(input, [across, across], pitch / stretch),
      ...NEXT_TO_CORNER.map(([back, on]) => thirdSide(back * before, on * pitch, turn)),
    ];
  });
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
