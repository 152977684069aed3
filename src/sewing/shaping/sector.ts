import { type ExactLength, exactLength } from '../../lengths/length.ts';

/** A piece between two arcs about one point. */
export interface Sector {
  /** Of its inner and its outer arc. */
  inner: ExactLength;
  outer: ExactLength;
  /** Between its sides, in radians. */
  angle: number;
}

/**
 * The piece with an inner arc u, an outer arc v and a depth L between them: angle (v − u) ÷ L, inner
 * radius u × L ÷ (v − u) (derived here: both arcs are angle × radius).
 *
 * @param arcs v more than u, neither less than nothing
 * @param depth more than nothing
 */
export function sectorOf(
  { inner, outer }: { inner: ExactLength; outer: ExactLength },
  depth: ExactLength,
): Sector {
  const more = outer - inner;
  const radius = exactLength((inner * depth) / more);
  return { inner: radius, outer: exactLength(radius + depth), angle: more / depth };
}

/** The cloth that a piece takes, and how it is laid. */
export interface SectorBox {
  /** Across the grain, and along it. */
  wide: ExactLength;
  high: ExactLength;
  /** What of the piece lies along the grain. */
  grain: 'middle' | 'side';
}

/**
 * The least rectangle round a piece with an allowance outside both sides, parallel to them: laid with its
 * middle along the grain, or with one side where that takes less (derived here). A side s outside
 * meets the arc of radius R where it is turned asin(s ÷ R) further.
 *
 * @param side nothing where the piece is a whole ring
 */
export function sectorBox({ inner, outer, angle }: Sector, side: ExactLength): SectorBox {
  const middle = boxOf({ inner, outer }, side, -angle / 2, angle / 2);
  if (angle > Math.PI / 2) return { ...middle, grain: 'middle' };
  const along = boxOf({ inner, outer }, side, 0, angle);
  const grain = along.wide * along.high < middle.wide * middle.high ? 'side' : 'middle';
  return grain === 'side' ? { ...along, grain } : { ...middle, grain };
}

function boxOf(
  { inner, outer }: Pick<Sector, 'inner' | 'outer'>,
  side: ExactLength,
  from: number,
  to: number,
): Pick<SectorBox, 'wide' | 'high'> {
  const points = cornersOf({ inner, outer }, side, from, to);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return {
    wide: exactLength(Math.max(...xs) - Math.min(...xs)),
    high: exactLength(Math.max(...ys) - Math.min(...ys)),
  };
}

/** Both ends of both arcs with the sides outside, and where the outer one is furthest each way. */
function cornersOf(
  { inner, outer }: Pick<Sector, 'inner' | 'outer'>,
  side: ExactLength,
  from: number,
  to: number,
): { x: number; y: number }[] {
  const at = (radius: number, turn: number) => ({
    x: radius * Math.sin(turn),
    y: radius * Math.cos(turn),
  });
  const more = (radius: number) => (radius > side ? Math.asin(side / radius) : Math.PI / 2);
  const [first, last] = [from - more(outer), to + more(outer)];
  const furthest = [-2, -1, 0, 1, 2]
    .map((quarter) => (quarter * Math.PI) / 2)
    .filter((turn) => turn >= first && turn <= last);
  // A side further out than the inner arc is wide runs past the middle.
  const innermost = Math.max(inner, side);
  return [
    at(outer, first),
    at(outer, last),
    // The end of the inner arc that is turned further lies lowest: the other one takes no more room.
    at(innermost, to + more(inner)),
    ...furthest.map((turn) => at(outer, turn)),
  ];
}

/** The side of a piece that is cut with straight edges as long as its arcs: √(depth² + ((v − u) ÷ 2)²). */
export function straightSide({ inner, outer, angle }: Sector): ExactLength {
  return exactLength(Math.hypot(outer - inner, ((outer - inner) * angle) / 2));
}
