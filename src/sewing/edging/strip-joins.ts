import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';

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

/** With more joins than this the search gives up. */
const MOST_JOINS = 1000;

/** Sums of quotients may be this much off, in 1/8000 mm. */
const NOISE = 1e-3;

/**
 * Places to join a strip from pieces of a stock length: midway between neighbouring
 * holes and through none, away from corners and crossings, in as few pieces as can be
 * and as even as the holes allow. Undefined where no such place can be reached.
 * Derived here.
 */
export function joinsOf(input: JoinInput): Joins | undefined {
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
  const nearest = backward(length, stock, places);
  if (!nearest) return undefined;
  let from = 0;
  const joins = nearest.map((least, i) => {
    // What is left divided evenly, as near to it as the pieces allow.
    const wanted = from + (length - from) / (nearest.length + 1 - i);
    const next = places
      .filter(({ at }) => at >= least.at && at - from <= stock + NOISE)
      .reduce((best, place) =>
        Math.abs(place.at - wanted) < Math.abs(best.at - wanted) ? place : best,
      );
    from = next.at;
    return next;
  });
  return {
    at: joins.map(({ at }) => exactLength(at)),
    pieces: joins.length + 1,
    thin: joins.some(({ thin }) => thin),
  };
}

/**
 * From the far end each piece as long as it may be: no plan has fewer. From each of
 * these joins, and from any place after it, as many pieces more reach the far end.
 */
function backward(length: number, stock: number, places: readonly Place[]): Place[] | undefined {
  const joins: Place[] = [];
  let to = length;
  let reached: Place | undefined;
  for (const place of [{ at: 0, thin: false }, ...places].reverse()) {
    if (to - place.at > stock + NOISE) {
      if (!reached || joins.length >= MOST_JOINS) return undefined;
      joins.unshift(reached);
      to = reached.at;
      if (to - place.at > stock + NOISE) return undefined;
    }
    reached = place;
  }
  return joins;
}
