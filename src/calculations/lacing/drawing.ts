import { drawingWords as words } from '#words/common/drawing-words.ts';
import type { Drawing } from '../../calculation/drawing.ts';
import { boundsOf } from '../../drawing/figure.ts';
import { lacingFigure } from '../../drawing/lacing-figure.ts';
import { placedPaths } from '../../drawing/lacing-path.ts';
import { wholeUnder } from '../../drawing/whole-line.ts';
import { exactLength, toMm } from '../../lengths/length.ts';
import { lace } from '../../sewing/lacing/lacing.ts';
import { drawnOf } from './drawn.ts';
import { laceLines, laceOf } from './lace-drawn.ts';
import { lacingRead } from './read.ts';
import { layersLines, ofRow, rowLines } from './rows-drawn.ts';

/** A few stitches from the front, a second row, the layers from their side, and all of the lace laid straight. */
export const lacingDrawing: Drawing = {
  id: 'lacing',
  unplaced: () => [],
  draw(draft, bench) {
    const read = lacingRead(draft, bench);
    if (!read.ok) return undefined;
    const { input, second, ownPitch, drawn: steps } = read.value;
    const [first, other] = [lace(input), second && lace(second)];
    if (!first.ok || (other && !other.ok)) return undefined;
    const drawn = drawnOf(input, first.value.strands, steps);
    const { seen } = placedPaths(drawn);
    const front = lacingFigure(drawn, 'front').filter((shape) => 'line' in shape);
    const bounds = boundsOf(front);
    const two = second && rowLines(second, seen, bounds);
    const layers = layersLines(input, seen, two ? boundsOf([...front, ...two.shapes]) : bounds);
    const close = [...front, ...(two?.shapes ?? []), ...layers.shapes];
    const rows = [first.value, ...(other ? [other.value] : [])];
    const all = rows.reduce((sum, { total }) => exactLength(sum + total), exactLength(0));
    const under = wholeUnder(close, toMm(all));
    return {
      name: words.lacing,
      // A stretch of the row, and the lace as wide as it.
      toScale: false,
      shapes: [...close, ...laceLines(rows, input, under)],
      dimensions: [
        ...ofRow(input, seen, layers.top, bench),
        ...(second && two ? two.dimensions(second, ownPitch, bench) : []),
        ...laceOf(rows, input, under, bench),
      ],
    };
  },
};
