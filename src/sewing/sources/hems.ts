import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Published } from './published.ts';

const inch = (parts: number) => (UNITS_PER_INCH * parts) as Length;

/** How far outside the diagonal crease a mitre is trimmed. */
export const MITRE_TRIM: Published<Length> = {
  value: inch(1 / 4),
  says: 'trim 1/4 in outside the diagonal crease',
  source: 'Hand Sewing Lessons, model 7; McGlauflin, Handicraft for Girls',
  grade: 'manual',
};

/** How far from the inner fold a turned hem is stitched. */
export const HEM_STITCH: Published<Length> = {
  value: inch(1 / 8),
  says: 'stitch 1/8 in from the inner fold',
  source: 'US Army FM 10-16, General Fabric Repair, fig. 8-3',
  grade: 'manual',
};

/** Finished depths by flare, least and most; the sources conflict on circular skirts. */
export const HEM_DEPTHS: Published<
  Readonly<Record<'straight' | 'flared' | 'circle', readonly [Length, Length]>>
> = {
  value: {
    straight: [inch(2.5), inch(4)],
    flared: [inch(1.5), inch(2)],
    circle: [inch(1 / 4), inch(2)],
  },
  says: 'straight 2 1/2 to 4 in, flared 1 1/2 to 2 in, circular 1/4 in or rolled (another source: up to 2 in)',
  source:
    'Theta Johnson, It’s Fun to Sew a Cotton School Dress; Texas Extension L-359, The Hem of Your Dress or Skirt',
  grade: 'manual',
};

/** The part of its length a cloth eases in. Common practice, no source. */
export const EASE_BY_CLOTH = { firm: 0.03, medium: 0.06, soft: 0.1 } as const;

/** How hems are called by their finished depth, at most; what is over the last is deep. */
export const HEM_CLASSES: Published<{ rolled: Length; narrow: Length; ordinary: Length }> = {
  value: {
    rolled: (3 * 8000) as Length,
    narrow: (15 * 8000) as Length,
    ordinary: (20 * 8000) as Length,
  },
  says: 'rolled up to 3 mm, narrow up to 1.5 cm, deep over 2 cm',
  source: 'moodlehub.ca, garment hems, pages 47832 and 47837',
  grade: 'manual',
};

/** A narrow hem: its depth, and as much for the first turn. */
export const NARROW_HEM: Published<Length> = {
  value: inch(1 / 4),
  says: 'a narrow hem is turned 1/4 in and 1/4 in again',
  source: 'Theta Johnson, It’s Fun to Sew a Cotton School Dress',
  grade: 'manual',
};

/** The seam that joins a facing to the piece. */
export const FACING_SEAM: Published<Length> = {
  value: inch(3 / 8),
  says: 'a facing is joined by a seam of 3/8 in, its free edge turned under narrowly',
  source: 'an older Butterick text on skirts (fashion-design-drawing.com, Skirts, part 5)',
  grade: 'page',
};
