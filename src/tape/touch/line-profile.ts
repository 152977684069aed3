import { greyAt } from '../picture/grey-at.ts';
import type { GreyImage } from '../picture/grey-image.ts';
import type { Point } from '../picture/place.ts';
import { STEPS_PER_PX } from './limits.ts';

/** Grey across lines, a few pixels along them averaged; its middle is the place asked about. */
export interface LineProfile {
  readonly values: Float64Array;
  /** Px from its middle to either end. */
  readonly reach: number;
}

/** A line in a profile: px from the profile's middle, and grey levels it stands out by. */
export interface Stroke {
  readonly shift: number;
  readonly contrast: number;
}

/** The profile about a place, in px of the picture; `across` of length 1; the mean of `along` px to both sides. */
export function profileAt(
  image: GreyImage,
  { x, y }: Point,
  across: Point,
  reach: number,
  along: number,
): LineProfile {
  const half = reach * STEPS_PER_PX;
  const values = Float64Array.from({ length: 2 * half + 1 }, (_, index) => {
    const s = (index - half) / STEPS_PER_PX;
    let sum = 0;
    for (let l = -along; l <= along; l++) {
      sum += greyAt(image, x + s * across.x - l * across.y, y + s * across.y + l * across.x);
    }
    return sum / (2 * along + 1);
  });
  return { values, reach };
}

/** Every line of a profile that stands out by at least so many grey levels, lighter (1) or darker (−1) than its sides. */
export function strokesIn({ values, reach }: LineProfile, ink: 1 | -1, least: number): Stroke[] {
  const half = reach * STEPS_PER_PX;
  const strokes: Stroke[] = [];
  for (let i = 1; i < values.length - 1; i++) {
    const here = ink * at(values, i);
    if (here < ink * at(values, i - 1) || here <= ink * at(values, i + 1)) continue;
    const { middle, contrast } = strokeAt(values, i, ink);
    if (contrast >= least) strokes.push({ shift: (middle - half) / STEPS_PER_PX, contrast });
  }
  return strokes;
}

/** The middle of a line (mean of where its flanks cross half its height) and how far it stands out. */
function strokeAt(values: Float64Array, peak: number, ink: number) {
  const flank = (step: 1 | -1) => {
    let low = peak;
    for (let i = peak; i > 0 && i < values.length - 1; i += step) {
      if (ink * at(values, i + step) > ink * at(values, i) + 1) break;
      low = i + step;
    }
    return low;
  };
  const left = flank(-1);
  const right = flank(1);
  const height = ink * at(values, peak);
  const contrast = height - Math.max(ink * at(values, left), ink * at(values, right));
  const level = height - contrast / 2;
  const cross = (step: 1 | -1) => {
    let i = peak;
    while (i > 0 && i < values.length - 1 && ink * at(values, i) > level) i += step;
    const inside = ink * at(values, i - step);
    const outside = ink * at(values, i);
    return inside === outside ? i : i - step * ((level - outside) / (inside - outside));
  };
  return { middle: (cross(-1) + cross(1)) / 2, contrast };
}

const at = (values: Float64Array, index: number) => values[index] ?? 0;
