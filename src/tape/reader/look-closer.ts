import type { ReadPage } from '../characters/read-page.ts';
import type { GreyImage } from '../picture/grey-image.ts';
import type { Point } from '../picture/place.ts';
import { movedGeometry, movedScale, placeOn, type ReadScale } from '../scales/scale.ts';
import { MOST_WINDOWS, PLENTY_IN_WINDOW, POINTED_MM, TENS_FROM, WINDOW_NUMBERS } from './limits.ts';
import { type Found, IN_WINDOW, lookAt } from './look-at.ts';
import { cutOut, type Window, windowsAbout, windowsOf } from './windows.ts';

/**
 * The window that shows a scale for sure, by most numbers: the first where it has many; where none does, that
 * with most numbers to be asked about. What a window shows of a tape is believed where enough numbers name it.
 */
export async function lookCloser(
  image: GreyImage,
  whole: Found,
  readPage: ReadPage,
  onProgress: (done: number) => void,
): Promise<Found> {
  let best = whole;
  for (const part of windowsOf(image, MOST_WINDOWS)) {
    const found = await lookInto(image, part, readPage, onProgress);
    if (found && showsMore(found, best)) best = found;
    if (isSure(best) && numbersIn(best) >= PLENTY_IN_WINDOW) break;
  }
  return best;
}

/** What is looked at of a window's scales to choose among windows. */
interface Shown {
  readonly scales: readonly Pick<ReadScale, 'sure' | 'numbers'>[];
}

const isSure = ({ scales }: Shown) => scales.some(({ sure }) => sure);

/** Whether a window shows a scale better than another: surely before all, then with more numbers. */
export function showsMore(found: Shown, best: Shown): boolean {
  if (isSure(found) !== isSure(best)) return isSure(found);
  return numbersIn(found) > numbersIn(best);
}

/**
 * The scale at a place that the maker pointed at, seen in the smallest window about it that shows
 * it for sure; undefined where none does.
 */
export async function lookAbout(
  image: GreyImage,
  at: Point,
  readPage: ReadPage,
  onProgress: (done: number) => void,
): Promise<Found | undefined> {
  for (const part of windowsAbout(image, at)) {
    const found = await lookInto(image, part, readPage, onProgress);
    if (found?.scales.some((scale) => scale.sure && isAt(scale, at))) return found;
  }
  return undefined;
}

/** What a part of a picture shows, in the picture's own pixels; undefined where that names no scale. */
async function lookInto(
  image: GreyImage,
  part: Window,
  readPage: ReadPage,
  onProgress: (done: number) => void,
): Promise<Found | undefined> {
  const look = await lookAt(cutOut(image, part), IN_WINDOW, readPage, onProgress);
  const named = new Set(look.scales.filter((one) => isNamed(one) && !look.contested.has(one)));
  if (named.size === 0) return undefined;
  const scales = look.scales.map((scale) =>
    movedScale(named.has(scale) ? scale : doubted(scale), part),
  );
  const unread = look.unread.map((row) => movedGeometry(row, part));
  return { ...look, scales, unread, tilt: undefined };
}

/** Whether a place lies on a scale's tape, or nearly: a finger is broad. */
function isAt({ geometry, mmPerTick }: ReadScale, at: Point): boolean {
  const { away, pitch, tick } = placeOn(geometry, at);
  const isAlong = tick > geometry.from && tick < geometry.to;
  return isAlong && (away / Math.abs(pitch)) * mmPerTick < POINTED_MM;
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

/** On one scale, and on a sure one where there is any. */
function numbersIn(found: Shown): number {
  const scales = found.scales.filter(({ sure }) => sure || !isSure(found));
  return scales.reduce((most, { numbers }) => Math.max(most, numbers.length), 0);
}
