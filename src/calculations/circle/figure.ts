import type { Figure, FigureShape, LineStyle, Point } from '../../drawing/figure.ts';
import { lineAcross, lineThrough } from '../../drawing/figure-line.ts';
import { type ExactLength, toMm } from '../../lengths/length.ts';
import type { Rounded } from './rounded.ts';

/** Points of an arc for each right angle, and how far below the piece its edge lies, in parts of it. */
const FINE = 12;
const BELOW = 0.12;

/** Where the piece begins and ends round its point, from straight down, in radians. */
function turns({ plan: { piece, box } }: Rounded): readonly [number, number] {
  return box.grain === 'side' ? [0, piece.angle] : [-piece.angle / 2, piece.angle / 2];
}

function at(radius: number, turn: number): Point {
  return { x: radius * Math.sin(turn), y: radius * Math.cos(turn) };
}

function arc(
  style: LineStyle,
  radius: ExactLength,
  [from, to]: readonly [number, number],
): FigureShape {
  const steps = Math.max(2, Math.ceil(((to - from) / (Math.PI / 2)) * FINE));
  const points = Array.from({ length: steps + 1 }, (_, i) =>
    at(toMm(radius), from + ((to - from) * i) / steps),
  );
  return lineThrough(style, ...points);
}

/** How far down the straight line of the edge lies, in mm. */
export function edgeAt({ plan }: Rounded): number {
  return (1 + BELOW) * toMm(plan.cutHem);
}

/** One piece as it is laid, its point above: arcs and sides as they are stitched and as they are cut. */
export function circleFigure(found: Rounded): Figure {
  const { asked, plan } = found;
  const { piece, cutRadius, cutHem } = plan;
  const stitched = turns(found);
  const whole = piece.angle > 2 * Math.PI - 1e-9 && asked.what === 'skirt';
  const side = whole ? 0 : asked.side;
  const more = (radius: number) => (radius > side ? Math.asin(side / radius) : Math.PI / 2);
  // A ring that is slit loses its seam inside it: it can't be drawn past a whole turn.
  const out = (radius: number): readonly [number, number] =>
    piece.angle + 2 * more(radius) > 2 * Math.PI
      ? stitched
      : [stitched[0] - more(radius), stitched[1] + more(radius)];
  const edges = (style: LineStyle, i: 0 | 1, from: ExactLength, to: ExactLength, cut: boolean) =>
    lineThrough(
      style,
      at(toMm(from), cut ? out(from)[i] : stitched[i]),
      at(toMm(to), cut ? out(to)[i] : stitched[i]),
    );
  const half = toMm(asked.edge) / 2;
  return [
    arc('cut', cutRadius, out(cutRadius)),
    arc('cut', cutHem, out(cutHem)),
    arc('stitch', piece.inner, stitched),
    arc('fold', piece.outer, stitched),
    ...(whole
      ? []
      : [
          edges('cut', 0, cutRadius, cutHem, true),
          edges('cut', 1, cutRadius, cutHem, true),
          ...(side > 0
            ? [
                edges('stitch', 0, piece.inner, piece.outer, false),
                edges('stitch', 1, piece.inner, piece.outer, false),
              ]
            : []),
        ]),
    lineAcross('cloth', edgeAt(found), [-half, half]),
  ];
}
