/**
 * A stream of numbers in [0, 1) that is the same for the same seed, so that a lay can be found
 * again: a 32-bit counter whose bits are mixed (the generator known as mulberry32).
 */
export function seeded(seed: number): () => number {
  let state = (Math.imul(seed, 2654435761) + 1013904223) >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A whole number from 0 to one less than the count. */
export const oneOf = (random: () => number, count: number): number => (random() * count) | 0;

/** About the size of a bell curve's spread round 0 (the method of Box and Muller). */
export const bell = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
