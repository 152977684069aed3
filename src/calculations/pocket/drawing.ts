import { pocketWords as words } from '#words/calculations/pocket-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthAt, lengthDown } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { FigureShape, LineStyle, Point } from '../../drawing/figure.ts';
import { lineAcross, lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { exactLength, toMm, ZERO } from '../../lengths/length.ts';
import { pocketFields } from './fields.ts';
import { pocketOf, type Worked } from './worked.ts';

/** Half of the front from its centre line and waist, to scale; the patch as it is cut beside it. */
export const pocketDrawing: Drawing = {
  id: 'pocket',
  unplaced: () => ['hand', 'ease'],
  draw(draft, bench) {
    const read = pocketFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = pocketOf(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: true,
      shapes: [...front(found.value), ...cutShape(found.value)],
      dimensions: [
        ...placeDimensions(found.value, bench),
        ...cutDimensions(found.value, bench),
      ].filter(({ by }) => !('given' in by) || (draft[by.given] ?? '').trim() !== ''),
    };
  },
};

/** Where the side is drawn, in 1/8000 mm: of a pocket in the seam the front's width isn't known. */
function side({ asked, end }: Worked): number {
  return asked.front ?? end;
}

/** Corners of the pocket's opening and, of a patch, those below it, in mm. */
function corners({ asked, at }: Worked): Point[] {
  const { width, down, slant = ZERO, deep = ZERO } = asked;
  if (!at) return [];
  const [one, other] = [
    { x: toMm(at.near), y: toMm(down) },
    { x: toMm(at.far), y: toMm(at.downFar) },
  ];
  if (deep === 0) return [one, other];
  // Square to its opening, whatever that slants.
  const [sin, cos] = [slant / width, Math.sqrt(1 - (slant / width) ** 2)];
  const below = ({ x, y }: Point) => ({ x: x - toMm(deep) * sin, y: y + toMm(deep) * cos });
  return [one, other, below(other), below(one), one];
}

function front(worked: Worked): FigureShape[] {
  const { asked, end } = worked;
  const x = toMm(exactLength(side(worked)));
  const low = 1.15 * toMm(end);
  const shape = (line: LineStyle, by: number) =>
    lineThrough(line, ...corners(worked).map((point) => ({ ...point, x: by * point.x })));
  return [
    lineAcross('cloth', 0, [worked.at ? -x / 2 : 0, x]),
    lineDown('fold', 0, [0, low]),
    lineDown('cloth', x, [0, low]),
    ...(worked.at
      ? [shape(asked.kind === 'slash' ? 'cut' : 'placement', 1), shape('behind', -1)]
      : [lineDown('placement', x, [toMm(asked.down), toMm(end)])]),
  ];
}

function placeDimensions(worked: Worked, bench: Bench): Dimension[] {
  const { asked, at, end } = worked;
  const { width, down, deep, to } = asked;
  const x = side(worked);
  const deepAt = (from: number, long: readonly [number, number], by: DimensionOf) =>
    lengthDown(toMm(exactLength(from)), long, by, bench);
  const free = to === undefined ? [] : [deepAt(x, [0, to], { given: 'to' })];
  const level = [deepAt(at?.near ?? x, [0, down], { given: 'down' })];
  if (!at) {
    return [
      ...level,
      deepAt(x, [down, end], { given: 'width' }),
      deepAt(0, [0, end], { found: 'ends' }),
      ...free,
    ];
  }
  const [one, other, , below] = corners(worked);
  const along = (y: number, ends: readonly [number, number], by: DimensionOf) =>
    lengthAlong(y, ends, by, bench);
  return [
    ...(asked.front === undefined ? [] : [along(0, [0, asked.front], { given: 'front' })]),
    along(
      toMm(down),
      [0, at.near],
      asked.place === 'given' ? { given: 'near' } : { found: 'near' },
    ),
    ...(one && other ? [lengthAt([one, other], width, { given: 'width' }, bench)] : []),
    ...(one && below && deep !== undefined
      ? [lengthAt([one, below], deep, { given: 'deep' }, bench)]
      : []),
    ...level,
    deepAt(at.far, [down, at.downFar], { given: 'slant' }),
    ...free,
  ];
}

/** Where what is cut is drawn, from the side on, in 1/8000 mm. */
function beside(worked: Worked): number {
  return 1.3 * side(worked);
}

function cutShape(worked: Worked): FigureShape[] {
  const { asked, cut } = worked;
  if (!cut) return [];
  const left = toMm(exactLength(beside(worked)));
  const [right, low] = [left + toMm(cut.wide), toMm(cut.deep)];
  const fold = toMm(exactLength((asked.seam ?? ZERO) + (asked.hem ?? ZERO)));
  const outline = [
    { x: left, y: 0 },
    { x: right, y: 0 },
    { x: right, y: low },
    { x: left, y: low },
    { x: left, y: 0 },
  ];
  return [
    lineThrough('cut', ...outline),
    ...(asked.kind === 'patch' ? [lineAcross('fold', fold, [left, right])] : []),
  ];
}

function cutDimensions(worked: Worked, bench: Bench): Dimension[] {
  const { asked, cut } = worked;
  if (!cut) return [];
  const { kind, seam = ZERO, hem = ZERO } = asked;
  const left = beside(worked);
  const right = toMm(exactLength(left + cut.wide));
  const patch = kind === 'patch';
  const on = (y: number, long: number, by: DimensionOf) =>
    lengthAlong(y, [left, left + long], by, bench);
  const down = (from: number, to: number, by: DimensionOf) =>
    lengthDown(right, [from, to], by, bench);
  return [
    on(0, cut.wide, { found: patch ? 'wide' : 'facing-wide' }),
    down(0, cut.deep, { found: patch ? 'deep' : 'facing-long' }),
    ...(patch ? [on(toMm(cut.deep), seam, { given: 'seam' })] : []),
    ...(patch ? [down(seam, seam + hem, { given: 'hem' })] : []),
  ];
}
