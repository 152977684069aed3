/** What a line of a drawing is. Each has one look, the same everywhere, with a key in words. */
export type LineStyle =
  | 'cloth'
  | 'fold'
  | 'placement'
  | 'stitch'
  | 'behind'
  | 'cut'
  | 'measure'
  | 'hole'
  | 'clash'
  | 'move';

export interface Point {
  x: number;
  y: number;
}

/** A line, or a label; in millimetres, y downwards. */
export type FigureShape =
  | {
      line: LineStyle;
      points: readonly Point[];
      /** The circle that the points go round, for those who can draw one. */
      ring?: { at: Point; radius: number };
      /** Of marks of a row: whether they are made, and full, or to come, and open. */
      made?: boolean;
    }
  | { label: string; at: Point };

/** A drawing to scale. */
export type Figure = readonly FigureShape[];

/** The least rectangle round a figure. A label counts as the point it stands at. */
export function boundsOf(figure: Figure): { x: number; y: number; width: number; height: number } {
  const points = figure.flatMap((shape) => ('line' in shape ? shape.points : [shape.at]));
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const x = Math.min(...xs);
  const y = Math.min(...ys);
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

/** The line styles a figure uses, each once. */
export function stylesOf(figure: Figure): LineStyle[] {
  return [...new Set(figure.flatMap((shape) => ('line' in shape ? [shape.line] : [])))];
}
