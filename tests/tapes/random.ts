/** Numbers that look random and are the same for the same seed. */
export interface Random {
  /** From 0 up to, but not including, 1. */
  unit(): number;
  between(low: number, high: number): number;
  /** A whole number from low to high, both included. */
  whole(low: number, high: number): number;
  chance(probability: number): boolean;
  pick<T>(list: readonly T[]): T;
  /** Mean 0, standard deviation about 1. */
  normal(): number;
}

export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const unit = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  return {
    unit,
    between: (low, high) => low + (high - low) * unit(),
    whole: (low, high) => low + Math.floor(unit() * (high - low + 1)),
    chance: (probability) => unit() < probability,
    pick: (list) => {
      const picked = list[Math.floor(unit() * list.length)];
      if (picked === undefined) throw new Error('nothing to pick from');
      return picked;
    },
    // Twelve uniform numbers less 6: no logarithm of zero, and the tails of a real sensor are cut too.
    normal: () => {
      let sum = -6;
      for (let i = 0; i < 12; i++) sum += unit();
      return sum;
    },
  };
}

/** A seed of its own for each name: neighbouring seeds of two kinds must not give like pictures. */
export function seedFor(name: string, seed: number): number {
  let hash = 2166136261 ^ seed;
  for (const letter of name) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 16777619);
  hash = Math.imul(hash ^ (hash >>> 16), 0x45d9f3b);
  return (hash ^ (hash >>> 13) ^ Math.imul(seed, 0x9e3779b1)) >>> 0;
}
