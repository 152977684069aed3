import type { Figure, FigureShape, Point } from './figure.ts';

/** A hem in millimetres. */
export interface HemLines {
  depth: number;
  turn: number;
  /** Up from the finished edge to the stitching. */
  stitchUp: number;
  /** Of a faced hem: the seam of the facing, both its edges turned up inside. */
  seam?: number;
}

/** The same with the labels of its measures. */
export interface HemSection extends HemLines {
  labels: { depth: string; turn: string };
}

/** How far from the right side of the cloth its layers are drawn, in mm: the hem, what is turned in, and the piece's edge in the seam of a facing. */
export function layersOf({ depth }: HemLines): { hem: number; turned: number; joined: number } {
  const apart = apartOf(depth);
  return { hem: 2 * apart, turned: apart, joined: JOINED * apart };
}

function apartOf(depth: number): number {
  return depth * 0.14;
}

/** How far from the right side a piece's edge is turned up in the seam of a facing, in layers. */
const JOINED = 0.8;

/**
 * A section through a hem, its heights to scale; the layers are drawn apart so
 * that each can be seen. The right side of the cloth is on the left.
 */
export function hemSection({ labels, ...section }: HemSection): Figure {
  const { depth, turn } = section;
  const apart = apartOf(depth);
  const right = depth * 0.55;
  const tick = (y: number): FigureShape => across(y, right - apart, right + apart, 'measure');
  return [
    ...hemLines(section),
    tick(0),
    tick(-depth),
    {
      line: 'measure',
      points: [
        { x: right, y: 0 },
        { x: right, y: -depth },
      ],
    },
    { label: labels.depth, at: { x: right + apart, y: -depth * 0.35 } },
    ...(turn > 0
      ? [tick(turn - depth), { label: labels.turn, at: { x: right + apart, y: turn / 2 - depth } }]
      : []),
  ];
}

/** The same without its measures. */
export function hemLines({ depth, turn, stitchUp, seam }: HemLines): Figure {
  const apart = apartOf(depth);
  return [
    ...layers(depth, turn, apart, seam),
    across(0, -apart, 3 * apart, 'fold'),
    ...(turn > 0 ? [across(-depth, -apart, 3 * apart, 'fold')] : []),
    across(-stitchUp, -apart, 3 * apart, 'stitch'),
    ...(seam ? [across(-apart / 3, apart / 2, 1.5 * apart, 'stitch')] : []),
  ];
}

/** One piece of cloth folded up; or the piece and its facing, joined at the lower edge. */
function layers(depth: number, turn: number, apart: number, seam: number | undefined) {
  const piece: Point[] = [
    { x: 0, y: -depth * 1.7 },
    { x: 0, y: 0 },
  ];
  const inside: Point[] = [
    { x: 2 * apart, y: 0 },
    { x: 2 * apart, y: -depth },
  ];
  if (turn > 0) {
    // The free edge of a facing is turned towards the piece too, above the seam.
    inside.push({ x: apart, y: -depth }, { x: apart, y: turn - depth });
  }
  if (!seam) return [{ line: 'cloth', points: [...piece, ...inside] } as const];
  const up = (x: number): Point[] => [
    { x, y: -seam },
    { x, y: 0 },
  ];
  return [
    { line: 'cloth', points: [...piece, ...up(apart * JOINED).reverse()] },
    { line: 'cloth', points: [...up(apart * 1.2), ...inside] },
  ] as const;
}

function across(y: number, from: number, to: number, line: 'fold' | 'stitch' | 'measure') {
  return {
    line,
    points: [
      { x: from, y },
      { x: to, y },
    ],
  } as const;
}
