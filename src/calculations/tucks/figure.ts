import type { Figure, FigureShape, Point } from '../../drawing/figure.ts';
import { lineAcross, lineDown, lineThrough } from '../../drawing/figure-line.ts';
import { toMm } from '../../lengths/length.ts';
import { depthOf } from '../../sewing/fullness/tucks.ts';
import type { Tucked } from './tucked.ts';

/** How high the flat cloth is drawn, where the tucked one lies below it, and layers apart, in parts of its length. */
const HIGH = 0.12;
const BELOW = 0.24;
const APART = 0.012;

/** Where the tucked cloth lies below the flat one, in mm. */
export function tuckedAt({ plan }: Tucked): number {
  return BELOW * toMm(plan.cut);
}

/** The cloth flat with its lines, and the same tucked below it, from the same edge. */
export function tucksFigure(found: Tucked): Figure {
  const { plan } = found;
  const long = toMm(plan.cut);
  const high = HIGH * long;
  const flat = plan.run.marks.map(
    ({ at, kind }): FigureShape =>
      lineDown(kind === 'fold' ? 'fold' : 'stitch', toMm(at), [0, high]),
  );
  return [
    lineAcross('cloth', 0, [0, long]),
    lineAcross('cloth', high, [0, long]),
    lineDown('cut', 0, [0, high]),
    lineDown('cut', long, [0, high]),
    ...flat,
    lineThrough('cloth', ...tuckedCloth(found)),
  ];
}

/** The tucked cloth as one line, its tucks pressed to their side and drawn above it. */
function tuckedCloth(found: Tucked): Point[] {
  const { input, plan } = found;
  const y = tuckedAt(found);
  const apart = APART * toMm(plan.cut);
  const seam = toMm(input.seam);
  const side = input.lies === 'last' ? 1 : -1;
  const folds = plan.places.flatMap((place, i) => {
    const x = seam + toMm(place);
    const tip = x + side * toMm(depthOf(input, i));
    return [
      { x, y },
      { x, y: y - 2 * apart },
      { x: tip, y: y - 2 * apart },
      { x: tip, y: y - apart },
      { x, y: y - apart },
      { x, y },
    ];
  });
  return [{ x: 0, y }, ...folds, { x: 2 * seam + toMm(input.finished), y }];
}
