import type { GreyImage } from '../picture/grey-image.ts';
import type { Point } from '../picture/place.ts';
import { DRIFT_PX, LINE_LENGTH_STEP_PX, STILL_SEEN } from './limits.ts';
import { profileAt } from './line-profile.ts';

/** A line at a place of the picture. */
interface LineAt {
  readonly at: Point;
  /** Across it, of length 1. */
  readonly across: Point;
  readonly ink: 1 | -1;
  /** Px from its middle to the ground beside it. */
  readonly side: number;
}

/** How far a line goes on to both sides along itself, in px; no farther than `most` to either. */
export function lineLength(image: GreyImage, line: LineAt, most: number): number {
  const { contrast } = crossed(image, line, line.at);
  return endOf(image, line, contrast, most, 1) + endOf(image, line, contrast, most, -1);
}

function endOf(image: GreyImage, line: LineAt, contrast: number, most: number, way: 1 | -1) {
  const { across, at } = line;
  let drift = 0;
  let seen = 0;
  for (
    let w = LINE_LENGTH_STEP_PX;
    w <= most && w - seen <= 2 * LINE_LENGTH_STEP_PX;
    w += LINE_LENGTH_STEP_PX
  ) {
    const place = {
      x: at.x + drift * across.x - way * w * across.y,
      y: at.y + drift * across.y + way * w * across.x,
    };
    const here = crossed(image, line, place);
    if (here.contrast < STILL_SEEN * contrast) continue;
    seen = w;
    drift += here.off;
  }
  return seen;
}

/** How far the line stands out from its sides at a place, and px by which it runs beside it. */
function crossed(image: GreyImage, { across, ink, side }: LineAt, place: Point) {
  const { values } = profileAt(image, place, across, side, 1);
  const last = values.length - 1;
  const perPx = last / (2 * side);
  let top = last / 2;
  for (let i = Math.ceil((side - DRIFT_PX) * perPx); i <= (side + DRIFT_PX) * perPx; i++) {
    if (ink * (values[i] as number) > ink * (values[top] as number)) top = i;
  }
  const ground = ((values[0] as number) + (values[last] as number)) / 2;
  return { contrast: ink * ((values[top] as number) - ground), off: (top - last / 2) / perPx };
}
