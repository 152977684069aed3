import { slantWords as words } from '#words/calculations/slant-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { Point } from '../../drawing/figure.ts';
import { toMm } from '../../lengths/length.ts';
import { type SlantedHem, slantedHem } from '../../sewing/slanted-hem.ts';
import { type SlantAsked, slantFields, slantInput } from './fields.ts';
import { type SlantDrawn, slantDrawn, slantFigure } from './figure.ts';

/** The lower ends of the pieces to scale: how long they are isn't seen of them. */
export const slantDrawing: Drawing = {
  id: 'slant',
  unplaced: () => [
    ...['one', 'other', 'secondOne', 'secondOther'],
    ...['thereOne', 'thereOther', 'secondThereOne', 'secondThereOther'],
  ],
  draw(draft, bench) {
    const read = slantFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = slantedHem(slantInput(read.value));
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: true,
      shapes: slantFigure(read.value, found.value),
      dimensions: dimensions(read.value, found.value, bench),
    };
  },
};

function dimensions(asked: SlantAsked, plan: SlantedHem, bench: Bench): Dimension[] {
  const [first] = plan.pieces;
  const [drawn] = slantDrawn(asked, plan);
  if (!first || !drawn) return [];
  const { depth, turn } = plan;
  const { hem, fold } = drawn;
  const by = asked.given === 'depth' ? { given: 'depth' } : { found: 'depth' };
  const inner = square(fold[0], drawn, toMm(turn));
  return [
    lengthAlong(drawn.top, [0, asked.across], { given: 'across' }, bench),
    lengthAt([hem[1], square(hem[1], drawn, toMm(depth))], depth, by, bench),
    ...(asked.turned === 'unequal'
      ? [lengthAt([fold[0], inner], turn, { given: 'turn' }, bench)]
      : []),
    ...(first.mirror.aside > 0
      ? [
          lengthAt(
            [{ x: hem[0].x, y: fold[0].y }, fold[0]],
            first.mirror.aside,
            { found: 'mirror' },
            bench,
          ),
        ]
      : []),
  ];
}

/** So far below a line that runs as the hem line does, square to it. */
function square(from: Point, { hem: [left, right] }: SlantDrawn, deep: number): Point {
  const long = Math.hypot(right.x - left.x, right.y - left.y);
  return {
    x: from.x - (deep * (right.y - left.y)) / long,
    y: from.y + (deep * (right.x - left.x)) / long,
  };
}
