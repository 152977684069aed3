import type { Figure, FigureShape } from '../../drawing/figure.ts';
import { lineAcross, lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { toMm } from '../../lengths/length.ts';
import { timesWide } from '../../sewing/bands/band.ts';
import type { Banded } from './banded.ts';

/** The band flat as it is cut, with its seams, its folds and its marks. */
export function bandFigure({ asked, plan }: Banded): Figure {
  const [long, high, seam] = [toMm(plan.long), toMm(plan.across), toMm(asked.seam)];
  const around = (line: 'cut' | 'stitch', by: number): FigureShape =>
    lineThrough(
      line,
      { x: by, y: by },
      { x: long - by, y: by },
      { x: long - by, y: high - by },
      { x: by, y: high - by },
      { x: by, y: by },
    );
  const times = timesWide(asked.make);
  const between = (high - 2 * seam) / times;
  const folds = Array.from({ length: times - 1 }, (_, i) =>
    lineAcross('fold', seam + (i + 1) * between, [seam, long - seam]),
  );
  const marks = plan.run.marks.map(({ at }) =>
    lineDown('placement', toMm(at), [0, seam + between]),
  );
  return [around('cut', 0), ...(seam > 0 ? [around('stitch', seam)] : []), ...folds, ...marks];
}
