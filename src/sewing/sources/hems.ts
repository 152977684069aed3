import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Published } from './published.ts';

const inch = (parts: number) => (UNITS_PER_INCH * parts) as Length;

/**
 * How far from the inner fold a turned hem is stitched.
 *
 * Reference: US Army FM 10-16, General Fabric Repair, 24 May 2000, fig. 8-3: lines 1 in from the raw
 * edge and 2 in from the fold make a turn of 1/2 in and a hem of 1 in.
 */
export const HEM_STITCH: Published<Length> = {
  value: inch(1 / 8),
  says: 'stitch 1/8 in from the inner fold',
  source: 'General Fabric Repair, field manual, 2000, fig. 8-3',
  grade: 'manual',
};

/** Finished depths, least and most, in the order they are said in. */
type Depths = readonly (readonly [least: Length, most: Length])[];

/**
 * Finished depths by flare and cloth.
 *
 * Reference: Theta Johnson, It’s Fun to Sew a Cotton School Dress, bitlit.ru. Of the straight sheer hem
 * and the heavy cloth only the most is given; the circle is 1/4 in or rolled.
 */
export const HEM_DEPTHS: Published<Depths> = {
  value: [
    [inch(0), inch(4)],
    [inch(2), inch(3)],
    [inch(0), inch(2)],
    [inch(1.5), inch(1.5)],
    [inch(1 / 4), inch(1 / 4)],
  ],
  says: 'straight and sheer up to 4 in; moderately flared, medium cloth 2 to 3 in; heavy wool or cotton up to 2 in; flared 1 1/2 in; circular 1/4 in or rolled',
  source: 'It’s Fun to Sew a Cotton School Dress, extension bulletin',
  grade: 'manual',
};

/**
 * Finished depths of skirts by how far round they are; on a circular one it conflicts with the first.
 *
 * Reference: Texas Agricultural Extension L-359, The Hem of Your Dress or Skirt, docslib.org/doc/6951763,
 * a poor scan. On a very circular skirt: rolled, up to 2 in by what can be shrunk out.
 */
export const SKIRT_DEPTHS: Published<Depths> = {
  value: [
    [inch(2.5), inch(2.5)],
    [inch(2), inch(2)],
    [inch(0), inch(2)],
  ],
  says: 'fairly straight 2 1/2 in; gored, 60 to 70 in round, 2 in; very circular rolled, up to 2 in by what can be shrunk out',
  source: 'The Hem of Your Dress or Skirt, extension sheet L-359',
  grade: 'manual',
};

/** The part of its length a cloth eases in. Common practice, no source. */
export const EASE_BY_CLOTH = { firm: 0.03, medium: 0.06, soft: 0.1 } as const;

/**
 * How hems are called by their finished depth, at most; what is over the last is deep. What lies
 * between narrow and deep has no name in the source: ordinary is ours.
 *
 * Reference: moodlehub.ca, garment hems, page 47832.
 */
export const HEM_CLASSES: Published<{ rolled: Length; narrow: Length; ordinary: Length }> = {
  value: {
    rolled: (3 * 8000) as Length,
    narrow: (15 * 8000) as Length,
    ordinary: (20 * 8000) as Length,
  },
  says: 'rolled up to 3 mm, narrow folded up to 1.5 cm, deep over 2 cm',
  source: 'an open course text on garment hems',
  grade: 'manual',
};

/**
 * A narrow hem: its depth, and as much for the first turn.
 *
 * Reference: Theta Johnson, It’s Fun to Sew a Cotton School Dress, bitlit.ru.
 */
export const NARROW_HEM: Published<Length> = {
  value: inch(1 / 4),
  says: 'a narrow hem is turned 1/4 in and 1/4 in again',
  source: 'It’s Fun to Sew a Cotton School Dress, extension bulletin',
  grade: 'manual',
};
