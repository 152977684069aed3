import type { Run } from '../../sewing/run.ts';
import type { Points } from '../record/record.ts';
import { NOTHING, placesOf } from './points.ts';
import { isFixed, leastApart, type MadeMark, placesIn, type Row, runAt } from './row.ts';
import { ranksOf } from './which-mark.ts';

/** How the rest of a row under way is placed. */
export type Way = 'as-begun' | 'spread' | 'asked';

/** What a way is taken from. */
export interface UnderWay {
  asked: Run;
  made: readonly MadeMark[];
  begun: Points | undefined;
}

/** The row under one way; undefined where it would be out of order, too near, or off the end. */
export function rowBy(way: Way, { asked, made, begun }: UnderWay): Row | undefined {
  const places = placesIn(asked);
  if (made.length > places.length || places.length === 0) return undefined;
  const ranks = ranksOf(made, places);
  const ids = new Map(made.map(({ id }, i) => [ranks[i], id]));
  const facts = places.map((_, rank) => ids.get(rank));
  const where =
    way === 'as-begun'
      ? asBegun(asked, made, ranks, begun)
      : way === 'spread'
        ? spread(asked, made, ranks)
        : withMade(places, made, ranks);
  return where && isSensible(where, facts, asked) ? runAt(asked, where, facts) : undefined;
}

function withMade(places: readonly number[], made: readonly MadeMark[], ranks: readonly number[]) {
  const all = [...places];
  made.forEach(({ at }, i) => {
    all[ranks[i] ?? 0] = at;
  });
  return all;
}

/**
 * The places kept when the row was begun, moved by as much as the made mark before is off (where none is:
 * the first), as far as the next mark that must be where it is: a corner's hole stays in its corner.
 */
function asBegun(
  asked: Run,
  made: readonly MadeMark[],
  ranks: readonly number[],
  begun: Points | undefined,
): number[] | undefined {
  const count = asked.marks.length;
  if (begun?.count !== count) return undefined;
  const kept = placesOf(begun);
  const offs = new Map(made.map((mark, i) => [ranks[i], meant(mark) - (kept[ranks[i] ?? 0] ?? 0)]));
  const first = Math.min(...ranks);
  const held = (rank: number) => {
    const mark = asked.marks[rank];
    return mark !== undefined && isFixed(mark) && !offs.has(rank);
  };
  const lastHeld = kept.reduce((last, _, rank) => (rank < first && held(rank) ? rank : last), -1);
  let off = 0;
  const moved = kept.map((at, rank) => {
    if (held(rank)) off = 0;
    else if (rank > lastHeld && rank < first) off = offs.get(first) ?? 0;
    else off = offs.get(rank) ?? off;
    return at + off;
  });
  return withMade(moved, made, ranks);
}

/** Even between what is made, the ends, and marks that must be where they are. */
function spread(asked: Run, made: readonly MadeMark[], ranks: readonly number[]): number[] {
  const last = asked.marks.length - 1;
  const held = new Map<number, number>();
  asked.marks.forEach((mark, rank) => {
    if (rank === 0 || rank === last || isFixed(mark)) held.set(rank, mark.at);
  });
  made.forEach((mark, i) => {
    held.set(ranks[i] ?? 0, meant(mark));
  });
  const points = [...held].sort(([a], [b]) => a - b);
  return withMade(placesOf({ count: last + 1, points }), made, ranks);
}

/**
 * Where a made mark counts as lying for those to come: made as it was shown, at its exact place, or
 * what was rounded for the tape would add up from mark to mark.
 */
function meant({ at, plan, slack }: MadeMark): number {
  return Math.abs(at - plan) <= slack + NOTHING ? plan : at;
}

/** In order, each far enough from the last, and on the run; two made ones are where they are. */
function isSensible(
  places: readonly number[],
  facts: readonly (string | undefined)[],
  asked: Run,
): boolean {
  const least = leastApart(asked);
  return places.every((at, rank) => {
    const made = facts[rank] !== undefined;
    if (!made && (at < -NOTHING || at > asked.length + NOTHING)) return false;
    const bothMade = made && facts[rank - 1] !== undefined;
    return rank === 0 || bothMade || at - (places[rank - 1] ?? 0) >= least - NOTHING;
  });
}
