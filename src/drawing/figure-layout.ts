import { boundsOf, type Figure, type Point } from './figure.ts';

/** How wide and high a drawing may be on the screen, in px. */
const BOX = { width: 328, height: 190 };
/** Room round it, and the size of its lettering, in px. */
const ROOM = 14;
export const LETTER = 14;
/** From the point a label stands at to its first letter, in px. */
const BESIDE = 4;

/** Where a label's letters are, in px. */
export interface Lettered {
  text: string;
  x: number;
  y: number;
  width: number;
  height: number;
}

/** A figure in the room there is for it on a page, in px. */
export interface FigureLayout {
  width: number;
  height: number;
  /** From millimetres of the figure to px. */
  place(point: Point): Point;
  labels: readonly Lettered[];
}

/** Puts a figure at one scale both ways. Labels stand to the right of their point, and get room there. */
export function layFigure(figure: Figure): FigureLayout {
  const { x, y, width, height } = boundsOf(figure);
  const lettered = BOX.width - 2 * ROOM - Math.max(0, ...figure.map(widthOf));
  const scale = Math.min(lettered / (width || 1), (BOX.height - 2 * ROOM) / (height || 1));
  const place = (point: Point) => ({
    x: (point.x - x) * scale + ROOM,
    y: (point.y - y) * scale + ROOM,
  });
  const labels = figure.flatMap((shape) => {
    if (!('label' in shape)) return [];
    const at = place(shape.at);
    const box = { width: widthOf(shape), height: LETTER };
    return [{ text: shape.label, x: at.x + BESIDE, y: at.y - LETTER / 2, ...box }];
  });
  return { width: BOX.width, height: height * scale + 2 * ROOM, place, labels };
}

function widthOf(shape: Figure[number]): number {
  return 'label' in shape ? shape.label.length * LETTER * 0.6 : 0;
}
