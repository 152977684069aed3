import { bandWords as words } from '#words/calculations/band-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthDown } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import { toMm } from '../../lengths/length.ts';
import { type Banded, banded } from './banded.ts';
import { bandFields } from './fields.ts';
import { bandFigure } from './figure.ts';

/** The band flat, to scale. */
export const bandDrawing: Drawing = {
  id: 'band',
  // Beyond the band itself, or too thin to be seen.
  unplaced: () => ['pass', 'edge', 'front', 'thickness', 'cloth'],
  draw(draft, bench) {
    const read = bandFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = banded(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: true,
      shapes: bandFigure(found.value),
      dimensions: dimensions(found.value, bench),
    };
  },
};

function dimensions({ asked, plan }: Banded, bench: Bench): Dimension[] {
  const { girth, ease, overlap, underlap, seam, wide, opens } = asked;
  const begins = seam + overlap;
  const end = begins + plan.round;
  const along = (from: number, to: number, y: number, by: DimensionOf) =>
    lengthAlong(y, [from, to], by, bench);
  const high = toMm(plan.across);
  return [
    along(0, plan.long, high, { found: 'long' }),
    along(begins, begins + girth, 0, { given: 'girth' }),
    along(begins + girth, begins + girth + ease, 0, { given: 'ease' }),
    ...(opens === 'ring'
      ? []
      : [
          along(seam, begins, 0, { given: 'overlap' }),
          along(end, end + underlap, 0, { given: 'underlap' }),
        ]),
    lengthDown(0, [0, seam], { given: 'seam' }, bench),
    lengthDown(toMm(seam), [seam, seam + wide], { given: 'wide' }, bench),
    lengthDown(toMm(plan.long), [0, plan.across], { found: 'across' }, bench),
  ];
}
