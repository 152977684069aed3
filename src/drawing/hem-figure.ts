import type { Figure, FigureShape, Point } from './figure.ts';

/** A hem in millimetres, with the labels of its measures. */
export interface HemSection {
  depth: number;
  turn: number;
  /** Up from the finished edge to the stitching. */
  stitchUp: number;
  labels: { depth: string; turn: string };
}

/**
 * A section through a hem, its heights to scale; the layers are drawn apart so
 * that each can be seen. The right side of the cloth is on the left.
 */
export function hemSection({ depth, turn, stitchUp, labels }: HemSection): Figure {
  const apart = depth * 0.14;
  const cloth: Point[] = [
    { x: 0, y: -depth * 1.7 },
    { x: 0, y: 0 },
    { x: 2 * apart, y: 0 },
    { x: 2 * apart, y: -depth },
  ];
  if (turn > 0) cloth.push({ x: apart, y: -depth }, { x: apart, y: turn - depth });
  const right = depth * 0.55;
  const tick = (y: number): FigureShape => across(y, right - apart, right + apart, 'measure');
  return [
    { line: 'cloth', points: cloth },
    across(0, -apart, 3 * apart, 'fold'),
    ...(turn > 0 ? [across(-depth, -apart, 3 * apart, 'fold')] : []),
    across(-stitchUp, -apart, 3 * apart, 'stitch'),
    tick(0),
    tick(-depth),
    {
      line: 'measure',
      points: [
        { x: right, y: 0 },
        { x: right, y: -depth },
      ],
    },
    { label: labels.depth, at: { x: right + apart, y: -depth * 0.35 } },
    ...(turn > 0
      ? [tick(turn - depth), { label: labels.turn, at: { x: right + apart, y: turn / 2 - depth } }]
      : []),
  ];
}

function across(y: number, from: number, to: number, line: 'fold' | 'stitch' | 'measure') {
  return {
    line,
    points: [
      { x: from, y },
      { x: to, y },
    ],
  } as const;
}

/** A corner of two hems in millimetres; the angle between the fold lines in degrees. */
export interface CornerPlan {
  bottom: number;
  side: number;
  angle: number;
  alongBottom: number;
  upSide: number;
  trim: number;
}

/** A mitred corner flat, wrong side up: raw edges, fold lines, the seam and where to trim. */
export function mitreFlat(plan: CornerPlan): Figure {
  const { bottom, side, angle, alongBottom, upSide, trim } = plan;
  const turn = (angle * Math.PI) / 180;
  const along = (by: number): Point => ({ x: by, y: 0 });
  const up = (by: number): Point => ({ x: by * Math.cos(turn), y: -by * Math.sin(turn) });
  const corner = { x: alongBottom / 2, y: -bottom };
  const far = Math.max(alongBottom, upSide) * 1.35;
  const beyond = (from: Point, to: Point, by: number): Point => ({
    x: from.x + (to.x - from.x) * by,
    y: from.y + (to.y - from.y) * by,
  });
  const inward = { x: -side / Math.sin(turn), y: 0 };
  return [
    { line: 'cloth', points: [up(far), { x: 0, y: 0 }, along(far)] },
    { line: 'fold', points: [corner, { x: far, y: -bottom }] },
    { line: 'fold', points: [corner, shift(up(far), { x: -inward.x, y: 0 })] },
    { line: 'stitch', points: [along(alongBottom), corner, up(upSide)] },
    {
      line: 'cut',
      points: [
        beyond(corner, along(alongBottom), 1),
        beyond(corner, { x: 0, y: 0 }, Math.min(0.9, trim / Math.hypot(corner.x, corner.y))),
        beyond(corner, up(upSide), 1),
      ],
    },
    { label: '1', at: along(alongBottom) },
    { label: '2', at: up(upSide) },
  ];
}

function shift(point: Point, by: Point): Point {
  return { x: point.x + by.x, y: point.y + by.y };
}
