import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';

export interface JoinInput {
  /** Of the whole strip. */
  length: Length;
  /** Of the pieces there are to make it from. */
  stock: Length;
  /** Centres of all holes of all rows, along the strip from the cut end, in any order. */
  holes: readonly ExactLength[];
  /** Along the strip, from a hole's centre to where it ends. */
  half: number;
  /** And to where one diameter of leather is left beyond it. */
  sound: number;
  /** Corners and crossings, where there must be no join, and how far from them it has to be. */
  avoid: readonly { at: Length; clear: ExactLength }[];
}

export interface Joins {
  /** Where pieces meet, in order from the cut end. */
  at: readonly ExactLength[];
  pieces: number;
  /** Some join is nearer to a hole than one hole diameter clear: no better place was left. */
  thin: boolean;
}

/** Pieces are evened out to a tenth of a millimetre. */
const LEVEL = 800;
/** A join somewhere may cost this many pieces before the search gives up. */
const MOST_PIECES = 1000;

/** Sums of quotients may be this much off, in 1/8000 mm. */
const NOISE = 1e-3;

/**
 * Places to join a strip from pieces of a stock length: midway between neighbouring
 * holes and through none, away from corners and crossings, in as few pieces as can be
 * and as even as the holes allow. Undefined where no such place can be reached.
 * Derived here.
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

function placesFor({ holes, half, sound, avoid }: JoinInput): Place[] {
  const sorted = [...holes].sort((one, other) => one - other);
  return sorted.slice(1).flatMap((next, i) => {
    const before = sorted[i] as number;
    const at = (before + next) / 2;
    const room = at - before;
    // Holes of two rows at one place, or nearly, leave nothing between them.
    if (room <= half + NOISE) return [];
    if (avoid.some((place) => Math.abs(place.at - at) < place.clear - NOISE)) return [];
    return [{ at, thin: room < sound - NOISE }];
  });
}

function planned({ length, stock }: JoinInput, places: readonly Place[]): Joins | undefined {
  const fewest = farthest(length, stock, places);
  if (!fewest) return undefined;
  const pieces = fewest.length + 1;
  const even = evenly(length, pieces, places);
  const chosen =
    even && longest(length, even) <= stock ? even : levelled(length, stock, places, fewest);
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
  let reached: Place | undefined;
  for (const place of [...places, { at: length, thin: false }]) {
    if (place.at - from > stock + NOISE) {
      if (!reached || joins.length >= MOST_PIECES) return undefined;
      joins.push(reached);
      from = reached.at;
      if (place.at - from > stock + NOISE) return undefined;
    }
    reached = place;
  }
  return joins;
}

/** As many pieces, the longest of them as short as it can be. */
function levelled(
  length: number,
  stock: number,
  places: readonly Place[],
  fewest: readonly Place[],
): readonly Place[] {
  let best = fewest;
  let [short, long] = [length / (fewest.length + 1), stock];
  while (long - short > LEVEL) {
    const tried = (short + long) / 2;
    const plan = farthest(length, tried, places);
    if (plan && plan.length <= fewest.length) {
      best = plan;
      long = tried;
    } else {
      short = tried;
    }
  }
  return best;
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
