/**
 * For each piece the others in an order of its own. It is kept from one time to the next, as little
 * changes between two: to put it right costs hardly more than to go through it.
 */
export interface Ranks {
  /** The others of piece p, from p × (count − 1) on. */
  ranked: Int16Array;
  /** Puts the others of a piece in order, of which each weighs what is said in `heft`. */
  sort(piece: number, heft: Float64Array): void;
}

/** At first in the order they are counted in. */
export function ranksOf(count: number): Ranks {
  const others = count - 1;
  const ranked = new Int16Array(count * others);
  for (let at = 0; at < ranked.length; at++) {
    const piece = Math.floor(at / others);
    const other = at - piece * others;
    ranked[at] = other < piece ? other : other + 1;
  }
  const sort = (piece: number, heft: Float64Array) => {
    const first = piece * others;
    for (let r = 1; r < others; r++) {
      const one = ranked[first + r]!;
      let at = first + r;
      for (; at > first && heft[ranked[at - 1]!]! < heft[one]!; at--) ranked[at] = ranked[at - 1]!;
      ranked[at] = one;
    }
  };
  return { ranked, sort };
}
