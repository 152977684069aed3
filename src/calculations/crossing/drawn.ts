import { crossingWords as words } from '#words/calculations/crossing-words.ts';
import type { DrawnCrossing } from '../../drawing/crossing-figure.ts';
import { exactLength, toMm } from '../../lengths/length.ts';
import { type Crossed, linesUnder } from '../../sewing/crossing/crossing-holes.ts';
import { shorterMove } from '../../sewing/crossing/crossing-move.ts';
import type { Crossing } from '../../sewing/crossing/strip-crossing.ts';

/** Two crossing strips as they are drawn. */
export function drawnOf(
  input: Crossed,
  { holes, shift, pitch }: Crossing,
  moved: boolean,
): DrawnCrossing {
  const { lower, upper, angle, hole } = input;
  return {
    lower: toMm(lower.width),
    upper: toMm(upper.width),
    angle,
    hole: toMm(hole),
    names: words.names,
    moved: moved ? (shorterMove({ shift, pitch }).back ? 'back' : 'on') : undefined,
    made: linesUnder(input).flatMap(({ y, start, pitch, first, last }) =>
      Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => ({
        x: toMm(exactLength(start + (first + i) * pitch)),
        y: toMm(exactLength(y)),
      })),
    ),
    over: holes.map(({ along, across, meets }) => ({ x: toMm(along), y: toMm(across), meets })),
  };
}
