import { type Figure, type Point, stylesOf } from './figure.ts';
import { LINE_LOOKS } from './line-looks.ts';
import type { PaperShape, PaperWords } from './paper-job.ts';
import { holeShapes, text } from './paper-shapes.ts';

/** A piece of each line of the key, the hole in it, and what lies between its parts; in mm. */
const SAMPLE = 9;
const HOLE = 2;
const BETWEEN = 2;

interface Look {
  word: string;
  wide: number;
  shapesAt(at: Point): PaperShape[];
}

/** What each kind of line of a drawing is, side by side. @param at on the foot line of its words */
export function keyShapes(
  figure: Figure,
  at: Point,
  { high, wide }: { high: number; wide: number },
  words: PaperWords,
): PaperShape[] {
  let { x } = at;
  return looksOf(figure, words).flatMap((look) => {
    const word = { x: x + look.wide + BETWEEN, y: at.y };
    const shapes = [...look.shapesAt({ x, y: at.y - high / 2 }), text(word, look.word, high)];
    x = word.x + look.word.length * wide + 2 * BETWEEN;
    return shapes;
  });
}

/** Holes are shown as holes: the same kind of line is another thing round them. */
function looksOf(figure: Figure, words: PaperWords): Look[] {
  const isHole = (shape: Figure[number]) => 'line' in shape && shape.ring !== undefined;
  const lines = stylesOf(figure.filter((shape) => !isHole(shape))).map((style): Look => {
    const { weight, dash } = LINE_LOOKS[style];
    const points = (at: Point) => [at, { x: at.x + SAMPLE, y: at.y }];
    const shapesAt = (at: Point): PaperShape[] => [
      { kind: 'path', points: points(at), weight, dash },
    ];
    return { word: words.lines[style], wide: SAMPLE, shapesAt };
  });
  const holes = stylesOf(figure.filter(isHole)).map((style): Look => {
    const shapesAt = ({ x, y }: Point) => holeShapes({ x: x + HOLE, y }, HOLE, style === 'cut');
    return { word: style === 'cut' ? words.punch : words.lines[style], wide: 2 * HOLE, shapesAt };
  });
  return [...lines, ...holes];
}
