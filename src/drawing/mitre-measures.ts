import type { Figure, Point } from './figure.ts';
import { lineAcross, lineThrough } from './figure-line.ts';
import { type CornerPlan, placesOf, plus, scaled } from './hem-corner.ts';

/** A measure on a corner, from and to. */
type Ends = readonly [Point, Point];

/** Where the measures of a flat corner lie (`mitreLines`). */
export function mitreMeasures(plan: CornerPlan) {
  const { bottom, side, alongBottom, upSide, edgeStitch } = plan;
  const { up, at, across, far } = placesOf(plan);
  const raw = { x: 0, y: 0 };
  const [end, top] = [{ x: far, y: 0 }, up(far)];
  return {
    /** The two marks, from the raw corner. */
    alongBottom: [raw, { x: alongBottom, y: 0 }],
    upSide: [raw, up(upSide)],
    /** Where the fold line of each hem leaves the other's raw edge. */
    foldBottom: [raw, at(0, side)],
    foldSide: [raw, at(bottom, 0)],
    /** From each raw edge to its fold line, and to the stitching. */
    depth: [end, { x: far, y: -bottom }],
    side: [top, plus(top, scaled(across, side))],
    edgeStitch: [end, { x: far, y: -edgeStitch }],
  } satisfies Record<string, Ends>;
}

/** The stitching of both hems on the flat corner, beyond its mitre. */
export function mitreStitching({ edgeStitch, ...plan }: CornerPlan): Figure {
  const { up, across, far } = placesOf({ ...plan, edgeStitch });
  const inward = (from: Point) => plus(from, scaled(across, edgeStitch));
  return [
    lineAcross('stitch', -edgeStitch, [plan.alongBottom, far]),
    lineThrough('stitch', inward(up(plan.upSide)), inward(up(far))),
  ];
}
