/** How a screen shows true sizes. */
export interface GlassScale {
  /** CSS pixels to a millimetre. */
  pxPerMm: number;
  /** Device pixels to a CSS pixel, when it was measured. */
  devicePixelRatio: number;
}

/** What was measured: a screen is told by its sides and by its pixels. */
export interface MeasuredScreen extends GlassScale {
  /** The longer and the shorter side, in CSS pixels: turned, it is the same screen. */
  longer: number;
  shorter: number;
}

/** A stretch of a run that fits on the glass, in mm from the datum. */
export interface GlassStretch {
  /** What lies at the start of the glass: the datum, a mark, or an overlap mark. */
  from: number;
  to: number;
  /** Where the next stretch begins; undefined on the last one. */
  next: number | undefined;
}

/** An overlap mark is drawn at least this far before the end of the glass, in mm. */
export const OVERLAP = 10;
/** Two places nearer than this, in mm, are one. */
const SAME = 1e-6;

const same = (one: number, other: number) => Math.abs(one - other) < SAME;

/**
 * Cuts a run into as few stretches of the glass as can be. Each begins where something on the
 * one before can be found on the work again: at its last mark; or, where that would make them
 * more, at an overlap mark on a graduation of the tape, so that it can be checked.
 *
 * All is in mm from the datum.
 * @param marks in order
 * @param length of the run: stretches cover all of it, and all marks
 * @param room of the glass, more than 30
 * @param graduation of the tape in hand, less than 10
 * @throws RangeError when the glass is shorter
 */
export function stretchesOf(
  marks: readonly number[],
  length: number,
  room: number,
  graduation: number,
): GlassStretch[] {
  if (!(room > 3 * OVERLAP)) throw new RangeError(`nothing is shown on ${room} mm of glass`);
  let from = Math.min(0, marks[0] ?? 0);
  const latest = latestStarts(marks, Math.max(length, marks.at(-1) ?? 0), from, room, graduation);
  const stretches: GlassStretch[] = [];
  let seen = 0;
  for (const needed of latest.slice(0, -1).reverse()) {
    const to = from + room;
    while (seen < marks.length && marks[seen]! <= to) seen++;
    const last = marks[seen - 1] ?? from;
    const overlap = Math.floor((to - OVERLAP) / graduation + SAME) * graduation;
    const next = last > from && last >= needed ? last : overlap;
    stretches.push({ from, to, next });
    from = next;
  }
  return [...stretches, { from, to: from + room, next: undefined }];
}

/** The latest places from which 1, 2, 3 … stretches still reach the end; enough of them for all. */
function latestStarts(
  marks: readonly number[],
  end: number,
  start: number,
  room: number,
  graduation: number,
): number[] {
  const latest = [end - room];
  let after = marks.length;
  for (let reach = end - room; reach > start; ) {
    while (after > 0 && marks[after - 1]! >= reach) after--;
    const overlap = Math.ceil(reach / graduation - SAME) * graduation + OVERLAP;
    reach = Math.min(overlap, marks[after] ?? overlap) - room;
    latest.push(reach);
  }
  return latest;
}

/** What is drawn right across the glass. */
export interface GlassPlace {
  /** From the datum. */
  mm: number;
  kind: 'datum' | 'mark' | 'overlap' | 'end';
  /** Which mark of the run, from 0, where it is one. */
  mark?: number;
}

/**
 * What a stretch shows, in order; a place with a mark is shown once, as the mark.
 * @param marks and length in mm from the datum
 */
export function placesOn(
  { from, to, next }: GlassStretch,
  marks: readonly number[],
  length: number,
): GlassPlace[] {
  const places: GlassPlace[] = marks.map((mm, mark) => ({ mm, kind: 'mark', mark }));
  const add = (mm: number, kind: GlassPlace['kind']) => {
    if (!places.some((one) => same(one.mm, mm))) places.push({ mm, kind });
  };
  add(0, 'datum');
  add(length, 'end');
  add(from, 'overlap');
  if (next !== undefined) add(next, 'overlap');
  return places
    .filter(({ mm }) => mm >= from - SAME && mm <= to + SAME)
    .sort((one, other) => one.mm - other.mm);
}

/**
 * How far from the start of the glass a place is drawn, in CSS pixels: on a whole device pixel,
 * counted from where the stretch begins and never by steps.
 * @param at and from, in mm
 */
export function onGlass(at: number, from: number, scale: GlassScale): number {
  return wholePixels((at - from) * scale.pxPerMm, scale);
}

/** CSS pixels to the nearest that are whole device pixels. */
export function wholePixels(px: number, { devicePixelRatio }: GlassScale): number {
  return Math.round(px * devicePixelRatio) / devicePixelRatio;
}

/**
 * The graduations of a tape that a stretch shows, in mm from the datum; only every few where
 * they would lie closer than `apart` mm. There are none before zero: that is where a tape begins.
 */
export function graduationsOn(
  { from, to }: GlassStretch,
  graduation: number,
  apart: number,
): number[] {
  const step = graduation * Math.max(1, Math.ceil(apart / graduation));
  const first = Math.max(0, Math.ceil(from / step - SAME));
  const count = Math.max(0, Math.floor(to / step) - first + 1);
  return Array.from({ length: count }, (_, i) => (first + i) * step);
}
