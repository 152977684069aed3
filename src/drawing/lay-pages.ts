import type { Point } from './figure.ts';
import { textWidth } from './helvetica.ts';
import { innerPlace } from './inner-place.ts';
import type { ClothPlace, LayJob, LayPaperWords } from './lay-job.ts';
import type { PaperOutcome, PaperSetting, PaperShape } from './paper-job.ts';
import { line, text } from './paper-shapes.ts';
import type { Piece } from './sheet-job.ts';
import { highOf, LETTERING, lettered, linesOf } from './sheet-text.ts';
import { acrossPage, highOnFirst, uprightPages } from './upright-pages.ts';

/** How many times smaller than it is a lay is drawn: the first of these that fits a page. */
const SCALES = [1, 2, 4, 5, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 300, 500, 1000];

/** Room for what stands along the edges, in mm: left of the cloth, over it, and under its end. */
const [BESIDE, OVER, BELOW] = [24, 16, 12];
/** Marks along an edge stand at least so far apart, and are so long, in mm. */
const [APART, MARK] = [13, 2];
/** Lines of the cloth, of pieces and of marks, in mm; dashes of the fold, and of flaws. */
const WEIGHTS = { cloth: 0.35, piece: 0.3, mark: 0.15 } as const;
const [FOLD_DASH, FLAW_DASH] = [
  [4, 1.5, 1, 1.5],
  [1, 1],
] as const;
/** Air around the number of a piece, in mm. */
const AIR = 0.8;

/**
 * A lay on paper: drawn to a reduced scale on the first page, with how wide and how long it is and
 * marks along both edges, and under it where each piece lies.
 */
export function layPages(job: LayJob, setting: PaperSetting, words: LayPaperWords): PaperOutcome {
  const across = acrossPage(setting);
  const foot = { high: 0, shapesAt: () => [] };
  const more = { foot, pageOf: words.pageOf };
  if (across === undefined) return uprightPages(job, [], setting, more);
  const times = scaleOf(job, across, highOnFirst(job, setting));
  const headed = { title: job.title, under: [...job.under, words.scale(times)] };
  const drawing = drawingOf(job, times, words);
  const list = job.pieces.flatMap((piece) => listed(piece.heading, piece.places, across));
  const rest = drawing.whole ? [] : noted(words.unnumbered, across);
  return uprightPages(headed, [drawing.piece, ...list, ...rest], setting, more);
}

/** The line that says the scale stands under the title, too. */
function scaleOf({ width, length }: LayJob, across: number, high: number): number {
  const room = high - LETTERING.what.line - OVER - BELOW;
  const fits = (times: number) => width / times <= across - BESIDE && length / times <= room;
  return SCALES.find(fits) ?? Math.max(width / (across - BESIDE), length / room);
}

interface Drawn {
  piece: Piece;
  /** Every piece has room for its number. */
  whole: boolean;
}

function drawingOf(job: LayJob, times: number, words: LayPaperWords): Drawn {
  const high = job.length / times;
  const numbers = job.pieces.map(({ outline, label }) => numberIn(asDrawn(outline, times), label));
  const piece: Piece = {
    high: OVER + high + BELOW,
    shapesAt: ({ x, y }) => {
      const corner = { x: x + BESIDE, y: y + OVER };
      const on = (outline: readonly ClothPlace[]) => asDrawn(outline, times, corner);
      return [
        ...clothShapes(job, times, corner, words),
        ...job.flaws.map((flaw) => ring(on(flaw), WEIGHTS.mark, FLAW_DASH)),
        ...job.pieces.map(({ outline }) => ring(on(outline), WEIGHTS.piece, [])),
        ...numbers.flatMap((number) => (number ? [number(corner)] : [])),
      ];
    },
  };
  return { piece, whole: numbers.every((one) => one !== undefined) };
}

