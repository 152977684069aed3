/** A place on a row of holes: on a hole, or some way from one hole to the next. */
export interface HolePlace {
  /** The hole it is on, or the last one before it; the first is 1. */
  hole: number;
  /** How far on to the next hole: 0 on the hole, 1/2 midway, or quarters and eighths of a space. */
  beyond: number;
}

/** The middle of a row of so many holes, at least one. */
export function middleOf(count: number): HolePlace {
  return placeAt(count, 4);
}

/** The end of `eighths` of eight equal parts of a row. */
export function placeAt(count: number, eighths: number): HolePlace {
  const along = ((count - 1) * eighths) / 8;
  const whole = Math.floor(along);
  return { hole: 1 + whole, beyond: along - whole };
}
