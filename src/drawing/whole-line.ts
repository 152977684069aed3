import { boundsOf, type Figure, type FigureShape, type LineStyle, type Point } from './figure.ts';
import { lineDown } from './figure-line.ts';

/** The whole of something long as a line, under what is seen of it near, and as wide. */
export interface WholeLine {
  /** @param along in mm of the whole */
  at(along: number): Point;
  /** A mark across it; `long` in marks. */
  across(style: LineStyle, along: number, long?: number): FigureShape;
}

/** How far below it lies, and how long a mark is, in parts of its length. */
const BELOW = 0.12;
const MARK = 0.02;

/**
 * @param length of the whole, in mm
 * @param toScale where what is above it is the whole, too: as long as it is, from the same zero
 */
export function wholeUnder(close: Figure, length: number, toScale = false): WholeLine {
  const { x, y, width, height } = boundsOf(close);
  const under = y + height + BELOW * width;
  const at = (along: number): Point => ({
    x: toScale ? along : x + (along / length) * width,
    y: under,
  });
  return {
    at,
    across: (style, along, long = 1) => {
      const place = at(along).x;
      const half = long * MARK * width;
      return lineDown(style, place, [under - half, under + half]);
    },
  };
}
