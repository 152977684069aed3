import type { ReadPage } from '../characters/read-page.ts';
import type { GreyImage } from '../picture/grey-image.ts';
import { movedGeometry, movedScale, type ReadScale } from '../scales/scale.ts';
import { MOST_WINDOWS, TENS_FROM, WINDOW_NUMBERS } from './limits.ts';
import { type Found, IN_WINDOW, lookAt } from './look-at.ts';
import { cutOut, windowsOf } from './windows.ts';

/**
 * The first window that shows a scale for sure; where none does, that with most numbers to be asked
 * about. What a window shows of a tape is believed where enough numbers name it.
 */
export async function lookCloser(
  image: GreyImage,
  whole: Found,
  readPage: ReadPage,
  onProgress: (done: number) => void,
): Promise<Found> {
  let best = whole;
  for (const part of windowsOf(image, MOST_WINDOWS)) {
    const look = await lookAt(cutOut(image, part), IN_WINDOW, readPage, onProgress);
    const named = new Set(look.scales.filter((one) => isNamed(one) && !look.contested.has(one)));
    if (named.size === 0) continue;
    const scales = look.scales.map((scale) =>
      movedScale(named.has(scale) ? scale : doubted(scale), part),
    );
    const unread = look.unread.map((row) => movedGeometry(row, part));
    const found = { ...look, scales, unread, tilt: undefined };
    if (scales.some(({ sure }) => sure)) return found;
    if (numbersIn(found) > numbersIn(best)) best = found;
  }
  return best;
}

/**
 * Whether its numbers name the scale though a part of the picture is all that was looked at: what
 * speaks against a few may lie outside, and some tapes print 1 to 9 anew after every ten.
 */
function isNamed({ numbers }: ReadScale): boolean {
  const values = new Set(numbers.map(({ value }) => value));
  return values.size >= WINDOW_NUMBERS && Math.max(...values) >= TENS_FROM;
}

function doubted(scale: ReadScale): ReadScale {
  return { ...scale, sure: false, doubts: scale.sure ? ['line'] : scale.doubts };
}

const numbersIn = ({ scales }: Found) =>
  scales.reduce((most, { numbers }) => Math.max(most, numbers.length), 0);
