import type { GreyImage } from '../picture/grey-image.ts';
import type { Point } from '../picture/place.ts';
import { FINGER_SCREEN_PX, SCREEN_PX } from './limits.ts';

/** A place set by a finger, and how far it may be from the line that was meant, in px (1 sigma). */
export interface Placed extends Point {
  readonly spread: number;
}

/** How far beside its line a touch may be, in px of the picture (1 sigma). */
export function fingerPx(
  { width, height }: Pick<GreyImage, 'width' | 'height'>,
  perScreenPx = Math.max(1, Math.max(width, height) / SCREEN_PX),
): number {
  return FINGER_SCREEN_PX * perScreenPx;
}