/** Along the cloth is down the page. */
function asDrawn(
  outline: readonly ClothPlace[],
  times: number,
  corner: Point = { x: 0, y: 0 },
): Point[] {
  return outline.map(([along, across]) => ({
    x: corner.x + across / times,
    y: corner.y + along / times,
  }));
}

function ring(points: readonly Point[], weight: number, dash: readonly number[]): PaperShape {
  return { kind: 'path', points: [...points, ...points.slice(0, 1)], weight, dash };
}

/** The number of a piece where it has most room; undefined where that is too little. */
function numberIn(outline: readonly Point[], label: string) {
  const { size } = LETTERING.small;
  const wide = textWidth(label, size);
  const inner = innerPlace(outline);
  if (!inner || inner.room < Math.hypot(wide, size) / 2 + AIR) return undefined;
  const { x, y } = inner.at;
  return (corner: Point) =>
    text({ x: corner.x + x - wide / 2, y: corner.y + y + size / 2 }, label, size);
}

function clothShapes(
  job: LayJob,
  times: number,
  { x, y }: Point,
  words: LayPaperWords,
): PaperShape[] {
  const [wide, high] = [job.width / times, job.length / times];
  const [right, bottom] = [x + wide, y + high];
  const step = job.steps.find((one) => one / times >= APART) ?? job.length;
  const { size } = LETTERING.small;
  return [
    line({ x, y }, { x: right, y }, WEIGHTS.cloth),
    line({ x, y: bottom }, { x: right, y: bottom }, WEIGHTS.mark),
    line({ x: right, y }, { x: right, y: bottom }, WEIGHTS.cloth),
    job.folded
      ? ring(
          [
            { x, y },
            { x, y: bottom },
          ],
          WEIGHTS.cloth,
          FOLD_DASH,
        )
      : line({ x, y }, { x, y: bottom }, WEIGHTS.cloth),
    // Over it how wide it is, with marks from its left edge on; beside it the same along it.
    text({ x, y: y - OVER + size + 1 }, words.edges(job.width, job.folded), size),
    ...marksTo(job.width, step).flatMap((at) => [
      line({ x: x + at / times, y: y - MARK }, { x: x + at / times, y }, WEIGHTS.mark),
      centred(words.mark(at), x + at / times, y - MARK - 1.2, size),
    ]),
    ...marksTo(job.length, step).flatMap((at) => [
      line({ x: x - MARK, y: y + at / times }, { x, y: y + at / times }, WEIGHTS.mark),
      beside(words.mark(at), x - MARK - 1, y + at / times + size / 2, size),
    ]),
    text({ x, y: bottom + size + 2.5 }, words.long(job.length), size),
  ];
}

/** From 0 on, each a step further, as far as the edge goes. */
const marksTo = (length: number, step: number) =>
  Array.from({ length: Math.floor(length / step + 1e-9) + 1 }, (_, i) => i * step);

const centred = (said: string, x: number, y: number, size: number) =>
  text({ x: x - textWidth(said, size) / 2, y }, said, size);
const beside = (said: string, right: number, y: number, size: number) =>
  text({ x: right - textWidth(said, size), y }, said, size);

/** A piece of the list: what it is, and where it lies. */
function listed(heading: string, places: readonly string[], across: number): Piece[] {
  const { loud, plain } = LETTERING;
  const heads = linesOf(heading, loud, across, 2);
  const lines = linesOf(places.join(' · '), plain, across);
  const down = heads.length * loud.line;
  return [
    {
      high: down + highOf(lines.length, plain) + plain.line / 2,
      shapesAt: ({ x, y }) => [
        ...lettered(heads, { x, y }, loud),
        ...lettered(lines, { x, y: y + down }, plain),
      ],
    },
  ];
}

function noted(said: string, across: number): Piece[] {
  const { small } = LETTERING;
  const lines = linesOf(said, small, across);
  return [{ high: highOf(lines.length, small), shapesAt: (at) => lettered(lines, at, small) }];
}
