import { flareWords as words } from '#words/calculations/flare-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { Point } from '../../drawing/figure.ts';
import { type ExactLength, toMm, ZERO } from '../../lengths/length.ts';
import { type FlareAsked, flareFields } from './fields.ts';
import { flareAt, flareFigure, piecePlaces, wedgePlaces } from './figure.ts';
import { type Flared, flared } from './flared.ts';

/** Both hems, and what is put in, or the piece: to scale, arcs laid straight. */
export const flareDrawing: Drawing = {
  id: 'flare',
  // Outside what is drawn; an arc that was wanted is part of the hem.
  unplaced: () => ['seam', 'hemMore', 'added', 'wanted'],
  draw(draft, bench) {
    const read = flareFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = flared(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: true,
      shapes: flareFigure(read.value, found.value),
      dimensions: dimensions(read.value, found.value, bench),
    };
  },
};

type On = (from: Point, to: Point, of: ExactLength | undefined, by: DimensionOf) => Dimension;

function dimensions(asked: FlareAsked, found: Flared, bench: Bench): Dimension[] {
  const on: On = (from, to, of, by) => lengthAt([from, to], of ?? ZERO, by, bench);
  const counted = (from: Point, to: Point, text: string, given: string): Dimension => ({
    ...{ from, to, text },
    by: { given },
  });
  if (found.what === 'length') return ofPiece(asked, found, on, counted);
  const at = flareAt(asked);
  const [before, after] = [toMm(asked.sweep), toMm(found.plan.hem)];
  const hems = [
    on({ x: 0, y: at.before }, { x: before, y: at.before }, asked.sweep, { given: 'sweep' }),
    on({ x: 0, y: at.after }, { x: after, y: at.after }, found.plan.hem, { found: 'hem' }),
  ];
  const places = wedgePlaces(asked, found);
  if (!places) return hems;
  const { point, near, far } = places;
  if (found.what === 'slash') {
    const by: DimensionOf = asked.by === 'spread' ? { given: 'spread' } : { found: 'spread' };
    return [
      on(point, { ...point, y: 0 }, asked.long, { given: 'long' }),
      on(near, far, found.plan.spread, by),
      counted(near, far, words.slashCount(asked.slashes ?? 1), 'slashes'),
      ...hems,
    ];
  }
  return [
    on(point, near, asked.edge, { given: 'edge' }),
    on(near, far, found.plan.chord, { found: 'chord' }),
    counted(near, far, words.godetCount(asked.godets ?? 1), 'godets'),
    ...hems,
  ];
}

function ofPiece(
  asked: FlareAsked,
  found: Flared,
  on: On,
  counted: (from: Point, to: Point, text: string, given: string) => Dimension,
): Dimension[] {
  const { upper, sweep, hem, long, then } = piecePlaces(asked, found);
  const across = (half: number, y: number) =>
    [
      { x: -half, y },
      { x: half, y },
    ] as const;
  const [top, bottom] = [across(upper, 0), across(sweep, long)];
  return [
    on(...top, asked.upper, { given: 'upper' }),
    on(...bottom, asked.sweep, { given: 'sweep' }),
    on({ x: 0, y: 0 }, { x: 0, y: long }, asked.long, { given: 'long' }),
    on({ x: 0, y: Math.min(long, then) }, { x: 0, y: Math.max(long, then) }, asked.change, {
      given: 'change',
    }),
    on(...across(hem, then), found.plan.hem, { found: 'hem' }),
    counted(...bottom, words.pieceCount(asked.pieces ?? 1), 'pieces'),
  ];
}
