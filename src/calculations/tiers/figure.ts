import type { Figure, FigureShape } from '../../drawing/figure.ts';
import { lineAcross, lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { toMm } from '../../lengths/length.ts';
import { type Tier, type Tiers, tierMarks } from '../../sewing/fullness/tiers.ts';
import { type TiersAsked, tiersInput } from './fields.ts';

/** Between two tiers, in parts of how deep all are cut; how long a mark is, in parts of that. */
const BETWEEN = 0.12;
const MARK = 0.3;

/** Where each tier is cut, its top and its bottom, in mm below the edge. */
export function tierRows({ tiers }: Tiers): { top: number; bottom: number; gap: number }[] {
  const gap = BETWEEN * tiers.reduce((sum, { cutDeep }) => sum + toMm(cutDeep), 0);
  let top = gap;
  return tiers.map(({ cutDeep }) => {
    const bottom = top + toMm(cutDeep);
    const row = { top, bottom, gap };
    top = bottom + gap;
    return row;
  });
}

/** The edge, and its tiers below each other as they are cut, with the marks that meet. */
export function tiersFigure(asked: TiersAsked, plan: Tiers): Figure {
  const { edge, seam, between, hem } = asked;
  const input = tiersInput(asked);
  const rows = tierRows(plan);
  const ends = toMm(seam);
  return [
    lineAcross('cloth', 0, [ends, ends + toMm(edge)]),
    ...plan.tiers.flatMap((tier, i) => {
      const row = rows[i];
      if (!row) return [];
      const below = toMm(i === plan.tiers.length - 1 ? hem : between);
      const above = i === 0 ? { y: 0, from: ends } : { y: rows[i - 1]?.bottom ?? 0, from: ends };
      return tierShapes({ tier, marks: tierMarks(input, tier) }, row, {
        ends,
        below,
        between: toMm(between),
        above,
      });
    }),
  ];
}

interface Around {
  ends: number;
  between: number;
  below: number;
  /** The line above it is gathered to. */
  above: { y: number; from: number };
}

function tierShapes(
  { tier: { cut }, marks }: { tier: Tier; marks: ReturnType<typeof tierMarks> },
  { top, bottom, gap }: { top: number; bottom: number; gap: number },
  { ends, below, between, above }: Around,
): FigureShape[] {
  const long = toMm(cut);
  const tick = (x: number, y: number) => lineDown('measure', x, [y - MARK * gap, y + MARK * gap]);
  return [
    lineThrough(
      'cut',
      ...[
        { x: 0, y: top },
        { x: long, y: top },
        { x: long, y: bottom },
        { x: 0, y: bottom },
        { x: 0, y: top },
      ],
    ),
    ...(between > 0 ? [lineAcross('stitch', top + between, [0, long])] : []),
    ...(below > 0 ? [lineAcross('stitch', bottom - below, [0, long])] : []),
    ...(ends > 0
      ? [lineDown('stitch', ends, [top, bottom]), lineDown('stitch', long - ends, [top, bottom])]
      : []),
    ...marks.strip.marks.map(({ at }) => tick(toMm(at), top)),
    ...marks.edge.marks.map(({ at }) => tick(above.from + toMm(at), above.y)),
  ];
}
