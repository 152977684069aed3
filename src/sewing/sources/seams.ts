import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-seam-words.ts`. */
export type SeamQuote =
  | 'french'
  | 'french-wide'
  | 'felled'
  | 'felled-trim'
  | 'mock-french'
  | 'bound'
  | 'graded'
  | 'trimmed'
  | 'clips'
  | 'clip-short';

const inch = (parts: number) => (UNITS_PER_INCH * parts) as Length;

/** The rows of a French seam: from the raw edge, what is left beside it, and from the fold. */
interface FrenchRows {
  first: Length;
  trim: Length;
  second: Length;
}

/**
 * A French seam on 5/8 in: the two rows and the trimming between them.
 *
 * Reference: enleedesigns.com, French seams.
 */
export const FRENCH: Quoted<FrenchRows, SeamQuote> = {
  value: { first: inch(3 / 8), trim: inch(1 / 8), second: inch(1 / 4) },
  quote: 'french',
  grade: 'page',
};

/**
 * A French seam whose rows take more than a 5/8 in pattern gives.
 *
 * Reference: Utah State University Extension, French Seam, docslib.org/doc/5802070.
 */
export const FRENCH_WIDE: Quoted<FrenchRows, SeamQuote> = {
  value: { first: inch(3 / 8), trim: inch(1 / 8), second: inch(3 / 8) },
  quote: 'french-wide',
  grade: 'manual',
};

/**
 * A flat-felled seam on 5/8 in. The turn is wider than the 1/4 in it is turned into.
 *
 * Reference: bellaonline.com, art60164.
 */
export const FELLED: Quoted<{ given: Length; under: Length; turn: Length }, SeamQuote> = {
  value: { given: inch(5 / 8), under: inch(1 / 8), turn: inch(3 / 8) },
  quote: 'felled',
  grade: 'page',
};

/**
 * What the under layer of a flat-felled seam is trimmed to, least and most.
 *
 * Reference: sewingpartsonline.com (1/8 to 1/4 in); thequiltingmill.blogspot.com (1/4 in).
 */
export const FELLED_TRIM: Quoted<readonly [Length, Length], SeamQuote> = {
  value: [inch(1 / 8), inch(1 / 4)],
  quote: 'felled-trim',
  grade: 'page',
};

/**
 * A mock French seam: each allowance pressed in half to the middle.
 *
 * Reference: bellaonline.com, art60164 (5/8 in pressed to 5/16 in).
 */
export const MOCK_FRENCH: Quoted<number, SeamQuote> = {
  value: 2,
  quote: 'mock-french',
  grade: 'page',
};

/**
 * A bound seam: what the bias strip is wider than the allowance, and where it is stitched.
 *
 * Reference: wikisum.wiki, French_seam (5/8 in takes a strip of 7/8 in).
 */
export const BOUND: Quoted<{ wider: Length; stitch: Length }, SeamQuote> = {
  value: { wider: inch(1 / 4), stitch: inch(1 / 8) },
  quote: 'bound',
  grade: 'page',
};

/**
 * An enclosed seam, graded: the layer nearest the outside, and the next.
 *
 * Reference: Goodheart-Willcox, Apparel: Design, Textiles & Construction (2012), p. 451 (outermost
 * widest, 1/4 in); sewingsupport.com (first layer about 1/8 in, the next wider).
 */
export const GRADED: Quoted<{ outer: Length; inner: Length }, SeamQuote> = {
  value: { outer: inch(1 / 4), inner: inch(1 / 8) },
  quote: 'graded',
  grade: 'manual',
};

/**
 * What an enclosed seam is trimmed to, least and most; a seam that is pressed open isn’t trimmed.
 *
 * Reference: Goodheart-Willcox, Apparel: Design, Textiles & Construction (2012), p. 451.
 */
export const TRIMMED: Quoted<readonly [Length, Length], SeamQuote> = {
  value: [inch(1 / 8), inch(1 / 4)],
  quote: 'trimmed',
  grade: 'manual',
};

/** The least that can be overcast or bound, pressed open or in half. Ours; common practice, no source. */
export const LEAST_EDGE: Length = inch(1 / 8);

/**
 * How far apart clips are on a curve, least and most: the sharper the curve, the closer.
 *
 * Reference: Goodheart-Willcox, Apparel: Design, Textiles & Construction (2012), p. 452.
 */
export const CLIPS: Quoted<readonly [closest: Length, widest: Length], SeamQuote> = {
  value: [inch(1 / 4), inch(1 / 2)],
  quote: 'clips',
  grade: 'manual',
};

/**
 * How far short of the stitching a clip stops.
 *
 * Reference: sewingsupport.com, on clipping.
 */
export const CLIP_SHORT: Quoted<Length, SeamQuote> = {
  value: inch(1 / 8),
  quote: 'clip-short',
  grade: 'page',
};

/** Lines commonly found on a needle plate. Common practice, no source. */
export const PLATE_LINES: readonly Length[] = [
  ...[3, 4, 5, 6, 7, 8].map((eighths) => inch(eighths / 8)),
  ...[10, 15, 20, 25, 30].map((millimetres) => (millimetres * 8000) as Length),
];
