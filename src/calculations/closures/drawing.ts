import { closuresWords as words } from '#words/calculations/closures-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { Point } from '../../drawing/figure.ts';
import { lineThrough } from '../../drawing/figure-line.ts';
import { rowMarks } from '../../drawing/row-marks.ts';
import { type ExactLength, toMm, ZERO } from '../../lengths/length.ts';
import { spaceClosures } from '../../sewing/closures/closures.ts';
import type { Run } from '../../sewing/run.ts';
import { type ClosuresAsked, closureFields } from './fields.ts';
import { closuresInput } from './input.ts';

/** A mark is drawn so large, in parts of the opening. */
const MARK = 0.012;

const { by, ends } = closureFields.specs;

/** The row along its opening, to scale. */
export const closuresDrawing: Drawing = {
  id: 'closures',
  // What lies across the edge is too small beside its length, and what is sewn is a list.
  unplaced: (ask) => [
    'sewn',
    'follow',
    'offset',
    'leastGap',
    'setBack',
    'lap',
    // The most a space may be is no space of this row.
    ...(by.is('widest')(ask) ? ['pitch'] : []),
    ...(ends.is('given')(ask) ? [] : ['top', 'bottom']),
  ],
  rows: ['marks'],
  draw(draft, bench, rows) {
    const read = closureFields.read(draft, bench);
    if (!read.ok) return undefined;
    const row = spaceClosures(closuresInput(read.value));
    if (!row.ok) return undefined;
    const { opening } = read.value;
    const whole = toMm(opening);
    const standing = rows?.marks ?? { run: row.value.run, made: [] };
    return {
      name: words.title,
      toScale: true,
      shapes: [
        lineThrough('cloth', place(ZERO), place(opening)),
        ...[0, whole].map((x) =>
          lineThrough('cloth', { x, y: -0.03 * whole }, { x, y: 0.03 * whole }),
        ),
        ...rowMarks(standing, place, MARK * whole),
      ],
      dimensions: dimensions(read.value, standing.run, bench),
    };
  },
};

function dimensions(asked: ClosuresAsked, { marks }: Run, bench: Bench): Dimension[] {
  const { opening, level, width, gap, item } = asked;
  const places = marks.map(({ at }) => at);
  const [first = ZERO] = places;
  const last = places.at(-1) ?? first;
  const of = (from: number, to: number, one: DimensionOf): Dimension[] => [
    lengthAlong(0, [from, to], one, bench),
  ];
  const half = (width ?? 0) / 2;
  const widest = widestOf(places);
  const counted = asked.count !== undefined ? { given: 'count' } : { found: 'count' };
  return [
    ...of(0, opening, { given: 'opening' }),
    ...(asked.top !== undefined && asked.bottom !== undefined
      ? [
          ...of(0, asked.top, { given: 'top' }),
          ...of(opening - asked.bottom, opening, { given: 'bottom' }),
        ]
      : []),
    {
      from: place(first),
      to: place(last),
      text: words.counted(marks.length, words.items[item]),
      by: counted,
    },
    ...(level === undefined ? [] : of(0, level, { given: 'level' })),
    ...(asked.by === 'exact' ? of(first, first + (asked.pitch ?? 0), { given: 'pitch' }) : []),
    ...(asked.by === 'exact' || !widest ? [] : of(...widest, { found: 'space' })),
    ...(width === undefined ? [] : of(first - half, first + half, { given: 'width' })),
    ...(gap === undefined ? [] : of(first + half, first + half + gap, { given: 'gap' })),
  ];
}

/** Both ends of the widest space of the row as it stands, the first of several; none of one mark. */
function widestOf(places: readonly ExactLength[]): [ExactLength, ExactLength] | undefined {
  let widest: [ExactLength, ExactLength] | undefined;
  for (const [i, to] of places.entries()) {
    const from = places[i - 1];
    if (from === undefined) continue;
    if (!widest || to - from > widest[1] - widest[0]) widest = [from, to];
  }
  return widest;
}

function place(at: ExactLength): Point {
  return { x: toMm(at), y: 0 };
}
