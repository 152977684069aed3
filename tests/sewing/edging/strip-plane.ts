import type { HoleRow, StripInput } from '../../../src/sewing/edging/strip.ts';

/** A hole's centre on the flat strip, and the side between corners it is on. */
export interface Placed {
  x: number;
  y: number;
  side: number;
}

type Point = readonly [number, number];
export type Cut = readonly [Point, Point];

/** The flat strip as it lies on the bench, worked out anew from what was typed. */
export interface Plane {
  /** A place of a side, so far along its outer edge and in from it. */
  place(side: number, along: number, across: number): Point;
  /** A square cut through the whole width, so far along the strip. */
  cut(along: number): Cut;
  /** How far a point is from the edges of its side, and of the sides next to it. */
  toEdges(point: Placed): number;
}

export function planeOf(strip: StripInput): Plane {
  if (strip.radius !== undefined) return bent(strip, strip.radius);
  return turned(strip);
}

/** Every hole of every run; one in a corner is on both sides, and is given once. */
export function placedHoles(strip: StripInput, rows: readonly HoleRow[]): Placed[] {
  const plane = planeOf(strip);
  return rows.flatMap(({ runs, across }) =>
    runs.flatMap(({ marks }, side) =>
      marks.slice(side === 0 ? 0 : 1).map(({ at }) => {
        const own = strip.radius === undefined ? at : at / lineOf(strip, strip.radius, across);
        const [x, y] = plane.place(side, own, across);
        return { x, y, side };
      }),
    ),
  );
}

const lineOf = ({ width }: StripInput, radius: number, across: number) =>
  radius + width / 2 - across;

/** Round a centre at the nought; along is an angle. */
function bent(strip: StripInput, radius: number): Plane {
  const at = (angle: number, across: number): Point => {
    const line = lineOf(strip, radius, across);
    return [line * Math.cos(angle), line * Math.sin(angle)];
  };
  return {
    place: (_, angle, across) => at(angle, across),
    cut: (along) => [at(along / radius, 0), at(along / radius, strip.width)],
    toEdges: ({ x, y }) => {
      const from = Math.hypot(x, y);
      const [outer, inner] = [radius + strip.width / 2, radius - strip.width / 2];
      return Math.min(outer - from, from - inner);
    },
  };
}

/** Sides one after the other, each turned by 180° less the corner's angle. */
function turned({ length, width, corners, angle }: StripInput): Plane {
  const turn = Math.PI - (angle * Math.PI) / 180;
  const edges = [0, ...corners, length];
  const starts: Point[] = [[0, 0]];
  const heading = (side: number): Point => [Math.cos(side * turn), Math.sin(side * turn)];
  for (const [i, at] of corners.entries()) {
    const [x, y] = starts[i] as Point;
    const [dx, dy] = heading(i);
    const long = at - (edges[i] as number);
    starts.push([x + dx * long, y + dy * long]);
  }
  const place = (side: number, along: number, across: number): Point => {
    const [x, y] = starts[side] as Point;
    const [dx, dy] = heading(side);
    return [x + dx * along - dy * across, y + dy * along + dx * across];
  };
  const longOf = (side: number) => (edges[side + 1] as number) - (edges[side] as number);
  return {
    place,
    cut: (along) => {
      const side = corners.filter((at) => at <= along && at < length).length;
      const own = along - (edges[side] as number);
      return [place(side, own, 0), place(side, own, width)];
    },
    toEdges: (point) => {
      const sides = [point.side - 1, point.side, point.side + 1].filter(
        (side) => side >= 0 && side <= corners.length,
      );
      const outer = sides.map((side) =>
        toSegment(point, [place(side, 0, 0), place(side, longOf(side), 0)]),
      );
      const [x, y] = starts[point.side] as Point;
      const [dx, dy] = heading(point.side);
      const across = (point.y - y) * dx - (point.x - x) * dy;
      return Math.min(...outer, width - across);
    },
  };
}

/** From a point to the nearest of a segment. */
export function toSegment({ x, y }: { x: number; y: number }, [[ax, ay], [bx, by]]: Cut): number {
  const [dx, dy] = [bx - ax, by - ay];
  const squared = dx * dx + dy * dy;
  const on = squared === 0 ? 0 : ((x - ax) * dx + (y - ay) * dy) / squared;
  const part = Math.min(1, Math.max(0, on));
  return Math.hypot(x - ax - part * dx, y - ay - part * dy);
}
