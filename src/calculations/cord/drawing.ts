import { cordWords as words } from '#words/calculations/cord-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAt, lengthDown } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { type Corded, corded } from './corded.ts';
import { cordFields } from './fields.ts';
import { cordFigure, cordFrom, layersOf, onBar } from './figure.ts';

/** A section of the casing, and the cord over its channel, to a scale of their own. */
export const cordDrawing: Drawing = {
  id: 'cord',
  // A knot is tied in what is drawn straight.
  unplaced: () => ['knot'],
  draw(draft, bench) {
    const read = cordFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = corded(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: false,
      shapes: cordFigure(found.value),
      dimensions: [
        ...section(found.value, bench),
        ...((draft.header ?? '').trim() === '' ? [] : [headerOf(found.value, bench)]),
        ...bars(found.value, bench),
      ],
    };
  },
};

function section(found: Corded, bench: Bench): Dimension[] {
  const { input, plan } = found;
  const at = layersOf(found);
  const { allowance, stitch, depth, clear } = plan.casing;
  const down = (x: number, from: number, to: number, by: DimensionOf) =>
    lengthDown(x, [from, to], by, bench);
  const { header } = input;
  const over = header + (clear - input.thick) / 2;
  return [
    down(0, -allowance, 0, { found: 'allowance' }),
    down(0, 0, stitch, { found: 'stitch' }),
    down(at.cord, over, over + input.thick, { given: 'thick' }),
    down(at.inner, stitch, depth, { given: 'edge' }),
    down(at.turned, depth - input.turn, depth, { given: 'turn' }),
  ];
}

function headerOf(found: Corded, bench: Bench): Dimension {
  return lengthDown(layersOf(found).inner, [0, found.input.header], { given: 'header' }, bench);
}

function bars(found: Corded, bench: Bench): Dimension[] {
  const { input, plan } = found;
  const zero = exactLength(0);
  const from = cordFrom(found);
  const on = (row: 0 | 1, [start, end]: readonly [ExactLength, ExactLength], by: DimensionOf) =>
    lengthAt(
      [onBar(found, row, start), onBar(found, row, end)],
      exactLength(end - start),
      by,
      bench,
    );
  const all = [from, exactLength(from + plan.cut)] as const;
  const free = [exactLength(-plan.free), zero] as const;
  return [
    on(1, [zero, input.widest], { given: 'widest' }),
    on(0, all, input.how.by === 'there' ? { given: 'there' } : { found: 'cut' }),
    on(0, free, input.how.by === 'free' ? { given: 'free' } : { found: 'free' }),
  ];
}
