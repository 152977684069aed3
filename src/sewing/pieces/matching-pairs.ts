import { type Length, length } from '../../lengths/length.ts';
import { mustBeCount } from '../length-checks.ts';
import type { Problem } from '../problem.ts';

/** Two edges by the lengths between their notches, and what meets. */
export interface Edges {
  here: readonly Length[];
  other: readonly Length[];
  /** The notches, counted from 1, of the edge with more of them that meet none of the other's; nothing where it isn't said. */
  alone: readonly number[];
}

/** For each edge one list. */
export interface OfBoth<What> {
  here: readonly What[];
  other: readonly What[];
}

/** Two edges by the lengths between notches that meet: as many on both, or a whole other one. */
export interface Paired extends OfBoth<Length> {
  /** Which notches of each meet, and which are left over, counted from 1 along their own edge. */
  met: OfBoth<number>;
  left: OfBoth<number>;
}

/** The edge with fewer lengths, where they don't pair: a whole other one is notched to suit. */
export function fewerOf(edges: OfBoth<unknown>): 'here' | 'other' | undefined {
  const [here, other] = [edges.here.length, edges.other.length];
  if (other === 1 || here === other) return undefined;
  return here < other ? 'here' : 'other';
}

/** What is wrong with the notches that are said to meet none. */
export function aloneProblems(edges: Edges): Problem[] {
  const { alone } = edges;
  if (!fewerOf(edges) || alone.length === 0) return [];
  const { most, over } = notchesOver(edges);
  const one = alone.flatMap((notch) => mustBeCount('alone', notch, 1, most)).slice(0, 1);
  const given = new Set(alone).size;
  if (one.length > 0 || given === over) return one;
  return [{ kind: 'not-as-many', field: 'alone', given, needed: over }];
}

/** The lengths that pair; undefined where they don't and it isn't said, or not rightly, which notches meet none. */
export function pairedOf(edges: Edges): Paired | undefined {
  const { here, other, alone } = edges;
  const fewer = fewerOf(edges);
  if (!fewer) {
    const met = notchesOf(here.length);
    return { here, other, met: { here: met, other: met }, left: { here: [], other: [] } };
  }
  if (alone.length === 0 || aloneProblems(edges).length > 0) return undefined;
  const left = [...new Set(alone)].sort((one, next) => one - next);
  const met = { here: notchesOf(here.length), other: notchesOf(other.length) };
  const meets = (notch: number) => !left.includes(notch);
  return fewer === 'other'
    ? {
        here: joined(here, left),
        other,
        met: { ...met, here: met.here.filter(meets) },
        left: { here: left, other: [] },
      }
    : {
        here,
        other: joined(other, left),
        met: { ...met, other: met.other.filter(meets) },
        left: { here: [], other: left },
      };
}

/**
 * Every way to leave out as many notches as one edge has over, the one first whose notches lie most nearly at
 * the same part of both edges: derived here, a guess to be asked about and never taken unasked.
 */
export function waysToPair(edges: Edges): (Paired & { alone: readonly number[] })[] {
  if (!fewerOf(edges)) return [];
  const { most, over } = notchesOver(edges);
  return choices(notchesOf(most + 1), over)
    .flatMap((alone) => {
      const paired = pairedOf({ ...edges, alone });
      return paired ? [{ ...paired, alone }] : [];
    })
    .map((way) => ({ way, apart: apartIn(way) }))
    .sort((one, next) => one.apart - next.apart)
    .map(({ way }) => way);
}

/** How many notches the edge with more has, and how many of them are over. */
function notchesOver({ here, other }: Edges): { most: number; over: number } {
  return {
    most: Math.max(here.length, other.length) - 1,
    over: Math.abs(here.length - other.length),
  };
}

/** The notches between so many lengths. */
function notchesOf(lengths: number): number[] {
  return Array.from({ length: Math.max(0, lengths - 1) }, (_, i) => i + 1);
}

/** An edge's lengths with those joined between which a notch is left out. */
function joined(lengths: readonly Length[], left: readonly number[]): Length[] {
  const all: Length[] = [];
  lengths.forEach((one, i) => {
    const before = left.includes(i) ? all.pop() : undefined;
    all.push(length(one + (before ?? 0)));
  });
  return all;
}

/** All ways to take so many of them, in order. */
function choices(of: readonly number[], take: number): number[][] {
  if (take === 0) return [[]];
  return of.flatMap((first, i) =>
    choices(of.slice(i + 1), take - 1).map((more) => [first, ...more]),
  );
}

/** How far apart notches that meet lie, in parts of their edges, all together. */
function apartIn({ here, other }: OfBoth<Length>): number {
  const [one, more] = [partsOf(here), partsOf(other)];
  return one.reduce((sum, at, i) => sum + Math.abs(at - (more[i] ?? at)), 0);
}

/** Where each length ends, in parts of the whole. */
function partsOf(lengths: readonly Length[]): number[] {
  const whole = lengths.reduce<number>((sum, one) => sum + one, 0);
  let at = 0;
  return lengths.map((one) => {
    at += one;
    return at / whole;
  });
}
