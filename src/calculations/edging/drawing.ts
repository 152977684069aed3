import { drawingWords as words } from '#words/common/drawing-words.ts';
import type { Drawing } from '../../calculation/drawing.ts';
import { wholeUnder } from '../../drawing/whole-line.ts';
import { toMm } from '../../lengths/length.ts';
import { stripHoles } from '../../sewing/edging/strip-holes.ts';
import { joinProblems, stripJoins } from '../../sewing/edging/strip-joined.ts';
import { besideHole, closeOf } from './close-up.ts';
import { edgingFields } from './fields.ts';
import { stripOf } from './strip.ts';
import { wholeLines, wholeOf } from './whole.ts';

/** The strip near its cut end, or at its first corner, and under it the whole of it, as wide. */
export const edgingDrawing: Drawing = {
  id: 'edging',
  // What is followed is a list.
  unplaced: () => ['follow', 'offset'],
  draw(draft, bench) {
    const read = edgingFields.read(draft, bench);
    if (!read.ok) return undefined;
    const { stock, crossings } = read.value;
    const strip = stripOf(read.value);
    const found = stripHoles(strip);
    if (!found.ok || joinProblems(strip, stock, crossings).length > 0) return undefined;
    const { rows } = found.value;
    const close = closeOf(strip, rows);
    const under = wholeUnder(close.shapes, toMm(strip.length));
    const joins = stock === undefined ? undefined : stripJoins(strip, rows, stock, crossings);
    return {
      name: strip.corners.length > 0 ? words.stripCorner : words.strip,
      // A piece longer than the strip is drawn no further than it.
      toScale: close.whole && (stock === undefined || stock <= strip.length),
      shapes: [...close.shapes, ...wholeLines(read.value, joins?.at ?? [], under)],
      dimensions: [
        ...besideHole(read.value, found.value, close, bench),
        ...wholeOf(read.value, found.value, under, bench),
      ],
    };
  },
};
