import type { Figure } from '../../drawing/figure.ts';
import { lineAcross, lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { toMm } from '../../lengths/length.ts';
import type { GatherZones } from '../../sewing/fullness/gather-zones.ts';
import type { ZonesAsked } from './fields.ts';

/** How far the strip lies below its edge, how high it is drawn, and how long a mark is, in parts of it. */
const APART = 0.14;
const HIGH = 0.07;
const MARK = 0.015;

/** Where the strip lies below its edge, in mm. */
export function stripAt({ cut }: GatherZones): number {
  return APART * toMm(cut);
}

/** The edge, its strip below it from the same beginning, and what meets joined. */
export function zonesFigure({ ends }: ZonesAsked, plan: GatherZones): Figure {
  const [long, before] = [toMm(plan.cut), toMm(ends)];
  const [top, low] = [stripAt(plan), stripAt(plan) + HIGH * long];
  const { strip, edge } = plan.marks;
  const tick = (x: number, y: number) => lineDown('measure', x, [y - MARK * long, y + MARK * long]);
  return [
    lineAcross('cloth', 0, [before, before + toMm(plan.edge)]),
    lineAcross('cloth', top, [0, long]),
    lineAcross('cloth', low, [0, long]),
    lineDown('cut', 0, [top, low]),
    lineDown('cut', long, [top, low]),
    ...(before > 0 ? [before, long - before].map((x) => lineDown('stitch', x, [top, low])) : []),
    ...edge.marks.map(({ at }) => tick(before + toMm(at), 0)),
    ...strip.marks.map(({ at }) => tick(toMm(at), top)),
    ...edge.marks.map(({ at }, i) =>
      lineThrough(
        'placement',
        { x: before + toMm(at), y: 0 },
        { x: toMm(strip.marks[i]?.at ?? plan.cut), y: top },
      ),
    ),
  ];
}
