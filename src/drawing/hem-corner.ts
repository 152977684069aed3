import type { Figure, Point } from './figure.ts';

/** A corner of two hems in millimetres; the angle between the fold lines in degrees. */
export interface CornerPlan {
  bottom: number;
  side: number;
  angle: number;
  /** From the raw corner to the two marks that are laid on each other, A and B. */
  alongBottom: number;
  upSide: number;
  /** How far outside the seam to trim. */
  trim: number;
  /** From the inner edge of the hem to its stitching. */
  edgeStitch: number;
  /** The inner edges are folds: the hems are turned twice. */
  turnedTwice: boolean;
}

/**
 * A mitred corner flat, wrong side up, the raw corner at 0: raw edges, fold lines,
 * the seam and where to trim. A trim wider than the corner allows is drawn half way.
 */
export function mitreFlat(plan: CornerPlan): Figure {
  const { up, across, far } = placesOf(plan);
  return [
    ...mitreLines(plan),
    // Off the cloth, where no line runs through them.
    { label: 'A', at: { x: plan.alongBottom, y: 0.09 * far } },
    { label: 'B', at: plus(up(plan.upSide), scaled(across, -0.15 * far)) },
  ];
}

/** The same without the names of its marks. */
export function mitreLines(plan: CornerPlan): Figure {
  const { bottom, side, alongBottom, upSide } = plan;
  const { up, at, far } = placesOf(plan);
  const corner = at(bottom, side);
  const [one, two] = [{ x: alongBottom, y: 0 }, up(upSide)];
  return [
    { line: 'cloth', points: [up(far), { x: 0, y: 0 }, { x: far, y: 0 }] },
    { line: 'fold', points: [corner, { x: Math.max(far, 1.2 * corner.x), y: corner.y }] },
    { line: 'fold', points: [corner, plus(at(0, side), up(far))] },
    { line: 'stitch', points: [one, corner, two] },
    { line: 'cut', points: trimLine(one, corner, two, plan.trim) },
  ];
}

/**
 * The same corner finished, wrong side up, in the same place: the folded edges, the
 * hems turned up inside, the mitre seam from the corner to where the two marks meet,
 * and the stitching of the hems. The hem beyond a fold is its mirror image in it, so
 * the raw corner's place turns up twice as far in (derived here).
 */
export function mitreFolded(plan: CornerPlan): Figure {
  const { bottom, side, edgeStitch, turnedTwice } = plan;
  const { up, at } = placesOf(plan);
  const corner = at(bottom, side);
  const meet = at(2 * bottom, 2 * side);
  const turn = at(2 * bottom - edgeStitch, 2 * side - edgeStitch);
  const room = 1.5 * Math.hypot(corner.x, corner.y);
  const right = Math.max(meet.x, turn.x, corner.x) + room;
  // Up the side, all lines end at one height, above the lowest place any of them starts.
  const top = Math.min(meet.y, turn.y, corner.y) - room;
  const along = (from: Point): Point => ({ x: right, y: from.y });
  const upTo = (from: Point): Point => plus(from, up((from.y - top) / -up(1).y));
  const angled = (from: Point) => [along(from), from, upTo(from)];
  return [
    { line: 'fold', points: angled(corner) },
    { line: turnedTwice ? 'fold' : 'cloth', points: angled(meet) },
    { line: 'stitch', points: angled(turn) },
    { line: 'stitch', points: [corner, meet] },
    { label: 'A + B', at: at(2 * bottom + room / 6, 2 * side + room / 6) },
  ];
}

/**
 * Places by their distance from the two raw edges, and along the side edge; y downwards. The
 * edges are drawn as far as `far` from the raw corner.
 */
export function placesOf({ angle, alongBottom, upSide }: CornerPlan) {
  const turn = (angle * Math.PI) / 180;
  const [sine, cosine] = [Math.sin(turn), Math.cos(turn)];
  return {
    far: Math.max(alongBottom, upSide) * 1.35,
    /** Across the side edge, inwards; one long. */
    across: { x: sine, y: cosine },
    up: (by: number): Point => ({ x: by * cosine, y: -by * sine }),
    at: (bottom: number, side: number): Point => ({
      x: (side + bottom * cosine) / sine,
      y: -bottom,
    }),
  };
}

/** A line so far outside the seam, towards the raw corner at 0, from raw edge to raw edge. */
function trimLine(one: Point, corner: Point, two: Point, wanted: number): Point[] {
  const towards = { x: -corner.x, y: -corner.y };
  const [n, m] = [normal(corner, one, towards), normal(corner, two, towards)];
  const trim = Math.min(wanted, dot(towards, n) / 2, dot(towards, m) / 2);
  const join = trim / (1 + dot(n, m));
  return [
    scaled(one, 1 + trim / dot(one, n)),
    plus(corner, scaled(plus(n, m), join)),
    scaled(two, 1 + trim / dot(two, m)),
  ];
}

/** The direction across a line, one long, on the side something lies. */
function normal(from: Point, to: Point, towards: Point): Point {
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  const across = { x: (from.y - to.y) / long, y: (to.x - from.x) / long };
  return dot(across, towards) < 0 ? scaled(across, -1) : across;
}

function dot(a: Point, b: Point): number {
  return a.x * b.x + a.y * b.y;
}

export function plus(a: Point, b: Point): Point {
  return { x: a.x + b.x, y: a.y + b.y };
}

export function scaled(point: Point, by: number): Point {
  return { x: point.x * by, y: point.y * by };
}
