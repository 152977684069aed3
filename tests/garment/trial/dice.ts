/** Chance that is the same for a seed, whatever else is tried: mulberry32, public domain. */
export interface Dice {
  /** From 0 to less than 1. */
  next(): number;
  int(least: number, most: number): number;
  of<One>(list: readonly One[]): One;
  chance(part: number): boolean;
}

export function dice(seed: number): Dice {
  let a = seed >>> 0;
  const next = () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  const int = (least: number, most: number) => least + Math.floor(next() * (most - least + 1));
  return {
    next,
    int,
    of: <One>(list: readonly One[]) => list[int(0, list.length - 1)] as One,
    chance: (part) => next() < part,
  };
}
