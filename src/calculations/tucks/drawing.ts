import { tucksWords as words } from '#words/calculations/tucks-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import { exactLength, toMm } from '../../lengths/length.ts';
import { tuckFields } from './fields.ts';
import { tuckedAt, tucksFigure } from './figure.ts';
import { type Tucked, tucked } from './tucked.ts';

/** The cloth flat and tucked, both to scale along them. */
export const tucksDrawing: Drawing = {
  id: 'tucks',
  // A gap or spacing that was wanted is none of these; what each is deeper by is too little to be seen.
  unplaced: () => ['gap', 'spacing', 'step', 'radius'],
  draw(draft, bench) {
    const read = tuckFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = tucked(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: true,
      shapes: tucksFigure(found.value),
      dimensions: [...ofAll(found.value, bench), ...ofEach(found.value, bench)],
    };
  },
};

function ofAll(found: Tucked, bench: Bench): Dimension[] {
  const { asked, input, plan } = found;
  const y = tuckedAt(found);
  const { seam, finished, first, last, spread } = input;
  const on = (at: number, from: number, to: number, by: DimensionOf) =>
    lengthAlong(at, [from, to], by, bench);
  const end = exactLength(seam + finished);
  const across = on(y, seam, end, { given: 'finished' });
  const counted: DimensionOf = spread.by === 'count' ? { given: 'count' } : { found: 'count' };
  return [
    on(0, 0, plan.cut, { found: 'cut' }),
    on(0, 0, seam, { given: 'seam' }),
    on(y, seam, seam + first, { given: 'first' }),
    ...(asked.last === undefined ? [] : [on(y, end - last, end, { given: 'last' })]),
    across,
    { ...across, text: words.counted(plan.count), by: counted },
    ...(spread.by === 'groups'
      ? [{ ...across, text: words.groupsCount(spread.groups), by: { given: 'groups' } }]
      : []),
  ];
}

function ofEach(found: Tucked, bench: Bench): Dimension[] {
  const { input, plan } = found;
  const y = tuckedAt(found);
  const { seam, depth, lies, spread } = input;
  const at = (i: number) => exactLength(seam + (plan.places[i] ?? 0));
  const on = (from: number, to: number, by: DimensionOf) => lengthAlong(y, [from, to], by, bench);
  const tip = exactLength(at(0) + (lies === 'last' ? depth : -depth));
  const deep = on(Math.min(at(0), tip), Math.max(at(0), tip), { given: 'depth' });
  const one = plan.spacing === undefined ? [] : [on(at(0), at(1), { found: 'spacing' })];
  if (spread.by !== 'groups') return [deep, ...one];
  const group = {
    from: { x: toMm(at(0)), y },
    to: { x: toMm(at(spread.each - 1)), y },
    text: words.eachCount(spread.each),
    by: { given: 'each' },
  };
  return [deep, ...one, group, on(at(spread.each - 1), at(spread.each), { found: 'between' })];
}
