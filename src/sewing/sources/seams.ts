import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Published } from './published.ts';

const inch = (parts: number) => (UNITS_PER_INCH * parts) as Length;

/** A French seam on 5/8 in: the two rows and the trimming between them. */
export const FRENCH: Published<{ first: Length; trim: Length; second: Length }> = {
  value: { first: inch(3 / 8), trim: inch(1 / 8), second: inch(1 / 4) },
  says: 'first row 3/8 in, trim to 1/8 in, second row 1/4 in: 5/8 in in all',
  source: 'enleedesigns.com, French seams',
  grade: 'page',
};

/** A French seam whose rows take more than a 5/8 in pattern gives. */
export const FRENCH_WIDE: Published<{ first: Length; trim: Length; second: Length }> = {
  value: { first: inch(3 / 8), trim: inch(1 / 8), second: inch(3 / 8) },
  says: 'first row 3/8 in, trim to 1/8 in, second row 3/8 in: 3/4 in in all',
  source: 'Utah State University Extension, French Seam',
  grade: 'manual',
};

/** A flat-felled seam on 5/8 in. */
export const FELLED: Published<{ under: Length; turn: Length }> = {
  value: { under: inch(1 / 8), turn: inch(3 / 8) },
  says: 'trim the under layer to 1/8 in, turn the upper one under by 3/8 in, stitch 1/4 in from the seam',
  source: 'bellaonline.com, art60164',
  grade: 'page',
};

/** A mock French seam: each allowance pressed in half to the middle. */
export const MOCK_FRENCH: Published<number> = {
  value: 2,
  says: 'each allowance pressed in half to the middle and edge-stitched',
  source: 'bellaonline.com, art60164',
  grade: 'page',
};

/** A bound seam: what the bias strip is wider than the allowance, and where it is stitched. */
export const BOUND: Published<{ wider: Length; stitch: Length }> = {
  value: { wider: inch(1 / 4), stitch: inch(1 / 8) },
  says: 'bias strip = allowance + 1/4 in, stitched 1/8 in from the edge',
  source: 'wikisum.wiki, French seam',
  grade: 'page',
};

/** An enclosed seam, graded: the layer nearest the outside, and the next. */
export const GRADED: Published<{ outer: Length; inner: Length }> = {
  value: { outer: inch(1 / 4), inner: inch(1 / 8) },
  says: 'the outermost layer widest, left at 1/4 in; the next about 1/8 in',
  source:
    'Goodheart-Willcox, Apparel: Design, Textiles & Construction (2012), p. 451; sewingsupport.com',
  grade: 'manual',
};

/** What a plain seam is trimmed to before its edges are overcast, least and most. */
export const TRIMMED: Published<readonly [Length, Length]> = {
  value: [inch(1 / 8), inch(1 / 4)],
  says: 'trimmed to 1/8 to 1/4 in',
  source: 'Goodheart-Willcox, Apparel: Design, Textiles & Construction (2012), p. 451',
  grade: 'manual',
};

/** How far apart clips are on a curve, least and most, and where they stop. */
export const CLIPS: Published<{ closest: Length; widest: Length; short: Length }> = {
  value: { closest: inch(1 / 4), widest: inch(1 / 2), short: inch(1 / 8) },
  says: 'clip every 1/4 to 1/2 in, stop 1/8 in short of the stitching',
  source: 'Goodheart-Willcox, Apparel (2012), p. 452; sewingsupport.com for the depth',
  grade: 'manual',
};

/** Lines commonly found on a needle plate. Common practice, no source. */
export const PLATE_LINES: readonly Length[] = [
  ...[3, 4, 5, 6, 7, 8].map((eighths) => inch(eighths / 8)),
  ...[10, 15, 20, 25, 30].map((millimetres) => (millimetres * 8000) as Length),
];
