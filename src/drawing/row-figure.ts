import type { Figure, FigureShape } from './figure.ts';
import { circle } from './figure-ring.ts';

/** Holes drawn at most: of a longer row, those round the middle. */
const MOST_DRAWN = 15;

/** How many holes of a row are drawn. */
export function holesDrawn(count: number): number {
  return Math.min(count, MOST_DRAWN);
}

/** How wide a digit is on the screen at that many holes, in pitches, and how far right of its place it starts. */
const DIGIT = 0.43;
const START = 0.21;

/**
 * The middle of a row of holes, hole to hole to scale, with the number of each
 * end drawn and of the holes beside the centre.
 * @param pitch hole to hole in mm
 */
export function countedRow(count: number, pitch: number): Figure {
  const middle = (count + 1) / 2;
  const drawn = holesDrawn(count);
  const first = Math.max(1, Math.min(count - drawn + 1, Math.round(middle - drawn / 2)));
  const place = (hole: number) => (hole - first) * pitch;
  const beside = [Math.floor(middle), Math.ceil(middle)];
  const numbered = [...new Set([first, ...beside, first + drawn - 1])];
  const radius = pitch * 0.22;
  const holes = Array.from(
    { length: drawn },
    (_, i): FigureShape => circle({ x: place(first + i), y: 0 }, radius, 'hole'),
  );
  const edge = pitch * 0.9;
  const [from, to] = [place(first) - pitch, place(first + drawn - 1) + pitch];
  return [
    ...[-edge, edge].map(
      (y): FigureShape => ({
        line: 'cloth',
        points: [
          { x: from, y },
          { x: to, y },
        ],
      }),
    ),
    ...holes,
    {
      line: 'measure',
      points: [
        { x: place(middle), y: -2 * pitch },
        { x: place(middle), y: 2 * pitch },
      ],
    },
    ...numbered.map(
      (hole): FigureShape => ({
        label: String(hole),
        at: { x: place(hole) - pitch * (START + leftOf(hole, middle)), y: 2.6 * pitch },
      }),
    ),
  ];
}

/** How far a number reaches left of its hole, in pitches: two beside the middle lean away from it. */
function leftOf(hole: number, middle: number): number {
  const wide = DIGIT * String(hole).length;
  const off = hole - middle;
  if (Math.abs(off) !== 0.5) return wide / 2;
  return off < 0 ? wide - 0.4 : 0.4;
}
