import type { Run } from '../../sewing/run.ts';
import { placesIn, type Row } from './row.ts';

/** The least and the greatest of several spaces, in 1/8000 mm. */
export interface Spaces {
  least: number;
  most: number;
}

/** What a way of placing the rest of a row comes to. Lengths are in 1/8000 mm. */
export interface Price {
  /** How many marks there are in all, and how many of them are still to come. */
  count: number;
  toCome: number;
  /** From mark to mark, where one of the two is still to come; none of one mark, or where all are made. */
  spaces: Spaces | undefined;
  /** From the last mark to the end of the run. */
  lastFromEnd: number;
}

/** The numbers of a row, made or not, for it to be chosen by. */
export function priceOf({ run, made }: Row): Price {
  const places = placesIn(run);
  const isMade = (rank: number) => made[rank] !== undefined;
  return {
    count: places.length,
    toCome: places.filter((_, rank) => !isMade(rank)).length,
    spaces: spacesIn(places, (rank) => !(isMade(rank) && isMade(rank - 1))),
    lastFromEnd: lastFromEnd(run),
  };
}

/** From each mark to the next, of those spaces that are wanted, by the rank of the mark they end at. */
export function spacesIn(
  places: readonly number[],
  wanted: (rank: number) => boolean = () => true,
): Spaces | undefined {
  const all = places.flatMap((at, rank) =>
    rank > 0 && wanted(rank) ? [at - (places[rank - 1] ?? 0)] : [],
  );
  if (all.length === 0) return undefined;
  return {
    least: all.reduce((a, b) => Math.min(a, b)),
    most: all.reduce((a, b) => Math.max(a, b)),
  };
}

/** How far the last mark is from the end of its run. */
export function lastFromEnd(run: Run): number {
  return run.length - (run.marks.at(-1)?.at ?? 0);
}
