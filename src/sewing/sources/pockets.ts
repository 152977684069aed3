import { inches, type Length } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-pocket-words.ts`. */
export type PocketQuote =
  | 'two-thirds'
  | 'patch-top'
  | 'corner-trim'
  | 'in-seam'
  | 'slash-facing'
  | 'hand-level';

/**
 * Of what a pocket leaves of a half front, how much lies towards the centre.
 *
 * Reference: seweverythingblog.com, 13 August 2019: level 12.5 in wide, pocket 6, so 4.33 in from the centre.
 */
export const TO_CENTRE: Quoted<{ parts: 2; of: 3 }, PocketQuote> = {
  value: { parts: 2, of: 3 },
  quote: 'two-thirds',
  grade: 'page',
};

/**
 * What is added above the top of a patch pocket: its hem and a seam.
 *
 * Reference: A Complete Course in Dressmaking, vol. 2, pages 27 and 32.
 */
export const PATCH_TOP: Quoted<{ hem: Length; seam: Length }, PocketQuote> = {
  value: { hem: inches(1), seam: inches(3 / 8) },
  quote: 'patch-top',
  grade: 'manual',
};

/**
 * Turned-in corners are trimmed to so much of the finished corner.
 *
 * Reference: the same, page 32.
 */
export const CORNER_TRIM: Quoted<Length, PocketQuote> = {
  value: inches(1 / 4),
  quote: 'corner-trim',
  grade: 'manual',
};

/**
 * A pocket in a seam: how long it opens, and how far below the waist it begins.
 *
 * Reference: doinaalexei.com, post 350.
 */
export const IN_SEAM: Quoted<
  { opening: readonly [Length, Length]; below: readonly [Length, Length] },
  PocketQuote
> = {
  value: { opening: [inches(5), inches(6.5)], below: [inches(3), inches(6)] },
  quote: 'in-seam',
  grade: 'page',
};

/**
 * The facing of a slashed pocket: how wide, and how far beyond each end of the opening.
 *
 * Reference: Butterick, The New Dressmaker, 1921, page 104.
 */
export const SLASH_FACING: Quoted<{ wide: Length; beyond: Length }, PocketQuote> = {
  value: { wide: inches(3), beyond: inches(1 / 2) },
  quote: 'slash-facing',
  grade: 'manual',
};
