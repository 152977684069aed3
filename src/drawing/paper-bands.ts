/** A stretch of a strip that fits across a page, in mm from the datum. */
export interface Band {
  from: number;
  to: number;
  /** Where it is joined to the one before, and to the one after. */
  joinedAt: { start: number | undefined; end: number | undefined };
}

/** Bands that follow each other share this much, in mm, with the joining mark in its middle. */
export const OVERLAP = 20;

/**
 * Cuts a length into bands that fit into `room`, each overlapping the next. The joining
 * marks lie at places from the datum, so that no error grows from band to band.
 *
 * @param room in mm, more than twice the overlap
 * @throws RangeError when it is not
 */
export function bandsOf(length: number, room: number): Band[] {
  if (!(room > 2 * OVERLAP)) throw new RangeError(`no bands fit into ${room} mm`);
  if (length <= room) {
    return [{ from: 0, to: length, joinedAt: { start: undefined, end: undefined } }];
  }
  const step = room - OVERLAP;
  const count = Math.ceil((length - OVERLAP) / step);
  const joint = (after: number) => after * step + OVERLAP / 2;
  return Array.from({ length: count }, (_, i) => ({
    from: i * step,
    to: Math.min(length, i * step + room),
    joinedAt: {
      start: i > 0 ? joint(i) : undefined,
      end: i < count - 1 ? joint(i + 1) : undefined,
    },
  }));
}

/** A, B, … Z, AA, AB, … */
export function letterOf(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letterOf(Math.floor(index / 26) - 1) + last;
}
