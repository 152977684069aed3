import { zonesWords as words } from '#words/calculations/zones-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import { type GatherZones, gatherZones } from '../../sewing/fullness/gather-zones.ts';
import { type ZonesAsked, zonesFields, zonesInput } from './fields.ts';
import { stripAt, zonesFigure } from './figure.ts';

/** The edge with its zones and its strip, both to scale along them. */
export const zonesDrawing: Drawing = {
  id: 'zones',
  // Of every zone that is gathered there are as many.
  unplaced: () => ['parts'],
  draw(draft, bench) {
    const read = zonesFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = gatherZones(zonesInput(read.value));
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: true,
      shapes: zonesFigure(read.value, found.value),
      dimensions: dimensions(read.value, found.value, bench),
    };
  },
};

function dimensions({ zones, ends, by }: ZonesAsked, plan: GatherZones, bench: Bench): Dimension[] {
  const low = stripAt(plan);
  const on = (y: number, from: number, to: number, of: DimensionOf) =>
    lengthAlong(y, [from, to], of, bench);
  let from: number = ends;
  const each = zones.map((zone) => {
    const to = from + zone;
    const one = on(0, from, to, { given: 'zones' });
    from = to;
    return one;
  });
  return [
    ...each,
    on(low, 0, ends, { given: 'ends' }),
    on(low, 0, plan.cut, by === 'strip' ? { given: 'strip' } : { found: 'strip' }),
  ];
}
