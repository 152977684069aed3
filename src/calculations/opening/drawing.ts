import { openingWords as words } from '#words/calculations/opening-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthDown } from '../../calculation/drawing.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { FigureShape } from '../../drawing/figure.ts';
import { lineAcross, lineDown } from '../../drawing/figure-line.ts';
import { toMm } from '../../lengths/length.ts';
import { opensTo, type Pass, passOver } from '../../sewing/wearer/pass-over.ts';
import { type OpeningAsked, openingFields } from './fields.ts';

/** How far apart the rounds are drawn, in parts of what passes. */
const APART = 0.14;

/** The edge laid straight with its opening below it; above it what has to pass. */
export const openingDrawing: Drawing = {
  id: 'opening',
  unplaced: () => [],
  draw(draft, bench) {
    const read = openingFields.read(draft, bench);
    if (!read.ok || (read.value.slit !== undefined && read.value.slit <= 0)) return undefined;
    const found = passOver(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.title,
      toScale: true,
      shapes: shapes(read.value, found.value),
      dimensions: dimensions(read.value, found.value, bench),
    };
  },
};

const up = (i: number, { needs }: Pass) => -i * APART * toMm(needs);

function shapes(read: OpeningAsked, pass: Pass): FigureShape[] {
  const { edge, slit, below, down } = read;
  const middle = toMm(edge) / 2;
  const opened = toMm(slit ?? pass.least);
  const long = toMm(opensTo(edge, slit ?? pass.least));
  return [
    lineAcross('cloth', 0, [0, 2 * middle]),
    lineDown('cut', middle, [0, opened]),
    lineAcross('fold', up(1, pass), [0, long]),
    lineAcross('behind', up(2, pass), [0, toMm(pass.needs)]),
    ...(below !== undefined && down !== undefined
      ? [lineAcross('cloth', toMm(down), [0, toMm(below)])]
      : []),
  ];
}

function dimensions(read: OpeningAsked, pass: Pass, bench: Bench): Dimension[] {
  const { body, edge, slit, below, down } = read;
  const { needs, least, by } = pass;
  const x = toMm(edge) / 2;
  const along = (y: number, ends: readonly [number, number], of: Dimension['by']) =>
    lengthAlong(y, ends, of, bench);
  const deep = (at: number, long: number, of: Dimension['by']) =>
    lengthDown(at, [0, long], of, bench);
  return [
    along(0, [0, edge], { given: 'edge' }),
    along(up(2, pass), [0, body], { given: 'body' }),
    along(up(2, pass), [body, needs], { given: 'ease' }),
    along(up(2, pass), [0, needs], { found: 'needs' }),
    ...(by === 'closed' && slit === undefined
      ? []
      : [along(up(1, pass), [0, opensTo(edge, slit ?? least)], { found: 'opens' })]),
    ...(slit === undefined ? [] : [deep(x, slit, { given: 'slit' })]),
    ...(by === 'closed' ? [] : [deep(x, least, { found: 'least' })]),
    ...(below !== undefined && down !== undefined
      ? [along(toMm(down), [0, below], { given: 'below' }), deep(0, down, { given: 'down' })]
      : []),
  ];
}
