import type { Figure, Point } from '../../drawing/figure.ts';
import { lineAcross, lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import type { HemLevel } from '../../sewing/hems/hem-level.ts';
import type { LevelAsked } from './fields.ts';

/** How far apart places are drawn, in parts of how high the hem is. */
const APART = 0.5;

/** Where a place of the hem is drawn, so high above the floor, in mm. */
export function levelPlace({ hem }: LevelAsked, i: number, high: ExactLength): Point {
  return { x: i * APART * toMm(hem), y: -toMm(high) };
}

/** The raw edge above the floor, the line it is cut at, and the hem. */
export function levelFigure(asked: LevelAsked, { trims }: HemLevel): Figure {
  const { heights, hem, allowance } = asked;
  const cut = exactLength(hem - allowance);
  const far = levelPlace(asked, Math.max(1, heights.length - 1), hem).x;
  const raw = heights.map((height, i) => levelPlace(asked, i, height));
  const [first] = raw;
  return [
    lineAcross('measure', 0, [0, far]),
    lineAcross('stitch', -toMm(hem), [0, far]),
    lineAcross('cut', -toMm(cut), [0, far]),
    lineThrough('cloth', ...(raw.length === 1 && first ? [first, { ...first, x: far }] : raw)),
    ...trims.map((_, i) => lineDown('placement', levelPlace(asked, i, cut).x, [-toMm(hem), 0])),
  ];
}
