import { greyAt } from '../picture/grey-at.ts';
import type { GreyImage } from '../picture/grey-image.ts';
import type { Point } from '../picture/place.ts';
import type { Placed } from './finger.ts';
import { fingerPx } from './finger.ts';
import {
  CLEARLY_NEARER,
  ENDLESS,
  FINGER_SHARE,
  LEAST_APART_PX,
  LEAST_CONTRAST,
  LEAST_DIRECTION,
  LEAST_FINGER_PX,
  LEAST_SHARE,
  LINE_PX,
  LONGEST,
  MISSED,
  MOST_SIDE_PX,
  RIVAL_LENGTH,
} from './limits.ts';
import { lineLength } from './line-length.ts';
import { type LineProfile, profileAt, type Stroke, strokesIn } from './line-profile.ts';
import { inkOfLines } from './lines-ink.ts';

/**
 * The middle of the graduation under a finger: moves the point across the nearest line, never
 * along it. The same point when no line stands out there, or lines look like the gaps
 * between them. `spread` is that of the line when it must be the one meant, else the finger's.
 *
 * @param perScreenPx px of the picture in one px of the screen; a phone's, when not given.
 */
export function snapTo(image: GreyImage, place: Point, perScreenPx?: number): Placed {
  const { x, y } = place;
  const finger = fingerPx(image, perScreenPx);
  const reach = Math.round(
    Math.max(LEAST_FINGER_PX, Math.max(image.width, image.height) * FINGER_SHARE),
  );
  const unmoved = { x, y, spread: finger };
  const across = directionAcross(image, place, reach);
  const ink = across && inkOfLines(image, place, across, reach);
  if (!across || !ink) return unmoved;
  const along = Math.max(2, Math.round(reach / 3));
  const strokes = clearStrokes(profileAt(image, place, across, 2 * reach, along), ink);
  const [nearest, ...others] = strokes;
  if (!nearest || Math.abs(nearest.shift) > reach) return unmoved;
  const apart = Math.min(...others.map(({ shift }) => Math.abs(shift - nearest.shift)));
  if (apart < LEAST_APART_PX) return unmoved;
  const at = ({ shift }: Stroke) => ({ x: x + shift * across.x, y: y + shift * across.y });
  const side = Math.round(Math.max(2, Math.min(MOST_SIDE_PX, apart / 2)));
  const most = LONGEST * reach;
  const lengthOf = (stroke: Stroke) =>
    lineLength(image, { at: at(stroke), across, ink, side }, most);
  const length = lengthOf(nearest);
  // A stripe of the cloth or the tape's own edge has no end near by: no graduation.
  const endless = length > ENDLESS * most;
  const mistakable = others.some(
    (other) =>
      other.shift ** 2 - nearest.shift ** 2 < CLEARLY_NEARER * finger ** 2 &&
      lengthOf(other) > RIVAL_LENGTH * length,
  );
  return { ...at(nearest), spread: endless || mistakable ? MISSED * finger : LINE_PX };
}

/** Lines of an ink that stand out about as much as the best one within a finger's reach, nearest first. */
function clearStrokes(profile: LineProfile, ink: 1 | -1): Stroke[] {
  const strokes = strokesIn(profile, ink, LEAST_CONTRAST);
  const near = strokes.filter(({ shift }) => Math.abs(shift) <= profile.reach / 2);
  const best = Math.max(...near.map(({ contrast }) => contrast));
  return strokes
    .filter(({ contrast }) => contrast >= LEAST_SHARE * best)
    .sort((one, other) => Math.abs(one.shift) - Math.abs(other.shift));
}

/** The direction in which grey changes most round a place; undefined where it changes evenly. */
function directionAcross(image: GreyImage, { x, y }: Point, reach: number): Point | undefined {
  let [xx, yy, xy] = [0, 0, 0];
  for (let j = -reach; j <= reach; j++) {
    for (let i = -reach; i <= reach; i++) {
      const right = greyAt(image, x + i + 1, y + j) - greyAt(image, x + i - 1, y + j);
      const down = greyAt(image, x + i, y + j + 1) - greyAt(image, x + i, y + j - 1);
      const weight = Math.exp(-2 * ((i * i + j * j) / (reach * reach)));
      xx += weight * right * right;
      yy += weight * down * down;
      xy += weight * right * down;
    }
  }
  const clear = Math.hypot(xx - yy, 2 * xy) / (xx + yy + 1);
  if (clear < LEAST_DIRECTION) return undefined;
  const angle = 0.5 * Math.atan2(2 * xy, xx - yy);
  return { x: Math.cos(angle), y: Math.sin(angle) };
}
