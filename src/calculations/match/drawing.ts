import { matchWords as words } from '#words/calculations/match-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import { totalOf } from '../../sewing/pieces/matching-input.ts';
import { fewerOf } from '../../sewing/pieces/matching-pairs.ts';
import { matchFields } from './fields.ts';
import { matchShapes, otherAt } from './figure.ts';
import { fewer, UNPAIRED } from './pairs.ts';
import { type Matched, matchedOf } from './read.ts';

/** Both edges, each length on each, and on the longer what it is longer by. */
export const matchDrawing: Drawing = {
  id: 'match',
  unplaced: (ask) => (fewer(ask) ? ['parts'] : []),
  draw(draft, bench) {
    const read = matchFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = matchedOf(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.edges,
      toScale: true,
      shapes: matchShapes(found.value),
      dimensions: dimensions(found.value, bench),
    };
  },
};

function dimensions({ asked, plan }: Matched, bench: Bench): Dimension[] {
  const low = otherAt(plan);
  const on = (y: number, from: number, to: number, by: DimensionOf) =>
    lengthAlong(y, [from, to], by, bench);
  const given = (lengths: readonly ExactLength[], y: number, key: string) =>
    starts(lengths).map((from, i) => on(y, from, from + (lengths[i] ?? 0), { given: key }));
  const others = plan.lengths.map(({ other }) => other);
  const [heres, theres] = [starts(plan.lengths.map(({ here }) => here)), starts(others)];
  const eases = plan.lengths.flatMap(({ here, other, ease }, i) => {
    if (ease === 0) return [];
    const found = { found: plan.fewer ? UNPAIRED : `ease-${i + 1}` };
    return ease > 0
      ? [on(low, (theres[i] ?? 0) + here, (theres[i] ?? 0) + other, found)]
      : [on(0, (heres[i] ?? 0) + other, (heres[i] ?? 0) + here, found)];
  });
  return [
    ...given(asked.here, 0, 'here'),
    ...given(asked.other, low, 'other'),
    ...eases,
    ...aloneOf({ asked, plan }),
    ...(plan.fewer ? [] : [partsOf(asked)]),
  ];
}

/** Which notches meet none, written where the edge with more of them has its notches. */
function aloneOf({
  asked: { here, other, alone },
  plan,
}: Pick<Matched, 'asked' | 'plan'>): Dimension[] {
  const fewer = fewerOf({ here, other });
  if (!fewer) return [];
  const notches = starts(fewer === 'here' ? other : here).slice(1);
  const y = fewer === 'here' ? otherAt(plan) : 0;
  const at = (x = 0) => ({ x: toMm(exactLength(x)), y });
  const text = alone.length > 0 ? alone.join('; ') : words.which;
  return [{ from: at(notches[0]), to: at(notches.at(-1)), text, by: { given: 'alone' } }];
}

/** So many parts, written along the first length. */
function partsOf({ here, parts }: Matched['asked']): Dimension {
  return {
    from: { x: 0, y: 0 },
    to: { x: toMm(here[0] ?? exactLength(0)), y: 0 },
    text: words.parts(parts),
    by: { given: 'parts' },
  };
}

/** Where each length begins. */
function starts(lengths: readonly ExactLength[]): number[] {
  return lengths.map((_, i) => totalOf(lengths.slice(0, i)));
}
