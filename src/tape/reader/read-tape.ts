import type { ReadPage } from '../characters/read-page.ts';
import type { GreyImage } from '../picture/grey-image.ts';
import type { Point } from '../picture/place.ts';
import { questionFor } from '../scales/question.ts';
import type { TapeReading } from '../scales/tape-reading.ts';
import { LEAST_PX } from './limits.ts';
import { lookAt, WHOLE } from './look-at.ts';
import { lookAbout, lookCloser } from './look-closer.ts';

/**
 * Finds the printed scales in a picture and reads their numbers.
 *
 * @param image upright and grey.
 * @param readPage the character reader; what it throws is passed on.
 * @param onProgress called with the share done, from 0 to 1, now and then.
 * @param at where the maker pointed: looked at first, and closely.
 */
export async function readTape(
  image: GreyImage,
  readPage: ReadPage,
  onProgress: (done: number) => void = () => {},
  at?: Point,
): Promise<TapeReading> {
  const { width, height } = image;
  if (Math.max(width, height) < LEAST_PX) {
    return { width, height, outcome: 'cannot', reason: 'too-small', scales: [] };
  }
  let found = at && (await lookAbout(image, at, readPage, onProgress));
  found ??= await lookAt(image, WHOLE, readPage, onProgress);
  // What was read in the whole picture stands: a closer look is only for one that gave nothing.
  if (found.scales.length === 0) found = await lookCloser(image, found, readPage, onProgress);
  onProgress(1);
  const { scales, unread, tilt, why } = found;
  if (scales.length === 0)
    return { width, height, outcome: 'cannot', reason: why, scales: [], unread };
  const tiltDegrees = tilt === undefined ? {} : { tiltDegrees: tilt };
  const seen = { width, height, scales, unread, ...tiltDegrees };
  return scales.some(({ sure }) => sure)
    ? { ...seen, outcome: 'read' }
    : { ...seen, outcome: 'ask', question: questionFor(scales) };
}
