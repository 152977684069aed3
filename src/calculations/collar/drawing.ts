import { collarWords as words } from '#words/calculations/collar-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import { type Collar, collar } from '../../sewing/bands/collar.ts';
import { type CollarAsked, collarFields } from './fields.ts';
import { collarAt, collarFigure } from './figure.ts';

/** Both pieces, to scale, curved edges laid straight. */
export const collarDrawing: Drawing = {
  id: 'collar',
  // Too thin to be seen.
  unplaced: () => ['upperThick', 'underThick', 'between', 'under'],
  draw(draft, bench) {
    const read = collarFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = collar(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: true,
      shapes: collarFigure(read.value, found.value),
      // What was left out has no place; nothing that was typed has one, too.
      dimensions: dimensions(read.value, found.value, bench).filter(
        ({ by }) => !('given' in by) || (draft[by.given] ?? '').trim() !== '',
      ),
    };
  },
};

function dimensions(asked: CollarAsked, plan: Collar, bench: Bench): Dimension[] {
  const { front, back, past, deep, stand, outer, seam, under } = asked;
  const at = collarAt(plan);
  const begins = seam + under + past;
  const on = (y: number, from: number, to: number, by: DimensionOf) =>
    lengthAlong(y, [from, to], by, bench);
  const up = (x: number, y: number, of: ExactLength, by: DimensionOf) =>
    lengthAt(
      [
        { x, y: y - toMm(of) },
        { x, y },
      ],
      of,
      by,
      bench,
    );
  const [neck, end] = [at.upper - toMm(seam), toMm(plan.upper.long)];
  return [
    ...(outer === undefined ? [] : [on(at.outer, 0, outer, { given: 'outer' })]),
    on(at.upper - toMm(plan.upper.wide), 0, plan.upper.long, { found: 'upper-long' }),
    up(end, at.upper, plan.upper.wide, { found: 'upper-wide' }),
    on(at.upper, begins - past, begins, { given: 'past' }),
    on(at.upper, begins, begins + front, { given: 'front' }),
    on(at.upper, begins + front, begins + front + back, { given: 'back' }),
    up(0, neck, deep, { given: 'deep' }),
    up(toMm(exactLength(begins)), neck, stand, { given: 'stand' }),
    up(0, at.upper, seam, { given: 'seam' }),
    on(at.under, 0, plan.under.long, { found: 'under-long' }),
    up(toMm(plan.under.long), at.under, plan.under.wide, { found: 'under-wide' }),
  ];
}
