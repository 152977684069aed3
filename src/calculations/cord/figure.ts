import type { Figure, Point } from '../../drawing/figure.ts';
import { lineAcross, lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { circle } from '../../drawing/figure-ring.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import type { Corded } from './corded.ts';

/** Below the casing, between bars, and how long the longer bar is, in parts of how deep the casing is. */
const BELOW = 1.5;
const ROW = 0.45;
const LONG = 3;

/** Where layers of the casing stand, in mm: the cord lies between them. */
export function layersOf({ input }: Corded) {
  const inner = 1.2 * toMm(input.thick);
  return { cord: inner / 2, turned: 0.85 * inner, inner };
}

/** Where a place of the cord, or of the channel under it, is drawn; from the channel's beginning. */
export function onBar({ input, plan }: Corded, row: 0 | 1, along: ExactLength): Point {
  const deep = toMm(plan.casing.depth);
  const longest = Math.max(plan.cut, input.widest);
  return { x: (along / longest) * LONG * deep, y: (BELOW + ROW * (row + 0.5)) * deep };
}

/** Where the cord begins, from the beginning of its channel. */
export function cordFrom({ input, plan }: Corded): ExactLength {
  return exactLength((input.widest - plan.cut) / 2);
}

/** The casing from its side with its cord, and under it the cord over its channel, laid straight. */
export function cordFigure(found: Corded): Figure {
  const { input, plan } = found;
  const at = layersOf(found);
  const { depth, clear, allowance, stitch } = plan.casing;
  const [deep, turn, radius] = [toMm(depth), toMm(input.turn), toMm(input.thick) / 2];
  const header = toMm(input.header);
  const sewn = (y: number) => lineAcross('stitch', y, [-at.cord / 2, at.inner + at.cord / 2]);
  const from = cordFrom(found);
  return [
    lineDown('behind', 0, [-toMm(allowance), 0]),
    lineAcross('cut', -toMm(allowance), [-at.cord / 2, at.cord / 2]),
    lineDown('cloth', 0, [0, BELOW * deep]),
    lineAcross('fold', 0, [0, at.inner]),
    lineDown('cloth', at.inner, [0, deep]),
    ...(turn > 0
      ? [
          lineAcross('fold', deep, [at.turned, at.inner]),
          lineDown('cloth', at.turned, [deep - turn, deep]),
        ]
      : []),
    sewn(toMm(stitch)),
    ...(header > 0 ? [sewn(header)] : []),
    circle({ x: at.cord, y: header + toMm(clear) / 2 }, radius, 'hole'),
    lineThrough('measure', onBar(found, 0, from), onBar(found, 0, exactLength(from + plan.cut))),
    lineThrough('cloth', onBar(found, 1, exactLength(0)), onBar(found, 1, input.widest)),
  ];
}
