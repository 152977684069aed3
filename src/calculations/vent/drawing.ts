import { ventWords as words } from '#words/calculations/vent-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthDown } from '../../calculation/drawing.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { FigureShape } from '../../drawing/figure.ts';
import { lineAcross, lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import { type VentAsked, ventFields } from './fields.ts';
import { ventOf, type Worked } from './worked.ts';

/** The garment unrolled flat from its top edge down, a vent in its middle; what has to pass behind it. */
export const ventDrawing: Drawing = {
  id: 'vent',
  unplaced: () => [],
  draw(draft, bench) {
    const read = ventFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = ventOf(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.title,
      toScale: true,
      shapes: shapes(read.value, found.value),
      dimensions: dimensions(read.value, found.value, bench),
    };
  },
};

/** A round at a level, as a line with its middle above the vent's. */
const flat = (round: ExactLength, level: ExactLength, style: 'cloth' | 'behind') =>
  lineAcross(style, toMm(level), [-toMm(round) / 2, toMm(round) / 2]);

function shapes(read: VentAsked, { room, vent }: Worked): FigureShape[] {
  const { seat, hem, down, long, top, bodyTop, stride } = read;
  const zero = exactLength(0);
  const sides = [-1, 1].map((side) =>
    lineThrough(
      'cloth',
      ...(top === undefined ? [] : [{ x: (side * toMm(top)) / 2, y: 0 }]),
      { x: (side * toMm(seat)) / 2, y: toMm(down) },
      { x: (side * toMm(hem)) / 2, y: toMm(long) },
    ),
  );
  return [
    ...sides,
    flat(hem, long, 'cloth'),
    flat(top ?? seat, top === undefined ? down : zero, 'cloth'),
    flat(room.needs, down, 'behind'),
    ...(bodyTop === undefined ? [] : [flat(bodyTop, zero, 'behind')]),
    ...(stride === undefined ? [] : [flat(stride, long, 'behind')]),
    ...(vent && vent.by !== 'closed' ? [lineDown('cut', 0, [toMm(vent.begins), toMm(long)])] : []),
  ];
}

function dimensions(read: VentAsked, { room, vent }: Worked, bench: Bench): Dimension[] {
  const { hip, ease, seat, hem, down, long, stride, top, bodyTop } = read;
  const round = (of: ExactLength, level: ExactLength, by: Dimension['by']) =>
    lengthAlong(toMm(level), [-of / 2, of / 2], by, bench);
  const edge = toMm(exactLength(Math.max(seat, hem, room.needs))) / 2;
  const deep = (x: number, ends: readonly [number, number], by: Dimension['by']) =>
    lengthDown(x, ends, by, bench);
  const zero = exactLength(0);
  return [
    round(seat, down, { given: 'seat' }),
    round(hem, long, { given: 'hem' }),
    round(hip, down, { given: 'hip' }),
    round(room.needs, down, { found: 'needs' }),
    lengthAlong(toMm(down), [hip / 2, hip / 2 + ease], { given: 'ease' }, bench),
    deep(-edge, [zero, down], { given: 'down' }),
    deep(-edge, [zero, long], { given: 'long' }),
    ...(stride === undefined ? [] : [round(stride, long, { given: 'stride' })]),
    ...(top === undefined ? [] : [round(top, zero, { given: 'top' })]),
    ...(bodyTop === undefined ? [] : [round(bodyTop, zero, { given: 'bodyTop' })]),
    ...(vent && vent.by !== 'closed'
      ? [
          deep(0, [zero, vent.begins], { found: 'begins' }),
          deep(0, [vent.begins, long], { found: 'vent' }),
        ]
      : []),
  ];
}
