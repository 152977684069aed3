import type { Bench } from '../../calculation/bench.ts';
import { lengthAt } from '../../calculation/drawing.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { Point } from '../../drawing/figure.ts';
import { toMm } from '../../lengths/length.ts';
import { EDGES, type Edge } from '../../sewing/pieces/piece-edges.ts';
import { slantFields } from '../../sewing/pieces/piece-slants.ts';
import type { DrawnPiece } from './figure.ts';

/** From where a slant is measured on the drawing, and which way over and by go, as unit steps. */
interface From {
  at: Point;
  over: Point;
  by: Point;
}

/** The two measures of each edge that slants, from where its slant begins: over so much the one way, by so much the other. */
export function slantsOn(drawn: DrawnPiece, bench: Bench): Dimension[] {
  const { slants, fold } = drawn.input;
  return EDGES.flatMap((edge) => {
    const slant = slants?.[edge];
    // On the fold the other half is the same, turned over; sides that are alike are given once.
    if (!slant || (edge === 'other' && (fold || slants.side === slant))) return [];
    const { at, over, by } = fromOf(drawn, edge);
    const turn = step(at, over, toMm(slant.over));
    const end = step(turn, by, toMm(slant.by));
    const [byField, overField] = slantFields(edge);
    return [
      lengthAt([at, turn], slant.over, { given: overField }, bench),
      lengthAt([turn, end], slant.by, { given: byField }, bench),
    ];
  });
}

function fromOf({ finished, fold, middle, wide }: DrawnPiece, edge: Edge): From {
  const [low, farLow, , high] = finished as [Point, Point, Point, Point];
  const [up, right, left] = [
    { x: 0, y: -1 },
    { x: 1, y: 0 },
    { x: -1, y: 0 },
  ];
  const down = { x: 0, y: 1 };
  if (edge === 'side') return { at: low, over: up, by: right };
  if (edge === 'other') return { at: farLow, over: up, by: left };
  const by = edge === 'top' ? down : up;
  const corner = edge === 'top' ? high : low;
  if (fold === undefined) return { at: corner, over: right, by };
  const [bottom, top] = middle.finished;
  return { at: { x: wide / 2, y: edge === 'top' ? top : bottom }, over: left, by };
}

function step({ x, y }: Point, way: Point, far: number): Point {
  return { x: x + way.x * far, y: y + way.y * far };
}
