import { toMm } from '../lengths/length.ts';
import type { Face, LacePoint } from '../sewing/lacing/lacing-repeat.ts';
import type { Figure, FigureShape, Point } from './figure.ts';
import { circle } from './figure-ring.ts';
import { type LacingView, placedPaths } from './lacing-path.ts';

/** A lacing as it is drawn, in mm. */
export interface DrawnLacing extends LacingView {
  pitch: number;
  margin: number;
  /** The hole, across. */
  hole: number;
}

/** The strip goes on so far beyond the holes drawn, in pitches. */
const BEYOND = 0.6;

/**
 * A few repeats to scale, the strip's edge above: what lies on this face as stitching,
 * what lies on the other as behind it. Lace along the edge covers it. The back is seen
 * from the back, so from right to left.
 */
export function lacingFigure(lacing: DrawnLacing, face: Face): Figure {
  const { pitch, margin, hole } = lacing;
  const { paths, seen } = placedPaths(lacing);
  const way = face === 'front' ? 1 : -1;
  const place = (along: number, across: number): Point => ({ x: way * along * pitch, y: across });
  const [first, last] = seen;
  const runs = paths.flatMap(runsOf);
  const drawn = (side: boolean): FigureShape[] =>
    runs
      .filter(([from]) => (from.face === face) === side)
      .map((run) => ({
        line: side ? 'stitch' : 'behind',
        points: run.map(({ along, across }) => place(along, toMm(across))),
      }));
  const holes = Array.from({ length: last - first + 1 }, (_, i) => first + i);
  return [
    ...bareEdge([first - BEYOND, last + BEYOND], runs).map(
      ([from, to]): FigureShape => ({ line: 'cloth', points: [place(from, 0), place(to, 0)] }),
    ),
    ...drawn(false),
    ...drawn(true),
    ...holes.map((at) => circle(place(at, margin), hole / 2, 'hole')),
    ...[first, last].map(
      (at): FigureShape => ({
        label: String(at + 1),
        at: place(at - way * 0.4, margin + 0.7 * pitch),
      }),
    ),
  ];
}

/** The edge but where lace runs along it and covers it. */
function bareEdge(
  [start, end]: readonly [number, number],
  runs: readonly (readonly [LacePoint, LacePoint])[],
): [number, number][] {
  const covered = runs
    .filter(([from, to]) => from.across === 0 && to.across === 0)
    .map(([from, to]) => [Math.min(from.along, to.along), Math.max(from.along, to.along)] as const)
    .sort(([one], [other]) => one - other);
  const bare: [number, number][] = [];
  let at = start;
  for (const [from, to] of covered) {
    if (from > at) bare.push([at, from]);
    at = Math.max(at, to);
  }
  return at < end ? [...bare, [at, end]] : bare;
}

/** The straight parts of a path; at a pass it only changes face. */
function runsOf(path: readonly LacePoint[]): (readonly [LacePoint, LacePoint])[] {
  return path.flatMap((to, i) => {
    const from = path[i - 1];
    return from && from.face === to.face ? [[from, to] as const] : [];
  });
}
