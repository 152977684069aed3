import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Published, Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-hem-words.ts`. */
export type HemQuote = 'hem-stitch' | 'hem-depths' | 'skirt-depths';

const inch = (parts: number) => (UNITS_PER_INCH * parts) as Length;

/**
 * How far from the inner fold a turned hem is stitched.
 *
 * Reference: US Army FM 10-16, General Fabric Repair, 24 May 2000, fig. 8-3: lines 1 in from the raw
 * edge and 2 in from the fold make a turn of 1/2 in and a hem of 1 in.
 */
export const HEM_STITCH: Quoted<Length, HemQuote> = {
  value: inch(1 / 8),
  quote: 'hem-stitch',
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
export const HEM_DEPTHS: Quoted<Depths, HemQuote> = {
  value: [
    [inch(0), inch(4)],
    [inch(2), inch(3)],
    [inch(0), inch(2)],
    [inch(1.5), inch(1.5)],
    [inch(1 / 4), inch(1 / 4)],
  ],
  quote: 'hem-depths',
  grade: 'manual',
};

/**
 * Finished depths of skirts by how far round they are; on a circular one it conflicts with the first.
 *
 * Reference: Texas Agricultural Extension L-359, The Hem of Your Dress or Skirt, docslib.org/doc/6951763,
 * a poor scan. On a very circular skirt: rolled, up to 2 in by what can be shrunk out.
 */
export const SKIRT_DEPTHS: Quoted<Depths, HemQuote> = {
  value: [
    [inch(2.5), inch(2.5)],
    [inch(2), inch(2)],
    [inch(0), inch(2)],
  ],
  quote: 'skirt-depths',
  grade: 'manual',
};

/** The part of its length a cloth eases in. Common practice, no source. */
export const EASE_BY_CLOTH = { firm: 0.03, medium: 0.06, soft: 0.1 } as const;

/**
 * How hems are called by their finished depth, at most; what is over the last is deep. What lies
 * between narrow and deep has no name in the source: ordinary is ours.
 *
 * Reference: moodlehub.ca, garment hems, page 47832.
 * It says: rolled up to 3 mm, narrow folded up to 1.5 cm, deep over 2 cm.
 */
export const HEM_CLASSES: Published<{ rolled: Length; narrow: Length; ordinary: Length }> = {
  value: {
    rolled: (3 * 8000) as Length,
    narrow: (15 * 8000) as Length,
    ordinary: (20 * 8000) as Length,
  },
  grade: 'manual',
};

/**
 * A narrow hem: its depth, and as much for the first turn.
 *
 * Reference: Theta Johnson, It’s Fun to Sew a Cotton School Dress, bitlit.ru.
 * It says: a narrow hem is turned 1/4 in and 1/4 in again.
 */
export const NARROW_HEM: Published<Length> = {
  value: inch(1 / 4),
  grade: 'manual',
};
