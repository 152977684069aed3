import { type Dimension, type Dimensioned, isAlong } from './dimension.ts';
import { type Box, type DrawingLayout, layOut } from './dimension-layout.ts';
import { type LineStyle, type Point, stylesOf } from './figure.ts';
import { textWidth } from './helvetica.ts';
import { LINE_LOOKS } from './line-looks.ts';
import type { PaperShape } from './paper-job.ts';
import { line } from './paper-shapes.ts';
import { columnOf } from './sheet-flow.ts';
import type { Piece, SheetWords, SheetWork } from './sheet-job.ts';
import { pairPieces } from './sheet-pairs.ts';
import type { SheetRoom } from './sheet-steps.ts';
import { LETTERING, lettered, linesOf, RULE } from './sheet-text.ts';

/** One unit of a layout as mm of the paper. */
const UNIT = 0.15;
/** The most a drawing may be high without its numbers, where room is short, and what is under a work; in mm. */
const HIGH = 20;
const LOW = 12;
const AFTER = 2.4;
/** Inside a label, in mm: as much as a layout leaves there. */
const INSIDE = 4 * UNIT;
/** Between a name and its number on one line. */
const BETWEEN = 1.2;
/** A label beside a drawing may be this part of its width, as `layOut` has it; one under it this. */
const BESIDE = 0.6;
const UNDER = 1;
/** A label of one line, and of two. */
const ONE = LETTERING.mark.line + INSIDE;
const TWO = LETTERING.small.line + ONE;
/** A piece of each line of the key, in mm. */
const SAMPLE = 8;

/** Works in two columns, each with its drawing and its other numbers; and the key of the lines. */
export function workPieces(
  works: readonly SheetWork[],
  { across, dense }: Pick<SheetRoom, 'across' | 'dense'>,
  words: SheetWords,
): Piece[] {
  const pieces = works.map((one) => workPiece(one, { wide: columnOf(across), dense }, words));
  const styles = stylesOf(works.flatMap(({ drawn }) => drawn?.shapes ?? []));
  return styles.length === 0 ? pieces : [...pieces, keyPiece(styles, across, words)];
}

function workPiece(
  { name, drawn, pairs }: SheetWork,
  { wide, dense }: { wide: number; dense: boolean },
  words: SheetWords,
): Piece {
  const called = drawn && !drawn.toScale ? words.notToScale(name) : name;
  const title = linesOf(called, LETTERING.plain, wide, 3);
  const head = title.length * LETTERING.plain.line + 1;
  const parts = [
    ...(drawn ? [drawingPiece(drawn, wide, dense ? LOW : HIGH)] : []),
    ...pairPieces(pairs, wide, dense),
  ];
  return {
    ...{
      narrow: true,
      high: parts.reduce((high, part) => high + part.high, head) + (dense ? AFTER / 3 : AFTER),
    },
    shapesAt({ x, y }) {
      let down = y + head;
      const under = parts.flatMap((part) => {
        const shapes = part.shapesAt({ x, y: down });
        down += part.high;
        return shapes;
      });
      return [...lettered(title, { x, y }, { ...LETTERING.plain, bold: true }), ...under];
    },
  };
}

/** @param high the most it may be, in mm */
function drawingPiece(drawn: Dimensioned, wide: number, high: number): Piece {
  const most = (one: Dimension) => wide * (isAlong(one) ? UNDER : BESIDE);
  const fit = drawn.dimensions.every((one) => labelWide(one) + 2 * INSIDE <= most(one));
  const row = fit ? ONE : TWO;
  // A layout reckons in letters of one width: of each label as many as make it as wide as it is.
  const dimensions = drawn.dimensions.map(({ name: _, ...one }, i): Dimension => {
    const wide = labelWide(drawn.dimensions[i] ?? one);
    return { ...one, text: ' '.repeat(Math.ceil(wide / UNIT)) };
  });
  const said = new Map(dimensions.map((one, i) => [one, drawn.dimensions[i] ?? one]));
  const layout = layOut(
    { ...drawn, dimensions },
    {
      ...{ width: wide / UNIT, drawing: high / UNIT, row: row / UNIT },
      ...{ letter: { wide: 1, high: row / UNIT }, under: UNDER },
    },
  );
  return {
    high: layout.height * UNIT + 1,
    shapesAt: (at) => shapesOf(drawn, layout, said, at),
  };
}

/** A name and its number on one line, in mm. */
function labelWide({ name = '', text }: Dimension): number {
  const [named, number] = [linesOf(name, LETTERING.small, 1e6), linesOf(text, LETTERING.mark, 1e6)];
  const wide = textWidth(named.join(' '), LETTERING.small.size);
  return wide + (wide > 0 ? BETWEEN : 0) + textWidth(number.join(' '), LETTERING.mark.size);
}

