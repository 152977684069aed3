import { pieceWords as words } from '#words/calculations/piece-words.ts';
import type { Figure, FigureShape, Point } from '../../drawing/figure.ts';
import { lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { exactLength, toMm } from '../../lengths/length.ts';
import type { PieceInput } from '../../sewing/pieces/piece-input.ts';
import { type Corner, outlineOf, rawMiddle } from '../../sewing/pieces/piece-outline.ts';
import type { PieceFound } from './read.ts';

/** A side that is not given is drawn so long beside one that is, as far as slanted sides let it. */
const AS_LONG = 0.8;

/** A piece as it is drawn, opened, in mm from its finished corner. */
export interface DrawnPiece {
  /** The piece with the slants it is drawn with. */
  input: PieceInput;
  /** Corners of the bottom, from the left, then of the top from the right. */
  finished: readonly Point[];
  cut: readonly Point[];
  /** Where both lie in the middle, at the bottom and at the top. */
  middle: { finished: readonly [low: number, high: number]; cut: readonly [number, number] };
  /** Where the fold is, from the left at the bottom; undefined without one. */
  fold: number | undefined;
  wide: number;
  long: number;
}

/** Both outlines; one way that has no size is drawn at some. */
export function drawnPiece({ input: own, plan }: PieceFound): DrawnPiece {
  const { slants, ...level } = own;
  // How edges that slant would meet isn't known without both.
  const input = plan.across && plan.along && slants ? { ...level, slants } : level;
  const { angle, fold } = input;
  const narrower = 2 / Math.tan((angle * Math.PI) / 180);
  const given = plan.across?.gives ?? plan.along?.gives ?? 1;
  const wide = plan.across?.gives ?? given * Math.max(1, narrower / AS_LONG);
  const long =
    plan.along?.gives ?? Math.min(wide, narrower > 0 ? (AS_LONG * wide) / narrower : wide);
  const { finished, cut } = outlineOf(input, exactLength(wide), exactLength(long));
  const mm = ({ x, y }: Corner): Point => ({ x: toMm(exactLength(x)), y: toMm(exactLength(y)) });
  const inMm = (y: number) => toMm(exactLength(y));
  const [low, high] = rawMiddle(input, exactLength(long));
  return {
    input,
    middle: { finished: [0, inMm(-long)], cut: [inMm(low), inMm(high)] },
    finished: finished.map(mm),
    cut: cut.map(mm),
    fold: fold ? toMm(exactLength(wide / 2)) : undefined,
    wide: toMm(exactLength(wide)),
    long: toMm(exactLength(long)),
  };
}

/** The cut outline with the finished one in it; beyond a fold, what it opens to. */
export function pieceShapes(drawn: DrawnPiece): FigureShape[] {
  const { fold } = drawn;
  const outline = (line: 'cut' | 'stitch', of: 'cut' | 'finished'): FigureShape[] => {
    const corners = drawn[of];
    const [bottom, top] = drawn.middle[of];
    if (fold === undefined) return [lineThrough(line, ...corners, ...corners.slice(0, 1))];
    const [low, farLow, farHigh, high] = corners as [Point, Point, Point, Point];
    const at = (y: number): Point => ({ x: fold, y });
    return [
      lineThrough(line, at(bottom), low, high, at(top)),
      lineThrough('behind', at(bottom), farLow, farHigh, at(top)),
    ];
  };
  return [
    ...outline('cut', 'cut'),
    ...outline('stitch', 'finished'),
    ...(fold === undefined ? [] : [lineDown('fold', fold, drawn.middle.cut)]),
  ];
}

/** Of a piece that is wide and hardly long, its names stand so far apart beside its width, for their letters. */
const LETTERS = 0.08;

/** Which edge is which, written beside all of its lines; the fold has a line of its own look. */
export function pieceFigure(found: PieceFound): Figure {
  const drawn = drawnPiece(found);
  const xs = drawn.cut.map((corner) => corner.x);
  const x = Math.max(...xs);
  const apart = LETTERS * (x - Math.min(...xs));
  return [
    ...pieceShapes(drawn),
    { label: words.top, at: { x, y: -Math.max(drawn.long, apart) } },
    { label: words.bottom, at: { x, y: 0 } },
  ];
}
