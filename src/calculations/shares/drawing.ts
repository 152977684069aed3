import { sharesWords as words } from '#words/calculations/shares-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import { exactLength, toMm } from '../../lengths/length.ts';
import { sharesFields } from './fields.ts';
import { sharesAt, sharesBelow, sharesShapes } from './figure.ts';
import { KEYS } from './keys.ts';
import { type Changed, changedOf } from './read.ts';

/** The whole change as a line, each place's share once, and what is left. */
export const sharesDrawing: Drawing = {
  id: 'shares',
  // How fine it is shared, and the cloth there is beyond a stitch line.
  unplaced: () => ['step', 'allowance'],
  draw(draft, bench) {
    const read = sharesFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = changedOf(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: true,
      shapes: sharesShapes(found.value),
      dimensions: dimensions(found.value, bench),
    };
  },
};

function dimensions(found: Changed, bench: Bench): Dimension[] {
  const { asked, places, plan } = found;
  const y = sharesBelow(found);
  const on = (at: number, from: number, to: number, by: DimensionOf) =>
    lengthAlong(at, [from, to], by, bench);
  const starts = sharesAt(found);
  const taken = asked.change - plan.left;
  const shares = places.flatMap(({ field, count }, i): Dimension[] => {
    const [from, each] = [starts[i] ?? 0, plan.each[i] ?? 0];
    const ends = [from, from + count * each].map((x) => ({ x: toMm(exactLength(x)), y }));
    const [start, end] = ends as [(typeof ends)[number], (typeof ends)[number]];
    const counted = asked.what === 'girth';
    return [
      on(y, from, from + each, { found: KEYS[field][0] }),
      ...(counted
        ? [
            {
              from: start,
              to: end,
              text: words.counted(count, words.places[field]),
              by: { given: field },
            },
          ]
        : []),
    ];
  });
  return [
    on(0, 0, asked.change, { given: 'change' }),
    ...shares,
    ...(plan.left === 0
      ? []
      : [on(y, Math.min(taken, asked.change), Math.max(taken, asked.change), { found: 'left' })]),
  ];
}
