import type { GreyImage } from '../picture/grey-image.ts';
import type { Point } from '../picture/place.ts';
import {
  AVERAGED_PX,
  LEAST_LEAN,
  LINES_INK_STEP_PX,
  LOOKED_ACROSS,
  LOOKED_ALONG,
} from './limits.ts';
import { profileAt } from './line-profile.ts';

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
  for (let w = -LOOKED_ALONG * reach; w <= LOOKED_ALONG * reach; w += LINES_INK_STEP_PX) {
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
