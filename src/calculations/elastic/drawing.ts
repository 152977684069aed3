import { elasticWords as words } from '#words/calculations/elastic-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAt, lengthDown } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { elasticFields } from './fields.ts';
import { barsOf, elasticFigure, layersOf, onBar } from './figure.ts';
import { elasticOf, type Worked } from './worked.ts';

/** A section of the casing to scale, and what is measured round as bars, to a scale of their own. */
export const elasticDrawing: Drawing = {
  id: 'elastic',
  // A sample is another piece; the elastic is too thin to be seen.
  unplaced: () => ['sampleFlat', 'sampleWorn', 'sampleMost', 'thick'],
  draw(draft, bench) {
    const read = elasticFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = elasticOf(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: false,
      shapes: elasticFigure(found.value),
      dimensions: [
        ...section(found.value, bench),
        ...((draft.header ?? '').trim() === '' ? [] : [headerOf(found.value, bench)]),
        ...bars(found.value, bench),
      ],
    };
  },
};

function section(worked: Worked, bench: Bench): Dimension[] {
  const { asked, casing } = worked;
  const at = layersOf(worked);
  const down = (x: number, from: number, to: number, by: DimensionOf) =>
    lengthDown(x, [from, to], by, bench);
  const { header, width, ease, turn } = asked;
  const over = (casing.clear - width) / 2;
  return [
    down(0, -casing.allowance, 0, { found: 'allowance' }),
    down(at.elastic, header + over, header + over + width, { given: 'width' }),
    down(at.elastic, casing.stitch - ease, casing.stitch, { given: 'ease' }),
    down(at.inner, casing.stitch, casing.depth, { given: 'edge' }),
    down(at.turned, casing.depth - turn, casing.depth, { given: 'turn' }),
    down(0, 0, casing.stitch, { found: 'stitch' }),
  ];
}

/** Above the elastic; where none is typed there is none. */
function headerOf({ asked }: Worked, bench: Bench): Dimension {
  return lengthDown(0, [0, asked.header], { given: 'header' }, bench);
}

function bars(worked: Worked, bench: Bench): Dimension[] {
  const { plan, asked } = worked;
  const zero = exactLength(0);
  const on = (row: number, from: ExactLength, to: ExactLength, by: DimensionOf) =>
    lengthAt([onBar(worked, row, from), onBar(worked, row, to)], exactLength(to - from), by, bench);
  return [
    ...barsOf(worked).map(({ key, found, long }, row) =>
      on(row, zero, long, found ? { found: key } : { given: key }),
    ),
    ...(asked.lap === undefined ? [] : [on(0, plan.ring, plan.cut, { given: 'lap' })]),
    {
      from: onBar(worked, 0, zero),
      to: onBar(worked, 0, plan.ring),
      text: words.partsCount(asked.parts),
      by: { given: 'parts' },
    },
  ];
}
