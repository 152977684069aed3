import { gathersWords as words } from '#words/calculations/gathers-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import { toMm } from '../../lengths/length.ts';
import { gathersFields } from './fields.ts';
import { gathersFigure, stripAt } from './figure.ts';
import { type Gathered, gathered } from './gathered.ts';

const { ring, ends } = gathersFields.specs;

/** The edge and its strip, both to scale along them. */
export const gathersDrawing: Drawing = {
  id: 'gathers',
  // The cloth and the sample are other pieces; how deep the strip is isn't seen along it.
  unplaced: (ask) => [
    ...['cloth', 'have', 'deep', 'top', 'hem', 'sampleFlat', 'sampleGathered'],
    ...(ring.is('open')(ask) && ask(ends).trim() !== '' ? ['seam'] : []),
  ],
  draw(draft, bench) {
    const read = gathersFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = gathered(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: true,
      shapes: gathersFigure(read.value, found.value.plan),
      dimensions: dimensions(found.value, bench),
    };
  },
};

function dimensions({ asked, input, plan }: Gathered, bench: Bench): Dimension[] {
  const low = stripAt(plan);
  const { edge, flat, parts } = input;
  const on = (y: number, from: number, to: number, of: DimensionOf) =>
    lengthAlong(y, [from, to], of, bench);
  const before = input.ends;
  const end = asked.ends === undefined ? 'seam' : 'ends';
  return [
    on(0, before, before + edge, { given: 'edge' }),
    {
      from: { x: toMm(before), y: 0 },
      to: { x: toMm(edge) + toMm(before), y: 0 },
      text: words.partsCount(parts),
      by: { given: 'parts' },
    },
    ...(asked.flat === undefined
      ? []
      : [on(0, before + edge - flat, before + edge, { given: 'flat' })]),
    on(low, 0, before, { given: end }),
    on(low, 0, plan.cut, asked.by === 'strip' ? { given: 'strip' } : { found: 'strip' }),
  ];
}
