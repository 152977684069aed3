import { circleWords as words } from '#words/calculations/circle-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthDown } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import { toMm } from '../../lengths/length.ts';
import { circleFields } from './fields.ts';
import { circleFigure, edgeAt } from './figure.ts';
import { type Rounded, rounded } from './rounded.ts';

/** One piece, what is measured from its point down its middle or its side, the edge below it. */
export const circleDrawing: Drawing = {
  id: 'circle',
  // A hem all round is longer than can be drawn beside it; the cloth is another piece; sides are parallel,
  // not measured from the point; a radius that was wanted is made to fit whole rings.
  unplaced: () => ['sweep', 'cloth', 'side', 'radius'],
  draw(draft, bench) {
    const read = circleFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = rounded(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: true,
      shapes: circleFigure(found.value),
      dimensions: dimensions(found.value, bench),
    };
  },
};

function dimensions(found: Rounded, bench: Bench): Dimension[] {
  const { asked, plan } = found;
  const { inner, outer } = plan.piece;
  const down = (from: number, to: number, by: DimensionOf) => lengthDown(0, [from, to], by, bench);
  const y = edgeAt(found);
  const half = toMm(asked.edge) / 2;
  const counted: DimensionOf =
    asked.what === 'flounce'
      ? { found: 'pieces' }
      : { given: asked.what === 'gores' ? 'gores' : 'panels' };
  return [
    down(0, plan.cutRadius, { found: 'cut-radius' }),
    down(0, plan.cutHem, { found: 'cut-hem' }),
    down(plan.cutRadius, inner, { given: 'seam' }),
    down(inner, outer, { given: 'long' }),
    down(outer, plan.cutHem, { given: 'hem' }),
    ...(asked.radius === undefined ? [] : [down(0, inner, { found: 'radius' })]),
    lengthAlong(y, [-asked.edge / 2, asked.edge / 2], { given: 'edge' }, bench),
    {
      from: { x: -half, y },
      to: { x: half, y },
      text: words.count(plan.pieces, asked.what),
      by: counted,
    },
  ];
}
