import type { Garment } from './record.ts';

/** The most a garment holds. */
export const MOST_WORKS = 500;
export const MOST_FACTS = 5000;
const MOST_SIZE = 1_000_000;
export const MOST_LINKS = 24;
export const MOST_ROW = 10_000;
/** How often one work may be done. */
export const MOST_SIDES = 20;
/** The longest note, in characters. */
export const LONGEST_NOTE = 2000;
/** How many photos a garment has at its steps. */
export const MOST_PHOTOS = 40;

/** What a garment would have too much of. */
export type GarmentLimit = 'works' | 'facts' | 'size';

/** What there would be too much of: of a garment, links of a field, marks of a row, corners of an outline, or how long something is. */
export type Limit = GarmentLimit | 'links' | 'row' | 'length' | 'outline';

/** How many characters a record takes, or a part of it, as it is written. */
export function sizeOf(part: unknown): number {
  return JSON.stringify(part)?.length ?? 0;
}

/** What a record of a size has too much of; undefined where it is within the limits. */
export function overLimit(
  { works, facts }: Pick<Garment, 'works' | 'facts'>,
  size: number,
): GarmentLimit | undefined {
  if (Object.keys(works).length > MOST_WORKS) return 'works';
  if (Object.keys(facts).length > MOST_FACTS) return 'facts';
  return size > MOST_SIZE ? 'size' : undefined;
}
