import { pleatsWords as words } from '#words/pleats-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import { exactLength, toMm } from '../../lengths/length.ts';
import { type Pleats, pleats } from '../../sewing/pleats.ts';
import { stripsFor } from '../../sewing/strips.ts';
import { type PleatsAsked, pleatFields, pleatsInput } from './fields.ts';
import { foldedAt, pleatsShapes } from './figure.ts';

/** The whole strip flat and, below it, folded: both to scale along it, layers drawn apart. */
export const pleatsDrawing: Drawing = {
  id: 'pleats',
  // The width that was wanted is none of these pleats; the cloth is another piece.
  unplaced: () => ['width', 'cloth', 'deep'],
  draw(draft, bench) {
    const read = pleatFields.read(draft, bench);
    if (!read.ok) return undefined;
    const { cloth, seam, deep } = read.value;
    const input = pleatsInput(read.value);
    const plan = pleats(input);
    if (!plan.ok) return undefined;
    if (cloth !== undefined && !stripsFor({ needed: plan.value.strip, cloth, seam, deep }).ok) {
      return undefined;
    }
    return {
      name: words.figureAll,
      toScale: true,
      shapes: pleatsShapes(input, plan.value),
      dimensions: dimensions(read.value, plan.value, bench),
    };
  },
};

function dimensions(asked: PleatsAsked, plan: Pleats, bench: Bench): Dimension[] {
  const { finished, depth, kind, seam, by } = asked;
  const low = foldedAt(toMm(plan.cut));
  const of = (from: number, to: number, y: number, one: DimensionOf) =>
    lengthAt(
      [
        { x: toMm(exactLength(from)), y },
        { x: toMm(exactLength(to)), y },
      ],
      exactLength(to - from),
      one,
      bench,
    );
  const fold = seam + (kind === 'knife' ? plan.width : plan.width / 2);
  const face = plan.box?.face ?? 0;
  const across = of(seam, seam + finished, low, { given: 'finished' });
  return [
    of(0, plan.cut, 0, { found: 'strip' }),
    of(0, seam, 0, { given: 'seam' }),
    of(seam, seam + plan.width, low, { found: 'width' }),
    across,
    {
      ...across,
      text: words.counted(plan.count),
      by: by === 'count' ? { given: 'count' } : { found: 'count' },
    },
    of(fold - depth + face / 2, fold + face / 2, low, { given: 'depth' }),
    ...(kind === 'box' && asked.face !== undefined
      ? [of(fold - face / 2, fold + face / 2, low, { given: 'face' })]
      : []),
  ];
}
