import type { MadeMark } from './row.ts';

/** Between two made marks, or before the first and after the last: where new marks may go. */
interface Space {
  width: number;
  /** Something was still to come there. */
  open: boolean;
  /** It ends where no mark is. */
  atEnd: boolean;
  put: number;
}

/**
 * Which mark of a row each made one is. While the count is the same, the one it was. Else new
 * marks go only where something was still to come, each into the widest space there; never
 * between two that were made as neighbours, unless all were.
 *
 * @param places where the marks are asked, at least one
 */
export function ranksOf(made: readonly MadeMark[], places: readonly number[]): number[] {
  const count = places.length;
  if (keepRanks(made, count)) return made.map(({ rank }) => rank);
  const spaces = spacesOf(made, places);
  if (!spaces.some(({ open }) => open)) {
    for (const space of spaces) space.open = !space.atEnd || made.length === 1;
  }
  for (let more = count - made.length; more > 0; more--) widest(spaces).put += 1;
  let before = 0;
  return made.map((_, i) => {
    before += spaces[i]?.put ?? 0;
    return i + before;
  });
}

function keepRanks(made: readonly MadeMark[], count: number): boolean {
  return made.every(({ of, rank }, i) => of === count && rank > (made[i - 1]?.rank ?? -1));
}

function spacesOf(made: readonly MadeMark[], places: readonly number[]): Space[] {
  const between = made.slice(1).map((mark, i): Space => {
    const before = made[i] as MadeMark;
    const open = mark.rank !== before.rank + 1 || mark.of !== before.of;
    return { width: mark.at - before.at, open, atEnd: false, put: 0 };
  });
  const first = made[0] as MadeMark;
  const last = made.at(-1) as MadeMark;
  const above = { width: first.at - (places[0] ?? 0), open: first.rank > 0, atEnd: true, put: 0 };
  const below = {
    width: (places.at(-1) ?? 0) - last.at,
    open: last.rank < last.of - 1,
    atEnd: true,
    put: 0,
  };
  return [above, ...between, below];
}

function widest(spaces: readonly Space[]): Space {
  return spaces.reduce((best, space) => (pull(space) > pull(best) ? space : best));
}

/** How wide the steps of a space are with one mark more; the end of a row is to have one at all. */
function pull({ width, open, atEnd, put }: Space): number {
  if (!open) return -Infinity;
  if (!atEnd) return width / (put + 1);
  return put > 0 ? width / put : width > 0 ? Infinity : 0;
}
