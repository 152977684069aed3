import { placketWords as words } from '#words/calculations/placket-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthDown } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { FigureShape } from '../../drawing/figure.ts';
import { lineAcross, lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { exactLength, toMm, ZERO } from '../../lengths/length.ts';
import { placketFields } from './fields.ts';
import { placketOf, type Worked } from './worked.ts';

/** The opening from its edge down, and the strip or the zip beside it, to scale. */
export const placketDrawing: Drawing = {
  id: 'placket',
  // What passes stands on the drawing of that question; it would dwarf the strip here.
  unplaced: () => ['body', 'edge', 'ease'],
  draw(draft, bench) {
    const read = placketFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = placketOf(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: true,
      shapes: [...opening(found.value), ...strip(found.value), ...zip(found.value)],
      dimensions: [
        openDimension(found.value, bench),
        ...stripDimensions(found.value, bench),
        ...zipDimensions(found.value, bench),
      ],
    };
  },
};

/** How far right of the opening strip and zip are drawn, in 1/8000 mm. */
function beside({ open, strips }: Worked): number {
  return 0.4 * (strips?.long ?? open);
}

function opening(worked: Worked): FigureShape[] {
  const { open } = worked;
  const half = toMm(exactLength(beside(worked))) / 2;
  return [lineAcross('cloth', 0, [-half, half]), lineDown('cut', 0, [0, toMm(open)])];
}

function openDimension({ asked, open }: Worked, bench: Bench): Dimension {
  const found = asked.way === 'zip' ? 'open' : 'slit';
  const by: DimensionOf = asked.by === 'given' ? { given: 'open' } : { found };
  return lengthDown(0, [0, open], by, bench);
}

function strip(worked: Worked): FigureShape[] {
  const { strips } = worked;
  if (!strips) return [];
  const left = toMm(exactLength(beside(worked)));
  const [right, low] = [left + toMm(strips.wide), toMm(strips.long)];
  const corners = [
    { x: left, y: 0 },
    { x: right, y: 0 },
    { x: right, y: low },
    { x: left, y: low },
    { x: left, y: 0 },
  ];
  return [lineThrough('cut', ...corners), lineDown('fold', (left + right) / 2, [0, low])];
}

function stripDimensions(worked: Worked, bench: Bench): Dimension[] {
  const { asked, strips } = worked;
  if (!strips) return [];
  const { width = ZERO, seam = ZERO, extra = ZERO } = asked;
  const left = beside(worked);
  const low = toMm(strips.long);
  const right = toMm(exactLength(left + strips.wide));
  const on = (y: number, from: number, long: number, by: DimensionOf) =>
    lengthAlong(y, [left + from, left + from + long], by, bench);
  return [
    lengthDown(right, [0, strips.long], { found: 'strip' }, bench),
    lengthDown(right, [0, extra], { given: 'extra' }, bench),
    on(0, 0, strips.wide, { found: 'wide' }),
    on(low, 0, seam, { given: 'seam' }),
    on(low, seam, width, { given: 'width' }),
    ...(strips.facing === undefined ? [] : [on(low, 0, strips.facing, { found: 'facing' })]),
  ];
}

function zip(worked: Worked): FigureShape[] {
  const { asked, open } = worked;
  if (!worked.zip) return [];
  const x = toMm(exactLength(beside(worked)));
  const [row, allow] = [toMm(asked.row ?? ZERO), toMm(asked.allow ?? ZERO)];
  const tape = lineDown('measure', x, [0, toMm(worked.zip.long)]);
  const stop = worked.zip.shorten && lineAcross('stitch', toMm(open), [x - row, x + row]);
  const sewn = [-row, row].map((at) => lineDown('stitch', at, [0, toMm(open)]));
  return [tape, ...(stop ? [stop] : []), ...sewn, lineDown('cloth', allow, [0, toMm(open)])];
}

function zipDimensions(worked: Worked, bench: Bench): Dimension[] {
  const { asked, open } = worked;
  if (!worked.zip) return [];
  const { row = ZERO, allow = ZERO } = asked;
  const { long, left, shorten } = worked.zip;
  const x = toMm(exactLength(beside(worked)));
  const low = toMm(open);
  const down = (from: number, to: number, by: DimensionOf) => lengthDown(x, [from, to], by, bench);
  return [
    down(0, long, asked.zip === undefined ? { found: 'zip' } : { given: 'zip' }),
    ...(left > 0 ? [down(open, long, { found: 'left' })] : []),
    ...(shorten ? [down(0, shorten.cut, { found: 'cut' })] : []),
    lengthAlong(low, [0, row], { given: 'row' }, bench),
    lengthAlong(0, [0, allow], { given: 'allow' }, bench),
  ];
}
