import { centreWords as words } from '#words/calculations/centre-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAt } from '../../calculation/drawing.ts';
import { exactly } from '../../calculation/tape-text.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { Point } from '../../drawing/figure.ts';
import { countedRow, holesDrawn } from '../../drawing/row-figure.ts';
import { exactLength, toMm } from '../../lengths/length.ts';
import { type CountInput, centreByCount } from '../../sewing/edging/centre.ts';
import { centreFields, USUAL_PITCH_MM } from './fields.ts';

/** The middle of a row; all of it, and to scale, where it is short and its pitch is known. */
export const centreDrawing: Drawing = {
  id: 'centre',
  unplaced: () => [],
  draw(draft, bench) {
    const read = centreFields.read(draft, bench);
    if (!read.ok || !centreByCount(read.value).ok) return undefined;
    const { count, pitch, measured } = read.value;
    return {
      name: words.row,
      // A length that was measured is drawn as long as the holes are counted.
      toScale: holesDrawn(count) === count && pitch !== undefined && measured === undefined,
      shapes: countedRow(count, pitch === undefined ? USUAL_PITCH_MM : toMm(pitch)).filter(
        (shape) => 'line' in shape,
      ),
      dimensions: dimensions(read.value, bench),
    };
  },
};

function dimensions({ count, other, pitch, measured }: CountInput, bench: Bench): Dimension[] {
  const step = pitch === undefined ? USUAL_PITCH_MM : toMm(pitch);
  const last = (holesDrawn(count) - 1) * step;
  const at = (x: number): Point => ({ x, y: 0 });
  const ends = { from: at(0), to: at(last) };
  return [
    { ...ends, text: words.counted(count), by: { given: 'count' } },
    ...(other === undefined
      ? []
      : [
          {
            from: at(last),
            to: at(0),
            text: words.fromOther(other),
            by: { given: 'other' },
          } as const,
        ]),
    ...(measured === undefined
      ? []
      : [{ ...ends, text: exactly(measured, bench), by: { given: 'measured' } } as const]),
    ...(pitch === undefined
      ? []
      : [
          lengthAt([at(0), at(step)], pitch, { given: 'pitch' }, bench),
          lengthAt([at(0), at(last)], exactLength(pitch * (count - 1)), { found: 'span' }, bench),
        ]),
  ];
}
