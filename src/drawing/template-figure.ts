import type { Figure, FigureShape } from './figure.ts';
import { circle } from './figure-ring.ts';
import { type PaperStrip, widthOf } from './paper-job.ts';

/** All of a strip, or of a bare run, at true size: edges, holes or marks, numbers. */
export function templateFigure(strip: PaperStrip): Figure {
  const { length, width, hole, rows } = strip;
  const high = widthOf(strip);
  const across = (line: 'cloth' | 'cut', x: number): FigureShape => ({
    line,
    points: [
      { x, y: 0 },
      { x, y: high },
    ],
  });
  const along = (y: number): FigureShape => ({
    line: 'cloth',
    points: [
      { x: 0, y },
      { x: length, y },
    ],
  });
  return [
    along(0),
    ...(width === undefined ? [] : [along(width)]),
    across('cloth', 0),
    across('cloth', length),
    ...rows.flatMap((row) =>
      row.marks.flatMap(({ at, label }): FigureShape[] => [
        hole === undefined ? across('cut', at) : circle({ x: at, y: row.across }, hole / 2),
        { label, at: { x: at, y: row.across - (hole ?? 0) / 2 - 1 } },
      ]),
    ),
  ];
}
