import type { Work } from '../record/record.ts';
import { isObject, isPlace } from '../record/sound-values.ts';
import type { Answer } from '../work-out/work-out.ts';
import { type Edit, edit, type Slot } from './slots.ts';
import type { State } from './state.ts';

/** Each rank with the one in its place. */
export type Respaced = readonly (readonly [was: number, is: number])[];

/** A rank of a record: of a work, or of steps that were moved; with where it is kept. */
export interface Ranked {
  slot: Slot;
  rank: number;
}

/**
 * All ranks of works and of moved steps as 1, 2, 3 …: between any two there is room again, and what
 * stood at one place, or before another, still does.
 */
export function respacedRanks({ sound }: Answer): ReadonlyMap<number, number> {
  const all = [...sound.works].flatMap(([id, work]) => ranksOf(id, work));
  const ranks = [...new Set(all.map(({ rank }) => rank))].sort((a, b) => a - b);
  return new Map(ranks.map((rank, i) => [rank, i + 1]));
}

/**
 * The same, also where works have one rank, as after a merge: each of them, with what was moved of it,
 * has a place of its own then, in the order in which they stood.
 */
export function ranksApart({ sound }: Answer): Ranked[] {
  const all = [...sound.works].flatMap(([id, work], turn) =>
    ranksOf(id, work).map((one) => ({ ...one, turn })),
  );
  all.sort((one, other) => one.rank - other.rank || one.turn - other.turn);
  let [place, last] = [0, all[0]];
  return all.map((one) => {
    if (place === 0 || one.rank !== last?.rank || one.turn !== last.turn) place++;
    last = one;
    return { slot: one.slot, rank: place };
  });
}

/** The edits that give every rank the one in its place. */
export function respacing({ record, answer }: State, room: Respaced = []): Edit[] {
  const to = new Map(room);
  return [...answer.sound.works].flatMap(([id, work]) =>
    ranksOf(id, work).flatMap(({ slot, rank }) => {
      const other = to.get(rank);
      return other === undefined || other === rank ? [] : [edit(record, slot, other)];
    }),
  );
}

function ranksOf(id: string, { rank, moved, movedSides }: Work): Ranked[] {
  const slot = ['works', id];
  const sides = isObject(movedSides) ? Object.entries(movedSides) : [];
  return [
    { slot: [...slot, 'rank'], rank },
    ...movedRanks(moved, [...slot, 'moved']),
    ...sides.flatMap(([side, its]) => movedRanks(its, [...slot, 'movedSides', side])),
  ];
}

/** What a record holds may be anyone's: what is no place stands nowhere. */
function movedRanks(moved: unknown, slot: Slot): Ranked[] {
  return (isObject(moved) ? Object.entries(moved) : []).flatMap(([stage, place]) =>
    isObject(place) && isPlace(place.rank)
      ? [{ slot: [...slot, stage, 'rank'], rank: place.rank }]
      : [],
  );
}
