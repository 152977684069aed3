import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Published } from './published.ts';

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
export const FRENCH: Published<FrenchRows> = {
  value: { first: inch(3 / 8), trim: inch(1 / 8), second: inch(1 / 4) },
  says: 'first row 3/8 in, trim to 1/8 in, second row 1/4 in: 5/8 in in all',
  source: 'a teaching page on French seams',
  grade: 'page',
};

/**
 * A French seam whose rows take more than a 5/8 in pattern gives.
 *
 * Reference: Utah State University Extension, French Seam, docslib.org/doc/5802070.
 */
export const FRENCH_WIDE: Published<FrenchRows> = {
  value: { first: inch(3 / 8), trim: inch(1 / 8), second: inch(3 / 8) },
  says: 'first row 3/8 in, trim to 1/8 in, second row 3/8 in: 3/4 in in all',
  source: 'French Seam, extension sheet',
  grade: 'manual',
};

/**
 * A flat-felled seam on 5/8 in. The turn is wider than the 1/4 in it is turned into.
 *
 * Reference: bellaonline.com, art60164.
 */
export const FELLED: Published<{ given: Length; under: Length; turn: Length }> = {
  value: { given: inch(5 / 8), under: inch(1 / 8), turn: inch(3 / 8) },
  says: 'on 5/8 in, trim the under layer to 1/8 in, turn the upper one under by 3/8 in, stitch 1/4 in from the seam',
  source: 'a teaching page on seam finishes',
  grade: 'page',
};

/**
 * What the under layer of a flat-felled seam is trimmed to, least and most.
 *
 * Reference: sewingpartsonline.com (1/8 to 1/4 in); thequiltingmill.blogspot.com (1/4 in).
 */
export const FELLED_TRIM: Published<readonly [Length, Length]> = {
  value: [inch(1 / 8), inch(1 / 4)],
  says: 'trim the under layer to 1/8 to 1/4 in, edge-stitch about 1/8 in from the fold',
  source: 'two trade and teaching pages',
  grade: 'page',
};

/**
 * A mock French seam: each allowance pressed in half to the middle.
 *
 * Reference: bellaonline.com, art60164 (5/8 in pressed to 5/16 in).
 */
export const MOCK_FRENCH: Published<number> = {
  value: 2,
  says: 'each allowance pressed in half to the middle and edge-stitched',
  source: 'a teaching page on seam finishes',
  grade: 'page',
};

/**
 * A bound seam: what the bias strip is wider than the allowance, and where it is stitched.
 *
 * Reference: wikisum.wiki, French_seam (5/8 in takes a strip of 7/8 in).
 */
export const BOUND: Published<{ wider: Length; stitch: Length }> = {
  value: { wider: inch(1 / 4), stitch: inch(1 / 8) },
  says: 'bias strip = allowance + 1/4 in, stitched 1/8 in from the edge',
  source: 'a reference page on seams',
  grade: 'page',
};

/**
 * An enclosed seam, graded: the layer nearest the outside, and the next.
 *
 * Reference: Goodheart-Willcox, Apparel: Design, Textiles & Construction (2012), p. 451 (outermost
 * widest, 1/4 in); sewingsupport.com (first layer about 1/8 in, the next wider).
 */
export const GRADED: Published<{ outer: Length; inner: Length }> = {
  value: { outer: inch(1 / 4), inner: inch(1 / 8) },
  says: 'the outermost layer widest, left at 1/4 in; the next about 1/8 in',
  source: 'Apparel: Design, Textiles & Construction, textbook, 2012; a teaching page',
  grade: 'manual',
};

/**
 * What an enclosed seam is trimmed to, least and most; a seam that is pressed open isn’t trimmed.
 *
 * Reference: Goodheart-Willcox, Apparel: Design, Textiles & Construction (2012), p. 451.
 */
export const TRIMMED: Published<readonly [Length, Length]> = {
  value: [inch(1 / 8), inch(1 / 4)],
  says: 'an enclosed seam is trimmed to 1/8 to 1/4 in',
  source: 'Apparel: Design, Textiles & Construction, textbook, 2012',
  grade: 'manual',
};

/** The least that can be overcast or bound, pressed open or in half. Ours; common practice, no source. */
export const LEAST_EDGE: Length = inch(1 / 8);

/**
 * How far apart clips are on a curve, least and most: the sharper the curve, the closer.
 *
 * Reference: Goodheart-Willcox, Apparel: Design, Textiles & Construction (2012), p. 452.
 */
export const CLIPS: Published<readonly [closest: Length, widest: Length]> = {
  value: [inch(1 / 4), inch(1 / 2)],
  says: 'clip a curve every 1/4 to 1/2 in, the sharper the closer',
  source: 'Apparel: Design, Textiles & Construction, textbook, 2012',
  grade: 'manual',
};

/**
 * How far short of the stitching a clip stops.
 *
 * Reference: sewingsupport.com, on clipping.
 */
export const CLIP_SHORT: Published<Length> = {
  value: inch(1 / 8),
  says: 'stop about 1/8 in short of the stitching',
  source: 'a teaching page on clipping',
  grade: 'page',
};

/** Lines commonly found on a needle plate. Common practice, no source. */
export const PLATE_LINES: readonly Length[] = [
  ...[3, 4, 5, 6, 7, 8].map((eighths) => inch(eighths / 8)),
  ...[10, 15, 20, 25, 30].map((millimetres) => (millimetres * 8000) as Length),
];
