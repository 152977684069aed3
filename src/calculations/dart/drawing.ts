import { dartWords as words } from '#words/calculations/dart-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { Point } from '../../drawing/figure.ts';
import { type ExactLength, toMm, ZERO } from '../../lengths/length.ts';
import { figureName } from './answer.ts';
import { type Darted, darted } from './darted.ts';
import { dartFields } from './fields.ts';
import { besideAt, dartFigure, edgePlaces, nextOf, placesOf } from './figure.ts';

/** A dart flat, to scale, with what it becomes. */
export const dartDrawing: Drawing = {
  id: 'dart',
  // The fullest part lies beyond the point, the piece beyond the drawing.
  unplaced: () => ['full', 'piece'],
  draw(draft, bench) {
    const read = dartFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = darted(read.value);
    if (!found.ok) return undefined;
    return {
      name: figureName(found.value.made.what),
      toScale: true,
      shapes: dartFigure(found.value),
      dimensions: dimensions(found.value, bench),
    };
  },
};

type On = (from: Point, to: Point, length: ExactLength, by: DimensionOf) => Dimension;

function dimensions(found: Darted, bench: Bench): Dimension[] {
  const { asked, dart, made } = found;
  const on: On = (from, to, length, by) => lengthAt([from, to], length, by, bench);
  if (made.what === 'edge') return ofEdge(found, on);
  const at = placesOf(dart);
  const widthBy: DimensionOf =
    made.what === 'two' || asked.by === 'width' ? { given: 'width' } : { found: 'width' };
  const width = on(at.near, at.far, dart.width, widthBy);
  if (made.what === 'two') {
    const middle = { x: 0, y: 0 };
    const low = { x: 0, y: -toMm(asked.below ?? ZERO) };
    return [
      width,
      on(middle, at.point, asked.above ?? ZERO, { given: 'above' }),
      on(low, middle, asked.below ?? ZERO, { given: 'below' }),
      on(at.near, at.point, made.legs.above, { found: 'leg' }),
      on(low, at.near, made.legs.below, { found: 'leg-below' }),
    ];
  }
  const leg = on(at.near, at.point, asked.leg ?? ZERO, { given: 'leg' });
  return [width, leg, ...beside(found, on)];
}

function beside(found: Darted, on: On): Dimension[] {
  const { asked, dart, made } = found;
  if (made.what === 'gathers') {
    const { strip } = made.gathered;
    const x = besideAt(dart, strip) - toMm(strip) / 2;
    const y = toMm(dart.middle) / 2;
    const zone = asked.zone ?? ZERO;
    return [
      on({ x, y: 0 }, { x: x + toMm(strip), y: 0 }, strip, { found: 'strip' }),
      on({ x, y }, { x: x + toMm(zone), y }, zone, { given: 'zone' }),
    ];
  }
  const next = nextOf(found);
  if (!next) return [];
  const x = besideAt(dart, next);
  const at = placesOf(next, x);
  if (made.what === 'seam') {
    const { taken } = made.seamed;
    const end = { ...at.point, x: x + toMm(taken) };
    return [
      on(at.near, at.far, next.width, { found: 'kept' }),
      on(at.point, end, taken, { found: 'taken' }),
    ];
  }
  const counted = words.count(asked.parts ?? 1);
  return [
    on(at.near, at.far, next.width, { found: 'moved' }),
    on(at.near, at.point, asked.reach ?? ZERO, { given: 'reach' }),
    { from: at.near, to: at.far, text: counted, by: { given: 'parts' } },
  ];
}

function ofEdge(found: Darted, on: On): Dimension[] {
  const { asked, dart, made } = found;
  if (made.what !== 'edge') return [];
  const at = edgePlaces(found);
  const by: DimensionOf = asked.by === 'width' ? { given: 'width' } : { found: 'width' };
  return [
    on(at.near, at.far, dart.width, by),
    on(at.near, at.point, asked.leg ?? ZERO, { given: 'leg' }),
    on({ x: 0, y: 0 }, at.point, dart.middle, { found: 'point' }),
    on(at.cutTip, at.point, made.edge.cutTip, { found: 'tip' }),
    on(at.seamEnd, at.end, asked.seam, { given: 'seam' }),
  ];
}
