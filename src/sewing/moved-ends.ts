import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import { type Layout, type Place, planned } from './closure-row.ts';
import { lengthOf, mostAt, placesIn, type Segment } from './segment.ts';
import { partsAt } from './two-pitches.ts';

/**
 * One pitch through the level, with both ends moved.
 *
 * The even row is slid until one of its marks lies on the level; its ends then
 * move by the same amount, one nearer to its edge and one further from it,
 * which is the least that any single pitch can move them (derived here: with n₁
 * spaces above and n₂ below, the ends move by n₁(p₁ − p) and n₂(p − p₂), equal
 * at the even pitch). Where sliding would carry a mark past an edge of the
 * opening, the pitch is made just small enough that it does not.
 */
export function movedEnds(row: Segment, level: Length, count: number, opening: Length): Layout {
  const even = placesIn(row, count);
  let best: Slid | undefined;
  for (let onLevel = 0; onLevel < count; onLevel++) {
    const slid = slide(row, level, count, opening, even, onLevel);
    if (slid && (!best || slid.moved < best.moved)) best = slid;
  }
  if (!best) throw new RangeError(`no mark can lie on the level ${level} of ${opening}`);
  const { over, by, onLevel } = best;
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
  count: number,
  opening: Length,
  even: readonly ExactLength[],
  onLevel: number,
): Slid | undefined {
  const below = count - 1 - onLevel;
  const pitches = [
    { over: 2 * lengthOf(row), by: Math.max(1, 2 * (count - 1) + row.head + row.tail) },
    ...(onLevel > 0 ? [{ over: level as number, by: onLevel }] : []),
    ...(below > 0 ? [{ over: opening - level, by: below }] : []),
  ];
  const pitch = pitches.reduce((a, b) => (b.over / b.by < a.over / a.by ? b : a));
  if (count > 1 && pitch.over <= 0) return undefined;
  const p = pitch.over / pitch.by;
  const first = Math.abs(level - onLevel * p - even[0]!);
  const last = Math.abs(level + below * p - even[count - 1]!);
  return { ...pitch, onLevel, moved: Math.max(first, last) };
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
 */
export function keptThroughLevel(row: Segment, level: Length, pitch: Length): Layout {
  const { above, below } = roomAtLevel(row, level, pitch);
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
