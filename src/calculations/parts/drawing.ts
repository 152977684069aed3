import { partsWords as words } from '#words/calculations/parts-words.ts';
import { type Drawing, lengthAlong } from '../../calculation/drawing.ts';
import type { DimensionOf } from '../../drawing/dimension.ts';
import type { FigureShape } from '../../drawing/figure.ts';
import { lineThrough } from '../../drawing/figure-line.ts';
import { rowMarks, type StandingRow } from '../../drawing/row-marks.ts';
import { type Length, toMm } from '../../lengths/length.ts';
import { type DividedEdge, equalParts } from '../../sewing/equal-parts.ts';
import { partsFields, partsInput } from './fields.ts';

/** How far apart two edges that meet are drawn, and how long a mark is, in parts of the longer. */
const APART = 0.16;
const MARK = 0.03;

/** An edge laid straight, its marks across it, over the edge it meets. */
export const partsDrawing: Drawing = {
  id: 'parts',
  unplaced: () => [],
  rows: ['marks', 'marks-other'],
  draw(draft, bench, rows) {
    const read = partsFields.read(draft, bench);
    if (!read.ok) return undefined;
    const { length, other, into } = read.value;
    const input = partsInput(read.value);
    const found = equalParts({ ...input, other });
    if (!found.ok) return undefined;
    const longest = toMm(length > (other ?? 0) ? length : (other ?? length));
    const met = found.value.other;
    const [here, there] = [0, APART * longest];
    const count: DimensionOf = into === 'other' ? { given: 'count' } : { given: 'into' };
    return {
      name: words.title,
      toScale: true,
      shapes: [
        ...edge(length, rows?.marks ?? planned(found.value.edge), here, MARK * longest),
        ...(met && other !== undefined
          ? edge(other, rows?.['marks-other'] ?? planned(met), there, MARK * longest)
          : []),
      ],
      dimensions: [
        lengthAlong(here, [0, length], { given: 'length' }, bench),
        lengthAlong(here, [0, found.value.edge.part], { found: 'part' }, bench),
        {
          from: { x: 0, y: here },
          to: { x: toMm(length), y: here },
          text: words.parts(input.parts),
          by: count,
        },
        ...(met && other !== undefined
          ? [
              lengthAlong(there, [0, other], { given: 'other' }, bench),
              lengthAlong(there, [0, met.part], { found: 'part-other' }, bench),
            ]
          : []),
      ],
    };
  },
};

function planned({ run }: DividedEdge): StandingRow {
  return { run, made: [] };
}

/** An edge with its marks across it, and a ring on each: full where it is made. */
function edge(length: Length, row: StandingRow, y: number, mark: number): FigureShape[] {
  return [
    lineThrough('cloth', { x: 0, y }, { x: toMm(length), y }),
    ...row.run.marks.map(({ at }) =>
      lineThrough('measure', { x: toMm(at), y: y - mark }, { x: toMm(at), y: y + mark }),
    ),
    ...rowMarks(row, (at) => ({ x: toMm(at), y }), mark / 2),
  ];
}
