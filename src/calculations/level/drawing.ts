import { levelWords as words } from '#words/calculations/level-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import { exactLength, ZERO } from '../../lengths/length.ts';
import { type HemLevel, hemLevel } from '../../sewing/hems/hem-level.ts';
import { mostTrimmed } from './answer.ts';
import { type LevelAsked, levelFields } from './fields.ts';
import { levelFigure, levelPlace } from './figure.ts';

/** The raw edge above the floor, place by place; heights are to scale. */
export const levelDrawing: Drawing = {
  id: 'level',
  unplaced: () => ['sweep'],
  draw(draft, bench) {
    const read = levelFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = hemLevel(read.value);
    if (!found.ok) return undefined;
    return {
      name: words.figure,
      toScale: true,
      shapes: levelFigure(read.value, found.value),
      dimensions: dimensions(read.value, found.value, bench),
    };
  },
};

function dimensions(asked: LevelAsked, plan: HemLevel, bench: Bench): Dimension[] {
  const { heights, hem, allowance } = asked;
  const cut = exactLength(hem - allowance);
  const last = Math.max(1, heights.length - 1);
  const at = (i: number, high: typeof cut) => levelPlace(asked, i, high);
  const most = mostTrimmed(plan);
  const where = plan.trims.indexOf(most);
  return [
    ...heights.map((height, i) =>
      lengthAt([at(i, height), at(i, ZERO)], height, { given: 'heights' }, bench),
    ),
    lengthAt([at(last, hem), at(last, ZERO)], hem, { given: 'hem' }, bench),
    lengthAt([at(0, hem), at(0, cut)], allowance, { given: 'allowance' }, bench),
    ...(where >= 0 && most > 0
      ? [
          lengthAt(
            [at(where, cut), at(where, heights[where] ?? ZERO)],
            most,
            { found: 'most' },
            bench,
          ),
        ]
      : []),
  ];
}
