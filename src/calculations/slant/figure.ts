import type { Figure, FigureShape, Point } from '../../drawing/figure.ts';
import { lineThrough } from '../../drawing/figure-line.ts';
import { toMm } from '../../lengths/length.ts';
import type { Slanted, SlantedHem } from '../../sewing/hems/slanted-hem.ts';
import type { SlantAsked } from './fields.ts';

/** Of the piece above its hem line so much is drawn, and so far apart two pieces lie, in parts of how wide they are. */
const ABOVE = 0.4;
const BETWEEN = 0.5;

/** Where one piece of the drawing has its corners, in mm; the first one’s shorter end of the hem line is at zero. */
export interface SlantDrawn {
  /** Ends of the hem line. */
  hem: readonly [Point, Point];
  /** The same at the inner fold, and at the raw edge. */
  fold: readonly [Point, Point];
  raw: readonly [Point, Point];
  top: number;
}

/** Each piece, one side left, the other right. */
export function slantDrawn(asked: SlantAsked, plan: SlantedHem): SlantDrawn[] {
  const wide = toMm(asked.across);
  const { depth, allowance } = plan;
  const sides = [
    [asked.one, asked.other],
    [asked.secondOne, asked.secondOther],
  ] as const;
  return plan.pieces.map((piece, i) => {
    const [one = asked.one, other = asked.other] = sides[i] ?? [];
    const from = i * (1 + BETWEEN) * wide;
    const drop = toMm(other) - toMm(one);
    const hem = [
      { x: from, y: Math.max(0, -drop) },
      { x: from + wide, y: Math.max(0, drop) },
    ] as const;
    const aside = Math.sign(-drop || 1) * toMm(piece.mirror.aside);
    const at = (down: number) =>
      hem.map(({ x, y }) => ({ x: x + aside, y: y + down })) as unknown as typeof hem;
    const fold = at(toMm(piece.mirror.down));
    const raw = at(
      toMm(piece.mirror.down) + (toMm(allowance) - toMm(depth)) / Math.cos(piece.angle),
    );
    return { hem, fold, raw, top: -ABOVE * wide };
  });
}

/** The lower ends of the pieces, their hem lines, and the allowance with its mirrored sides. */
export function slantFigure(asked: SlantAsked, plan: SlantedHem): Figure {
  return slantDrawn(asked, plan).flatMap((drawn, i) => [
    ...shapes(drawn, plan),
    ...straightOn(drawn, plan.pieces[i]),
  ]);
}

function shapes({ hem, fold, raw, top }: SlantDrawn, { turn }: SlantedHem): FigureShape[] {
  const [left, right] = hem;
  return [
    lineThrough('cloth', { ...left, y: top }, left, fold[0], raw[0], raw[1], fold[1], right, {
      ...right,
      y: top,
    }),
    lineThrough('fold', left, right),
    ...(turn > 0 ? [lineThrough('fold', ...fold)] : []),
  ];
}

/** How the sides would run straight on: what the mirror goes off. */
function straightOn({ hem }: SlantDrawn, piece: Slanted | undefined): FigureShape[] {
  if (!piece || piece.mirror.aside === 0) return [];
  return hem.map(({ x, y }) => lineThrough('placement', { x, y }, { x, y: y + toMm(piece.below) }));
}
