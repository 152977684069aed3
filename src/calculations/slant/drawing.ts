import { slantWords as words } from '#words/calculations/slant-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { Point } from '../../drawing/figure.ts';
import { toMm } from '../../lengths/length.ts';
import { type SlantedHem, slantedHem } from '../../sewing/hems/slanted-hem.ts';
import { type SlantAsked, slantFields, slantInput } from './fields.ts';
import { type SlantDrawn, slantDrawn, slantFigure } from './figure.ts';

/** The lower ends of the pieces: broken off above, so that how deep the hem is can be seen beside how long they are. */
export const slantDrawing: Drawing = {
  id: 'slant',
  unplaced: () => [],
  draw(draft, bench) {
    const read = slantFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = slantedHem(slantInput(read.value));
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: false,
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
    ...sides(asked, plan, bench),
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

/** Both sides of both pieces, by their fields. */
const SIDES = [
  { piece: 0, side: 0, finished: 'one', there: 'thereOne' },
  { piece: 0, side: 1, finished: 'other', there: 'thereOther' },
  { piece: 1, side: 0, finished: 'secondOne', there: 'secondThereOne' },
  { piece: 1, side: 1, finished: 'secondOther', there: 'secondThereOther' },
] as const;

/** How long each side is finished, and how far down its cloth reaches, of every piece. */
function sides(asked: SlantAsked, plan: SlantedHem, bench: Bench): Dimension[] {
  const from = slantDrawn(asked, plan);
  return SIDES.flatMap(({ piece, side, finished, there }) => {
    const [drawn, planned] = [from[piece], plan.pieces[piece]];
    if (!drawn || !planned) return [];
    const end = drawn.hem[side];
    const down = (given: typeof finished | typeof there, by = 0) => {
      const length = asked[given];
      if (length === undefined) return [];
      const ends = [
        { x: end.x, y: drawn.top },
        { x: end.x, y: end.y + by },
      ] as const;
      return [lengthAt(ends, length, { given }, bench)];
    };
    return [...down(finished), ...down(there, toMm(planned.below))];
  });
}

/** So far below a line that runs as the hem line does, square to it. */
function square(from: Point, { hem: [left, right] }: SlantDrawn, deep: number): Point {
  const long = Math.hypot(right.x - left.x, right.y - left.y);
  return {
    x: from.x - (deep * (right.y - left.y)) / long,
    y: from.y + (deep * (right.x - left.x)) / long,
  };
}
