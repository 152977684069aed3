import type { Figure, FigureShape } from '../../drawing/figure.ts';
import { lineAcross, lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { toMm } from '../../lengths/length.ts';
import type { Collar, CollarPiece } from '../../sewing/bands/collar.ts';
import type { CollarAsked } from './fields.ts';

/** Between the two pieces, and above them, in parts of how wide the upper one is. */
const APART = 0.5;

/** Where the neck edge of each piece lies, and where the outer edge is drawn above, in mm. */
export function collarAt({ upper, under }: Collar) {
  const [high, low] = [toMm(upper.wide), toMm(under.wide)];
  return { outer: -APART * high, upper: high, under: (1 + APART) * high + low };
}

/** Both pieces with seams and marks, the neck edge below; above them the outer edge, straight. */
export function collarFigure(asked: CollarAsked, plan: Collar): Figure {
  const at = collarAt(plan);
  const seam = toMm(asked.seam);
  const roll = at.upper - seam - toMm(asked.stand);
  return [
    ...(asked.outer === undefined ? [] : [lineAcross('measure', at.outer, [0, toMm(asked.outer)])]),
    ...pieceOf(plan.upper, at.upper, seam),
    ...(asked.stand > 0 ? [lineAcross('fold', roll, [0, toMm(plan.upper.long)])] : []),
    ...pieceOf(plan.under, at.under, seam),
  ];
}

function pieceOf({ long, wide, run }: CollarPiece, y: number, seam: number): FigureShape[] {
  const [far, top] = [toMm(long), y - toMm(wide)];
  const around = (line: 'cut' | 'stitch', by: number): FigureShape =>
    lineThrough(
      line,
      { x: by, y: top + by },
      { x: far - by, y: top + by },
      { x: far - by, y: y - by },
      { x: by, y: y - by },
      { x: by, y: top + by },
    );
  return [
    around('cut', 0),
    ...(seam > 0 ? [around('stitch', seam)] : []),
    ...run.marks.map(({ at }) => lineDown('placement', toMm(at), [y - 2 * seam, y])),
  ];
}
