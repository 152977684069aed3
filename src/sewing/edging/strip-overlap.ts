import { backOf } from './strip-room.ts';
import type { Side } from './strip-sides.ts';

interface Point {
  x: number;
  y: number;
}

/** The leather of one side: a quarter, mitred where it ends in a corner. */
type Band = readonly Point[];

/** Bands that only touch may seem to overlap by so much, in 1/8000 mm. */
const NOISE = 1;

/** Where a strip lies on the flat. */
export interface Laid {
  sides: readonly Side[];
  width: number;
  /** Inside each corner, in degrees. */
  angle: number;
  /** Whether the last side leads back to the first. */
  closed: boolean;
}

/** The first two sides, counted from 1, that lie over each other though no corner joins them. */
export function overlapOf(laid: Laid): readonly [number, number] | undefined {
  const { bands } = bandsOf(laid);
  for (const [i, one] of bands.entries()) {
    // A corner joins the next one, and the last of a closed outline to the first.
    const others = bands.slice(i + 2, laid.closed && i === 0 ? -1 : undefined);
    const on = others.findIndex((other) => !apart(one, other) && !apart(other, one));
    if (on >= 0) return [i + 1, i + 3 + on];
  }
  return undefined;
}

/** How far a closed outline’s last side ends from where its first begins. */
export function gapOf(laid: Omit<Laid, 'closed'>): number {
  const { end } = bandsOf(laid);
  return Math.hypot(end.x, end.y);
}

/** Side after side, each turned by what the corner’s angle leaves of a straight line; inside is to the left. */
function bandsOf({ sides, width, angle }: Omit<Laid, 'closed'>): { bands: Band[]; end: Point } {
  const turn = Math.PI - (angle * Math.PI) / 180;
  const mitre = backOf(width, angle);
  let end: Point = { x: 0, y: 0 };
  const bands = sides.map(({ long, begins, ends }, i) => {
    const [cos, sin] = [Math.cos(i * turn), Math.sin(i * turn)];
    const start = end;
    const place = (along: number, across: number): Point => ({
      x: start.x + along * cos - across * sin,
      y: start.y + along * sin + across * cos,
    });
    end = place(long, 0);
    const inner = [ends ? long - mitre : long, begins ? mitre : 0];
    return [start, end, ...inner.map((along) => place(along, width))];
  });
  return { bands, end };
}

/** Whether a line along some edge of the one lies between it and the other: both are convex. */
function apart(one: Band, other: Band): boolean {
  return one.some((from, i) => {
    const to = one[(i + 1) % one.length] ?? from;
    const long = Math.hypot(to.x - from.x, to.y - from.y);
    // Inside is to the left of every edge; nothing is to either side of one of no length.
    const left = ({ x, y }: Point) =>
      ((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x)) / long;
    return other.every((point) => left(point) <= NOISE);
  });
}