function shapesOf(
  { shapes }: Dimensioned,
  layout: DrawingLayout,
  said: ReadonlyMap<Dimension, Dimension>,
  corner: Point,
): PaperShape[] {
  const onPaper = ({ x, y }: Point): Point => ({ x: corner.x + x * UNIT, y: corner.y + y * UNIT });
  const boxes = layout.dimensions.map(({ label }) => label);
  const lines = layout.dimensions.flatMap(({ line: span, leaders }) => [
    ...leaders.flatMap((one) =>
      past(one, boxes).map(([from, to]) => line(onPaper(from), onPaper(to), RULE)),
    ),
    line(onPaper(span[0]), onPaper(span[1]), 0.3),
  ]);
  const figure = shapes.flatMap((shape): PaperShape[] => {
    if ('label' in shape) return [];
    const { weight, dash } = LINE_LOOKS[shape.line];
    const points = shape.points.map((point) => onPaper(layout.place(point)));
    return [{ kind: 'path', points, weight, dash }];
  });
  const labels = layout.dimensions.flatMap(({ dimension, label }) =>
    labelShapes(said.get(dimension) ?? dimension, label, onPaper(label)),
  );
  return [...lines, ...figure, ...labels];
}

/** The name before its number, or above it; what has no room for both keeps its number. */
function labelShapes(dimension: Dimension, label: Box, { x, y }: Point): PaperShape[] {
  const wide = label.width * UNIT - 2 * INSIDE;
  const at = { x: x + INSIDE, y: y + INSIDE };
  const { name = '', text } = dimension;
  const number = linesOf(text, LETTERING.mark, wide, label.height * UNIT < TWO ? 1 : 2);
  const named = linesOf(name, LETTERING.small, wide, 1);
  if (labelWide(dimension) <= wide && named.length === 1 && number.length === 1) {
    const right = at.x + textWidth(named[0] ?? '', LETTERING.small.size) + BETWEEN;
    // On one foot line.
    const lower = at.y + LETTERING.mark.size - LETTERING.small.size;
    return [
      ...lettered(named, { x: at.x, y: lower }, LETTERING.small),
      ...lettered(number, { x: right, y: at.y }, LETTERING.mark),
    ];
  }
  const above = number.length === 1 && label.height * UNIT >= TWO ? named : [];
  const under = { x: at.x, y: at.y + above.length * LETTERING.small.line };
  return [...lettered(above, at, LETTERING.small), ...lettered(number, under, LETTERING.mark)];
}

/** A line without what of it lies on a label. */
function past([from, to]: readonly [Point, Point], boxes: readonly Box[]) {
  const cuts = boxes.flatMap((box) => insideOf([from, to], box)).sort((a, b) => a[0] - b[0]);
  const at = (share: number): Point => ({
    x: from.x + share * (to.x - from.x),
    y: from.y + share * (to.y - from.y),
  });
  const parts: [Point, Point][] = [];
  let done = 0;
  for (const [start, end] of cuts) {
    if (start > done) parts.push([at(done), at(start)]);
    done = Math.max(done, end);
  }
  return done < 1 ? [...parts, [at(done), to] as [Point, Point]] : parts;
}

/** Which share of a line lies in a box, from and to. */
function insideOf([from, to]: readonly [Point, Point], box: Box): [number, number][] {
  let [start, end] = [0, 1];
  for (const axis of ['x', 'y'] as const) {
    const [least, most] = [box[axis], box[axis] + (axis === 'x' ? box.width : box.height)];
    const step = to[axis] - from[axis];
    if (step === 0) {
      if (from[axis] <= least || from[axis] >= most) return [];
      continue;
    }
    const [a, b] = [(least - from[axis]) / step, (most - from[axis]) / step];
    start = Math.max(start, Math.min(a, b));
    end = Math.min(end, Math.max(a, b));
  }
  return start < end ? [[start, end]] : [];
}

/** What each kind of line is, in words. */
function keyPiece(styles: readonly LineStyle[], across: number, words: SheetWords): Piece {
  const { small } = LETTERING;
  let [x, row] = [0, 0];
  const looks = styles.map((style) => {
    const wide = SAMPLE + 2 + textWidth(words.lines[style], small.size);
    if (x > 0 && x + wide > across) [x, row] = [0, row + 1];
    const at = { x, y: row * small.line };
    x += wide + 3;
    return { style, at };
  });
  return {
    high: (row + 1) * small.line + 2,
    shapesAt: (corner) =>
      looks.flatMap(({ style, at }): PaperShape[] => {
        const { weight, dash } = LINE_LOOKS[style];
        const left = corner.x + at.x;
        const middle = corner.y + at.y + small.size / 2;
        const points = [
          { x: left, y: middle },
          { x: left + SAMPLE, y: middle },
        ];
        const said = { x: left + SAMPLE + 2, y: corner.y + at.y };
        return [
          { kind: 'path', points, weight, dash },
          ...lettered([words.lines[style]], said, small),
        ];
      }),
  };
}
