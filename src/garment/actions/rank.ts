import { type Ranked, ranksApart } from './respace.ts';
import { at, edit } from './slots.ts';
import { type Done, isThere, refuse, type State, settle } from './state.ts';

/** Another place among all works, or quantities. */
export interface Ranking {
  of: 'works' | 'quantities';
  id: string;
  rank: number;
  /** Of others, and of steps that were moved, that make room for it: only where there was none between two. */
  room?: readonly Ranked[] | undefined;
}

/** Gives a work, or a quantity, another rank: one change, of its own rank alone wherever that will do. */
export function rank(state: State, { of, id, rank: to, room = [] }: Ranking, now: number): Done {
  const own = [of, id, 'rank'];
  const all = [...room, { slot: own, rank: to }];
  if (!all.every(({ slot: [map = '', one = ''] }) => isThere(state, [map, one]))) {
    return refuse(state, { why: 'not there', what: 'work' });
  }
  // A move that was taken back meanwhile has no place to be given another.
  const edits = all
    .filter(({ slot }) => at(state.record, slot) !== undefined)
    .map(({ slot, rank: place }) => edit(state.record, slot, place));
  return settle(state, 'rank', edits, { now });
}

/**
 * The rank that brings a work one place earlier, or later, among those that are on the garment.
 * Undefined where it is the first, or the last.
 */
export function moved(state: State, id: string, by: -1 | 1): Ranking | undefined {
  const works = [...state.answer.sound.works].filter(([, { off }]) => !off);
  const place = works.findIndex(([one]) => one === id);
  const [past, far] = [works[place + by], works[place + 2 * by]];
  if (place < 0 || !past) return undefined;
  const asTheyAre = betweenRanks(past[1].rank, far?.[1].rank, by);
  if (asTheyAre !== undefined) return { of: 'works', id, rank: asTheyAre };
  // Two have the same rank, or there is no number between them: all anew, in the order they stand in.
  const room = ranksApart(state.answer).filter(({ slot }) => !isRankOf(slot, id));
  const anew = (one: string | undefined) => room.find(({ slot }) => isRankOf(slot, one))?.rank;
  const to = betweenRanks(anew(past[0]) ?? past[1].rank, anew(far?.[0]), by);
  return to === undefined ? undefined : { of: 'works', id, rank: to, room };
}

function isRankOf([of, id, what]: Ranked['slot'], work: string | undefined): boolean {
  return of === 'works' && id === work && what === 'rank';
}

/** A rank past a near one, on this side of a far one; undefined where there is no number between them. */
function betweenRanks(near: number, beyond: number | undefined, by: -1 | 1): number | undefined {
  const far = beyond ?? near + by;
  const rank = (near + far) / 2;
  return rank !== near && rank !== far ? rank : undefined;
}
