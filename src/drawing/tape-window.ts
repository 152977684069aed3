import { toMm } from '../lengths/length.ts';
import type { Run } from '../sewing/run.ts';

/** The stretch of tape that is shown, in mm from the datum. */
export interface TapeWindow {
  from: number;
  to: number;
}

/** Least that is ever shown, in mm: about one graduation of numbers. */
const LEAST = 10;

/** The whole run with a twentieth of it free at either end. */
export function wholeRun(run: Run): TapeWindow {
  const length = Math.max(toMm(run.length), LEAST);
  return { from: -length / 20, to: length + length / 20 };
}

/**
 * The window with mark `here` in the middle and the marks on both sides of it in
 * sight, four fifths of the way out. The whole run when there is no such mark.
 */
export function aroundMark(run: Run, here: number | undefined): TapeWindow {
  const mark = run.marks[here ?? -1];
  if (here === undefined || !mark) return wholeRun(run);
  const neighbours = [run.marks[here - 1], run.marks[here + 1]].filter(
    (each) => each !== undefined,
  );
  const reach = Math.max(...neighbours.map((each) => Math.abs(toMm(each.at) - toMm(mark.at))));
  const half = neighbours.length ? Math.max(reach * 1.25, LEAST) : span(wholeRun(run)) / 2;
  return { from: toMm(mark.at) - half, to: toMm(mark.at) + half };
}

/**
 * The window moved along by `by` mm, as far as the ends of the whole run; never
 * farther past them than it already was.
 */
export function moveWindow(run: Run, window: TapeWindow, by: number): TapeWindow {
  const whole = wholeRun(run);
  const before = Math.min(0, whole.from - window.from);
  const after = Math.max(0, whole.to - window.to);
  const move = Math.min(Math.max(by, before), after);
  return { from: window.from + move, to: window.to + move };
}

/**
 * The window with everything `times` as large. The place `about` (mm) stays
 * where it is, unless that would leave more than the ends of the run in sight.
 */
export function zoomWindow(run: Run, window: TapeWindow, times: number, about: number): TapeWindow {
  const whole = wholeRun(run);
  const most = Math.max(span(whole), span(window));
  const wanted = Math.min(Math.max(span(window) / times, LEAST), most);
  const from = about - ((about - window.from) * wanted) / span(window);
  const ends = [whole.from, whole.to - wanted] as const;
  const held = Math.min(Math.max(from, Math.min(...ends)), Math.max(...ends));
  return { from: held, to: held + wanted };
}

/** The window `part` (0…1) of the way from one to another. */
export function betweenWindows(one: TapeWindow, other: TapeWindow, part: number): TapeWindow {
  const mix = (a: number, b: number) => a + (b - a) * part;
  return { from: mix(one.from, other.from), to: mix(one.to, other.to) };
}

/** Length of a window in mm. */
export function span({ from, to }: TapeWindow): number {
  return to - from;
}
