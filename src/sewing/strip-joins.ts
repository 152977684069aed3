import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';

export interface JoinInput {
  /** Of the whole strip. */
  length: Length;
  /** Of the pieces there are to make it from. */
  stock: Length;
  /** Centres of all holes of all rows, from the cut end, in any order. */
  holes: readonly ExactLength[];
  /** Diameter of the punch. */
  hole: Length;
  /** Corners and crossings, where there must be no join. */
  avoid: readonly Length[];
  /** How far from those a join has to be. */
  clear: Length;
}

export interface Joins {
  /** Where pieces meet, in order from the cut end. */
  at: readonly ExactLength[];
  pieces: number;
  /** Some join is nearer to a hole than one hole diameter clear: no better place was left. */
  thin: boolean;
}

/** A join somewhere may cost this many pieces before the search gives up. */
const MOST_PIECES = 1000;

/**
 * Places to join a strip from pieces of a stock length: midway between neighbouring
 * holes, away from corners and crossings, in as few pieces as can be and as even as
 * the holes allow. Undefined where no such place can be reached. Derived here.
 */
export function joinsOf(input: JoinInput): Joins | undefined {
  if (input.length <= input.stock) return { at: [], pieces: 1, thin: false };
  const places = placesFor(input);
  const good = places.filter(({ thin }) => !thin);
  return planned(input, good) ?? planned(input, places);
}

interface Place {
  at: number;
  thin: boolean;
}

function placesFor({ length, holes, hole, avoid, clear }: JoinInput): Place[] {
  const sorted = [...holes].sort((one, other) => one - other);
  const places: Place[] = [];
  for (const [i, at] of sorted.entries()) {
    const next = sorted[i + 1];
    if (next === undefined || next === at) continue;
    const middle = (at + next) / 2;
    if (middle <= 0 || middle >= length) continue;
    if (avoid.some((place) => Math.abs(place - middle) < clear)) continue;
    // Centre to cut: half a hole, and one diameter of leather beyond it.
    places.push({ at: middle, thin: middle - at < 1.5 * hole });
  }
  return places;
}

function planned({ length, stock }: JoinInput, places: readonly Place[]): Joins | undefined {
  const fewest = farthest(length, stock, places);
  if (!fewest) return undefined;
  const pieces = fewest.length + 1;
  const even = evenly(length, pieces, places);
  const chosen = even && longest(length, even) <= stock ? even : fewest;
  return {
    at: chosen.map(({ at }) => exactLength(at)),
    pieces,
    thin: chosen.some(({ thin }) => thin),
  };
}

/** Each piece as long as it may be: no plan has fewer. */
function farthest(length: number, stock: number, places: readonly Place[]): Place[] | undefined {
  const joins: Place[] = [];
  let from = 0;
  while (length - from > stock) {
    const next = places.filter(({ at }) => at > from && at - from <= stock).at(-1);
    if (!next || joins.length >= MOST_PIECES) return undefined;
    joins.push(next);
    from = next.at;
  }
  return joins;
}

function evenly(length: number, pieces: number, places: readonly Place[]): Place[] | undefined {
  const joins: Place[] = [];
  for (let i = 1; i < pieces; i++) {
    const wanted = (length * i) / pieces;
    const before = joins.at(-1)?.at ?? 0;
    const near = places
      .filter(({ at }) => at > before)
      .reduce<Place | undefined>(
        (best, place) =>
          !best || Math.abs(place.at - wanted) < Math.abs(best.at - wanted) ? place : best,
        undefined,
      );
    if (!near) return undefined;
    joins.push(near);
  }
  return joins;
}

function longest(length: number, joins: readonly Place[]): number {
  const cuts = [0, ...joins.map(({ at }) => at), length];
  return Math.max(...cuts.slice(1).map((cut, i) => cut - (cuts[i] as number)));
}
