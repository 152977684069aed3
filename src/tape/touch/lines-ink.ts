import type { GreyImage } from '../picture/grey-image.ts';
import type { Point } from '../picture/place.ts';
import { profileAt } from './line-profile.ts';

/** How far round the place lines are looked at, across and along them, as a multiple of the reach. */
const LOOKED_ACROSS = 2.5;
const LOOKED_ALONG = 2;
/** Px from one profile to the next, each the mean of two px to both sides. */
const STEP_PX = 3;
const AVERAGED_PX = 2;
/** Where the grey leans less than this to one side, lines and gaps look the same. */
const LEAST_LEAN = 0.35;

/**
 * Whether the lines round a place are lighter (1) or darker (−1) than their ground. Strokes are
 * thinner than the ground between them, and beyond the ends of the short ones only long ones are
 * left, far apart: so few px are ink, far from the mean, and the skewness of grey has the ink's sign.
 * Undefined where too few lines are seen, or so small that strokes and gaps look alike.
 */
export function inkOfLines(
  image: GreyImage,
  { x, y }: Point,
  across: Point,
  reach: number,
): 1 | -1 | undefined {
  const wide = Math.round(LOOKED_ACROSS * reach);
  let [count, squares, cubes] = [0, 0, 0];
  for (let w = -LOOKED_ALONG * reach; w <= LOOKED_ALONG * reach; w += STEP_PX) {
    const place = { x: x - w * across.y, y: y + w * across.x };
    const { values } = profileAt(image, place, across, wide, AVERAGED_PX);
    for (const off of withoutTrend(values)) {
      squares += off * off;
      cubes += off * off * off;
      count++;
    }
  }
  const lean = cubes / count / ((squares + 1e-9) / count) ** 1.5;
  if (Math.abs(lean) < LEAST_LEAN) return undefined;
  return lean > 0 ? 1 : -1;
}

/** Less a straight line through them all: a shade that falls from one side. */
function withoutTrend(values: Float64Array): Float64Array {
  const middle = (values.length - 1) / 2;
  let [sum, turned, moment] = [0, 0, 0];
  for (const [i, value] of values.entries()) {
    sum += value;
    turned += value * (i - middle);
    moment += (i - middle) ** 2;
  }
  return values.map((value, i) => value - sum / values.length - (turned / moment) * (i - middle));
}
