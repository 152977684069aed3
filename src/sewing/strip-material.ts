import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import type { StripInput } from './strip.ts';
import type { StripHoles } from './strip-holes.ts';

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

/** The least material between the holes of a strip and round them, hole edge to hole edge. */
export function websOf(input: StripInput, holes: StripHoles): Web[] {
  const { margin, hole, rows } = input;
  const pitch = leastPitch(holes);
  const web = (place: WebPlace, clear: number): Web => ({
    place,
    clear: exactLength(clear),
    thin: clear < hole - NOISE,
  });
  return [
    ...(pitch === undefined ? [] : [web('along', pitch - hole)]),
    ...(rows === 'one' ? [] : [web('rows', betweenRows(input, pitch ?? 0) - hole)]),
    web('edge', margin - hole / 2),
    ...(holes.ends ? [web('end', Math.min(holes.ends.start, holes.ends.end) - hole / 2)] : []),
  ];
}

/** The least pitch of any row; undefined where there are only single holes. */
function leastPitch({ rows }: StripHoles): number | undefined {
  const pitches = rows.flatMap(({ count, pitches: own }) => (count > 1 ? own : []));
  return pitches.length === 0 ? undefined : Math.min(...pitches);
}

function betweenRows({ width, margin, rows, corners }: StripInput, pitch: number): number {
  const apart = width - 2 * margin;
  // Along corners each row is filled by itself: anywhere two holes may stand side by side.
  return rows === 'staggered' && corners.length === 0 ? Math.hypot(pitch / 2, apart) : apart;
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
    count: sides.reduce((sum, count) => sum + Math.ceil((count - 1) / (teeth - 1)), 0),
    off: exactLength(off),
    fits: off <= (input.hole as Length) / 4,
  };
}
