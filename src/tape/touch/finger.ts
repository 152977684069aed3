import type { GreyImage } from '../picture/grey-image.ts';
import type { Point } from '../picture/place.ts';

/** A place set by a finger, and how far it may be from the line that was meant, in px (1 sigma). */
export interface Placed extends Point {
  readonly spread: number;
}

/**
 * Px of the screen by which a finger misses what it aims at (1 sigma). A bare fingertip does worse,
 * but it sets the place through a lens that shows this as 5 px. A judgement, not a measurement.
 */
const FINGER_SCREEN_PX = 1;
/** A phone shows a photo's long side on about so many px; a small picture isn't shown smaller. */
const SCREEN_PX = 400;

/** How far beside its line a touch may be, in px of the picture (1 sigma). */
export function fingerPx(
  { width, height }: Pick<GreyImage, 'width' | 'height'>,
  perScreenPx = Math.max(1, Math.max(width, height) / SCREEN_PX),
): number {
  return FINGER_SCREEN_PX * perScreenPx;
}
