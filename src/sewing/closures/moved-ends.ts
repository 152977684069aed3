import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { type ClosuresInput, itemWidth } from './closure-input.ts';
import { type Layout, type Place, planned } from './closure-row.ts';
import { lengthOf, mostAt, placesIn, type Segment } from './segment.ts';
import { partsAt } from './two-pitches.ts';

/** Where the first and the last of a row may stand at the outside. */
interface Clear {
  from: ExactLength;
  to: ExactLength;
}

/**
 * Where moved ends stay clear of the edges: half the width of a closure from
 * them. Without a width, no nearer than the nearer end that was asked for (half
 * of an end of a whole space), or than the level itself.
 *
 * @param count marks of the even row, which says what ends were asked for
 */
function clearOfEdges(input: ClosuresInput, row: Segment, level: Length, count: number): Clear {
  const { opening } = input;
  const width = itemWidth(input);
  const even = placesIn(row, count);
  const asked = Math.min(even[0]!, opening - even.at(-1)!) / Math.max(1, row.head);
  const clear = width === undefined ? Math.min(asked, level, opening - level) : width / 2;
  return { from: exactLength(clear), to: exactLength(opening - clear) };
}

/**
 * One pitch through the level, with both ends moved.
 *
 * The even row is slid until one of its marks lies on the level; its ends then
 * move by the same amount, one nearer to its edge and one further from it,
 * which is the least that any single pitch can move them (derived here: with n₁
 * spaces above and n₂ below, the ends move by n₁(p₁ − p) and n₂(p − p₂), equal
 * at the even pitch). Where sliding would carry a mark nearer to an edge than
 * is clear, the pitch is made just small enough that it does not. Of two marks
 * whose sliding moves the ends alike, the upper one goes on the level.
 *
 * @returns undefined when the level itself is not clear of the edges
 */
export function movedEnds(
  input: ClosuresInput,
  row: Segment,
  level: Length,
  count: number,
): Layout | undefined {
  const clear = clearOfEdges(input, row, level, count);
  if (level < clear.from || level > clear.to) return undefined;
  const even = placesIn(row, count);
  const slid = even.map((_, onLevel) => slide(row, level, clear, even, onLevel));
  // Where the items of this one overlap, those of every other do: a narrower pitch moves the ends more.
  const { over, by, onLevel } = slid.reduce((a, b) => (b.moved < a.moved ? b : a));
  const places = even.map(
    (_, i): Place => ({
      at: exactLength((level * by + (i - onLevel) * over) / by),
      kind: i === onLevel ? 'level' : 'closure',
    }),
  );
  return { places, stretches: planned(count - 1, exactLength(over / by)) };
}

/** A row with mark `onLevel` on the level, at pitch over/by; `moved` is the most an end has moved. */
interface Slid {
  onLevel: number;
  over: number;
  by: number;
  moved: number;
}

function slide(
  row: Segment,
  level: Length,
  { from, to }: Clear,
  even: readonly ExactLength[],
  onLevel: number,
): Slid {
  const last = even.length - 1;
  const below = last - onLevel;
  const pitches = [
    { over: 2 * lengthOf(row), by: Math.max(1, 2 * last + row.head + row.tail) },
    ...(onLevel > 0 ? [{ over: level - from, by: onLevel }] : []),
    ...(below > 0 ? [{ over: to - level, by: below }] : []),
  ];
  const pitch = pitches.reduce((a, b) => (b.over / b.by < a.over / a.by ? b : a));
  const p = pitch.over / pitch.by;
  const top = Math.abs(level - onLevel * p - even[0]!);
  const bottom = Math.abs(level + below * p - even[last]!);
  return { ...pitch, onLevel, moved: Math.max(top, bottom) };
}

/** A row kept clear of the edges by half a width, where the ends asked for are not. */
export function keptClear(row: Segment, level: Length, opening: Length, width: number): Segment {
  if (row.head > 0) return row;
  return {
    ...row,
    from: Math.min(level, Math.max(row.from, width / 2)),
    to: Math.max(level, Math.min(row.to, opening - width / 2)),
  };
}

/** How many marks there is room for above and below the level at exactly this pitch. */
export function roomAtLevel(row: Segment, level: Length, pitch: Length) {
  const { above, below } = partsAt(row, level);
  return { above: mostAt(above, pitch), below: mostAt(below, pitch) };
}

/**
 * The given pitch kept through the level, up and down as far as the ends allow.
 * What is left over at each end is the remainder. The level must not be nearer
 * to an end than that end's share of a space.
 *
 * @param row from first to last as asked for
 * @param clear the part of it where marks may stand
 */
export function keptThroughLevel(
  row: Segment,
  clear: Segment,
  level: Length,
  pitch: Length,
): Layout {
  const { above, below } = roomAtLevel(clear, level, pitch);
  const places = Array.from({ length: above + 1 + below }, (_, i): Place => {
    const at = exactLength(level + (i - above) * pitch);
    return { at, kind: i === above ? 'level' : 'closure' };
  });
  const left = (space: number, count: number) =>
    exactLength((2 * space - (2 * count + row.head) * pitch) / 2);
  return {
    places,
    stretches: planned(above + below, pitch),
    remainder: { above: left(level - row.from, above), below: left(row.to - level, below) },
  };
}
