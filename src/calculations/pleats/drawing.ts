import { pleatsWords as words } from '#words/calculations/pleats-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { Figure, Point } from '../../drawing/figure.ts';
import { lineThrough } from '../../drawing/figure-line.ts';
import { type WholeLine, wholeUnder } from '../../drawing/whole-line.ts';
import { exactLength, type Length, toMm, ZERO } from '../../lengths/length.ts';
import type { Pleats } from '../../sewing/fullness/pleats.ts';
import { type PleatsAsked, pleatFields } from './fields.ts';
import { foldedAt, pleatsShapes } from './figure.ts';
import { withLevels } from './level-drawing.ts';
import { type Pleated, pleated } from './pleated.ts';

/** Pleats seen near: of more than these, all of them are two lines under the first few. */
const SEEN = 4;

/** The first pleats flat and, below, folded, both to scale along them, layers drawn apart; and all of them. */
export const pleatsDrawing: Drawing = {
  id: 'pleats',
  // The width that was wanted is none of these pleats; the cloth is another piece.
  unplaced: () => ['width', 'cloth', 'deep'],
  draw(draft, bench) {
    const read = pleatFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = pleated(read.value);
    if (!found.ok) return undefined;
    const { input, plan } = found.value;
    const { seam } = input;
    const drawn = Math.min(plan.count, SEEN);
    const near = pleatsShapes(input, plan, drawn);
    const low = foldedAt(input, plan, drawn);
    const all =
      drawn === plan.count ? asDrawn(near, low) : underIt(near, plan.cut, [seam, input.finished]);
    const toScale = drawn === plan.count;
    const levels = withLevels(all.shapes, found.value, bench, toScale);
    return {
      name: toScale ? words.figureAll : words.figureFirst,
      toScale,
      shapes: levels.shapes,
      dimensions: [
        ...ofEach(read.value, plan, low, bench),
        ...ofAll(found.value, all, bench),
        ...levels.dimensions,
      ],
    };
  },
};

/** Where all of the strip lies, and all that it is folded to, by places along them in mm. */
interface All {
  shapes: Figure;
  flat(along: number): Point;
  folded(along: number): Point;
}

/** Where every pleat is drawn. */
function asDrawn(shapes: Figure, low: number): All {
  return { shapes, flat: (x) => ({ x, y: 0 }), folded: (x) => ({ x, y: low }) };
}

/** Else as two lines under the first pleats, both at one scale. */
function underIt(near: Figure, cut: Length, [seam, finished]: readonly [Length, Length]): All {
  const line = ({ at, across }: WholeLine, from: number, to: number) => [
    lineThrough('cloth', at(from), at(to)),
    across('cut', from),
    across('cut', to),
  ];
  const flat = wholeUnder(near, toMm(cut));
  const shapes = [...near, ...line(flat, 0, toMm(cut))];
  const folded = wholeUnder(shapes, toMm(cut));
  const ends = line(folded, toMm(seam), toMm(exactLength(seam + finished)));
  return { shapes: [...shapes, ...ends], flat: flat.at, folded: folded.at };
}

/** What is measured on the first pleats. */
function ofEach(
  { depth, kind, seam, face, ends }: PleatsAsked,
  { width, box }: Pleats,
  low: number,
  bench: Bench,
): Dimension[] {
  const on = (y: number, from: number, to: number, by: DimensionOf) =>
    lengthAlong(y, [from, to], by, bench);
  const fold = seam + (kind === 'knife' && ends === 'fold' ? width : width / 2);
  const front = box?.face ?? 0;
  return [
    on(0, 0, seam, { given: 'seam' }),
    on(low, seam, seam + width, { found: 'width' }),
    on(low, fold - depth + front / 2, fold + front / 2, { given: 'depth' }),
    ...(kind === 'box' && face !== undefined
      ? [on(low, fold - front / 2, fold + front / 2, { given: 'face' })]
      : []),
  ];
}

/** What is measured on all of them: the strip that is cut, and what it is folded to. */
function ofAll(
  { asked: { flat, seam, by }, input: { finished }, plan: { cut, count } }: Pleated,
  all: All,
  bench: Bench,
): Dimension[] {
  const folded = (along: number) => all.folded(toMm(exactLength(seam + along)));
  const [width, long]: readonly [DimensionOf, DimensionOf] =
    by === 'strip'
      ? [{ found: 'finished' }, { given: 'there' }]
      : [{ given: 'finished' }, { found: 'strip' }];
  const across = lengthAt([folded(0), folded(finished)], finished, width, bench);
  const counted: DimensionOf = by === 'count' ? { given: 'count' } : { found: 'count' };
  const plain = flat ?? ZERO;
  const last = lengthAt(
    [folded(finished - plain), folded(finished)],
    plain,
    { given: 'flat' },
    bench,
  );
  return [
    lengthAt([all.flat(0), all.flat(toMm(cut))], cut, long, bench),
    across,
    { ...across, text: words.counted(count), by: counted },
    ...(flat === undefined ? [] : [last]),
  ];
}
