import { dartsWords as words } from '#words/calculations/darts-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import { type ExactLength, exactLength, toMm, ZERO } from '../../lengths/length.ts';
import { dartsFields } from './fields.ts';
import { dartsAt, dartsFigure, startsOf } from './figure.ts';
import { KEYS } from './keys.ts';
import { type Taken, taken } from './taken.ts';

/** Both girths, what each place takes of their difference, and a dart of each kind. */
export const dartsDrawing: Drawing = {
  id: 'darts',
  // How fine it is shared, and what the figures of levels say.
  unplaced: () => ['step', 'levels', 'girths'],
  draw(draft, bench) {
    const read = dartsFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = taken(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: false,
      shapes: dartsFigure(found.value),
      dimensions: dimensions(found.value, bench),
    };
  },
};

function dimensions(found: Taken, bench: Bench): Dimension[] {
  const { asked, plan } = found;
  const at = dartsAt(found);
  const on = (y: number, ends: readonly [number, number], x: ExactLength, by: DimensionOf) =>
    lengthAt(
      [
        { x: ends[0], y },
        { x: ends[1], y },
      ],
      x,
      by,
      bench,
    );
  return [
    on(at.larger, [at.begins, at.all], asked.larger, { given: 'larger' }),
    on(at.smaller, [at.begins, 0], asked.smaller, { given: 'smaller' }),
    on(at.smaller, [0, at.all], plan.intake, { found: 'intake' }),
    ...shares(found, bench),
  ];
}

function shares(found: Taken, bench: Bench): Dimension[] {
  const { takers, input, plan } = found;
  const y = dartsAt(found).shares;
  const starts = startsOf(found);
  return takers.flatMap((taker, i): Dimension[] => {
    const [from, each, kind] = [starts[i] ?? 0, plan.each[i] ?? ZERO, input.kinds[i]];
    const count = kind?.count ?? 0;
    const one = lengthAlong(y, [from, from + each], { found: KEYS[taker] }, bench);
    const all = lengthAlong(y, [from, from + count * each], { given: taker }, bench);
    const text = words.counted(count, words.one[taker], words.many[taker]);
    const x = toMm(exactLength(from + each / 2));
    const long =
      kind?.long &&
      lengthAt(
        [
          { x, y },
          { x, y: toMm(kind.long.length) },
        ],
        kind.long.length,
        { given: kind.long.field },
        bench,
      );
    return [one, { ...all, text }, ...(long ? [long] : [])];
  });
}
