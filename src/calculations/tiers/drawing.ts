import { tiersWords as words } from '#words/calculations/tiers-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import { toMm } from '../../lengths/length.ts';
import { type Tiers, tiers } from '../../sewing/fullness/tiers.ts';
import { type TiersAsked, tiersFields, tiersInput } from './fields.ts';
import { tierRows, tiersFigure } from './figure.ts';
import { KEYS } from './keys.ts';

/** The edge and its tiers as they are cut, one below the other, to scale. */
export const tiersDrawing: Drawing = {
  id: 'tiers',
  // The cloth is another piece; lengths in all lie over the gaps between tiers.
  unplaced: () => ['cloth', 'long', 'count'],
  draw(draft, bench) {
    const read = tiersFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = tiers(tiersInput(read.value));
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: true,
      shapes: tiersFigure(read.value, found.value),
      dimensions: dimensions(read.value, found.value, bench),
    };
  },
};

function dimensions(asked: TiersAsked, plan: Tiers, bench: Bench): Dimension[] {
  const { edge, seam, between, hem, parts } = asked;
  const rows = tierRows(plan);
  const up = (x: number, from: number, deep: typeof edge, by: Dimension['by']) =>
    lengthAt(
      [
        { x, y: from },
        { x, y: from + toMm(deep) },
      ],
      deep,
      by,
      bench,
    );
  const longest = Math.max(...plan.tiers.map(({ cut }) => toMm(cut)));
  const [first, last] = [rows[0], rows.at(-1)];
  return [
    lengthAlong(0, [seam, seam + edge], { given: 'edge' }, bench),
    {
      from: { x: toMm(seam), y: 0 },
      to: { x: toMm(seam) + toMm(edge), y: 0 },
      text: words.partsCount(parts),
      by: { given: 'parts' },
    },
    ...plan.tiers.flatMap(({ cut, cutDeep, deep }, i) => {
      const row = rows[i];
      if (!row) return [];
      return [
        lengthAlong(row.bottom, [0, cut], { found: KEYS.strip(i) }, bench),
        up(0, row.top, cutDeep, { found: KEYS.deep(i) }),
        ...(asked.by === 'own'
          ? [up(longest, row.top + toMm(between), deep, { given: 'depths' })]
          : []),
      ];
    }),
    ...(first
      ? [
          up(longest, first.top, between, { given: 'between' }),
          lengthAlong(first.top, [0, seam], { given: 'seam' }, bench),
        ]
      : []),
    ...(last ? [up(longest, last.bottom - toMm(hem), hem, { given: 'hem' })] : []),
  ];
}
