import { fieldOf, sample } from '../../../src/tape/picture/field.ts';
import type { GreyImage } from '../../../src/tape/picture/grey-image.ts';
import type { Point } from '../../../src/tape/picture/place.ts';

/** How a hand moved the camera since the last frame: about the middle of the picture. */
export interface Moved {
  readonly turn?: number;
  readonly size?: number;
  readonly right?: number;
  readonly down?: number;
  /** Another light: grey is multiplied and shifted by so much. */
  readonly gain?: number;
  readonly lift?: number;
}

/** Where a place of the picture is after the move. */
export function movedPoint({ width, height }: GreyImage, moved: Moved, { x, y }: Point): Point {
  const { turn = 0, size = 1, right = 0, down = 0 } = moved;
  const [dx, dy] = [x - width / 2, y - height / 2];
  const [c, s] = [size * Math.cos(turn), size * Math.sin(turn)];
  return { x: width / 2 + c * dx - s * dy + right, y: height / 2 + s * dx + c * dy + down };
}

/** The picture after the move (bilinear); what comes into sight at its border is grey. */
export function movedPicture(image: GreyImage, moved: Moved): GreyImage {
  const { turn = 0, size = 1, right = 0, down = 0, gain = 1, lift = 0 } = moved;
  const { width, height } = image;
  const field = fieldOf(image);
  const [c, s] = [Math.cos(turn) / size, Math.sin(turn) / size];
  const pixels = Uint8Array.from({ length: width * height }, (_, i) => {
    const dx = (i % width) - width / 2 - right;
    const dy = Math.floor(i / width) - height / 2 - down;
    const grey = sample(field, width / 2 + c * dx + s * dy, height / 2 - s * dx + c * dy);
    return Math.max(0, Math.min(255, Math.round(gain * (Number.isNaN(grey) ? 128 : grey) + lift)));
  });
  return { width, height, pixels };
}
