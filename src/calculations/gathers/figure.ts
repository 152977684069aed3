import type { Figure, FigureShape } from '../../drawing/figure.ts';
import { lineThrough } from '../../drawing/figure-line.ts';
import { toMm } from '../../lengths/length.ts';
import type { Gathers } from '../../sewing/fullness/gathers-input.ts';
import type { GathersAsked } from './fields.ts';
import { endsOf } from './gathered.ts';

/** How far the strip lies below its edge, how high it is drawn, and how long a mark is, in parts of it. */
const APART = 0.14;
const HIGH = 0.07;
const MARK = 0.015;

/** Where the strip lies below its edge, in mm. */
export function stripAt({ cut }: Gathers): number {
  return APART * toMm(cut);
}

/** The edge, its strip below it from the same beginning, and what meets joined. */
export function gathersFigure(asked: GathersAsked, plan: Gathers): Figure {
  const { strip, edge } = plan.marks;
  const [long, before] = [toMm(plan.cut), toMm(endsOf(asked))];
  const [top, low] = [stripAt(plan), stripAt(plan) + HIGH * long];
  const mark = MARK * long;
  const tick = (x: number, y: number): FigureShape =>
    lineThrough('measure', { x, y: y - mark }, { x, y: y + mark });
  const upright = (x: number, style: 'cut' | 'stitch') =>
    lineThrough(style, { x, y: top }, { x, y: low });
  const joined = edge.marks.map(({ at }, i) =>
    lineThrough(
      'placement',
      { x: before + toMm(at), y: 0 },
      { x: toMm(strip.marks[i]?.at ?? plan.cut), y: top },
    ),
  );
  return [
    lineThrough('cloth', { x: before, y: 0 }, { x: before + toMm(asked.edge), y: 0 }),
    lineThrough('cloth', { x: 0, y: top }, { x: long, y: top }),
    lineThrough('cloth', { x: 0, y: low }, { x: long, y: low }),
    upright(0, 'cut'),
    upright(long, 'cut'),
    ...(before > 0 ? [upright(before, 'stitch'), upright(long - before, 'stitch')] : []),
    ...edge.marks.map(({ at }) => tick(before + toMm(at), 0)),
    ...strip.marks.map(({ at }) => tick(toMm(at), top)),
    ...joined,
  ];
}
