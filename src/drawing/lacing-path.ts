import {
  halfPaths,
  halfStitches,
  joiningPath,
  type MiddleStart,
  moved,
} from '../sewing/lacing/lacing-halves.ts';
import type { Strand } from '../sewing/lacing/lacing-kinds.ts';
import { type LacePoint, pathOf, type Repeat } from '../sewing/lacing/lacing-repeat.ts';

/** What a lacing's drawing shows. */
export interface LacingView {
  strands: readonly Strand[];
  /** Holes of the whole row, at least 2. */
  holes: number;
  /** Where it begins, when worked from the middle of the row to both ends. */
  start: MiddleStart | undefined;
  /** Only so many steps of each strand; all that is drawn when not given. */
  steps?: number | undefined;
}

export interface PlacedPaths {
  /** Along is counted from the first hole of the row. */
  paths: readonly (readonly LacePoint[])[];
  /** The holes drawn, first and last, the row's first being 0. */
  seen: readonly [number, number];
}

/** Stitches drawn, unless one repeat is longer: few enough to be told apart on a phone. */
const SEEN = 4;
const SEEN_EACH_WAY = 3;

/** A few repeats of a lacing, where they are in the row. */
export function placedPaths(view: LacingView): PlacedPaths {
  const whole = view.start ? bothWays(view, view.start) : fromOneEnd(view);
  const alongs = whole.flat().map(({ along }) => along);
  const { steps } = view;
  return {
    paths: steps === undefined ? whole : whole.map((path) => path.slice(0, steps + 1)),
    seen: [
      Math.max(0, Math.floor(Math.min(...alongs))),
      Math.min(view.holes - 1, Math.ceil(Math.max(...alongs))),
    ],
  };
}

function fromOneEnd({ strands, holes }: LacingView): LacePoint[][] {
  return strands.map(({ repeat, back }) => {
    // A repeat that reaches back is drawn where there is a hole to reach back to.
    const reach = Math.ceil(-Math.min(0, ...repeat.points.map(({ along }) => along)));
    const from = Math.max(0, Math.min(reach, holes - 1 - repeat.advance));
    const stitches = drawnStitches(repeat, holes - 1 - from, SEEN);
    const path = pathOf(repeat, stitches);
    return back ? moved(path, from + stitches, -1) : moved(path, from, 1);
  });
}

function bothWays({ strands, holes }: LacingView, start: MiddleStart): LacePoint[][] {
  const [toFirst, toLast] = halfStitches(start, holes);
  return strands.flatMap(({ repeat }) => {
    const seen = (room: number) => drawnStitches(repeat, room, SEEN_EACH_WAY);
    const [left, right] = halfPaths(repeat, start, [seen(toFirst), seen(toLast)]);
    const joining = joiningPath(repeat, start);
    return joining.length > 0 ? [joining, right, left] : [right, left];
  });
}

function drawnStitches({ advance }: Repeat, room: number, seen: number): number {
  const wanted = Math.max(advance, Math.floor(seen / advance) * advance);
  return Math.min(room, wanted);
}
