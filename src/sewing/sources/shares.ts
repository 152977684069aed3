import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-share-words.ts`. */
export type ShareQuote = 'hip-to-waist';

/** Shares of one of each, per cent, and how many there are. */
type Share = Readonly<{ count: number; share: number }>;

/**
 * How the difference of hip and waist is shared over side seams and darts.
 *
 * Reference: patternstudio101.com, skirt darts. Its rounded shares come to 7 3/4 in of 8.
 */
export const HIP_TO_WAIST: Quoted<
  Readonly<Record<'sides' | 'frontDarts' | 'backDarts', Share>>,
  ShareQuote
> = {
  value: {
    sides: { count: 4, share: 13 },
    frontDarts: { count: 2, share: 8 },
    backDarts: { count: 2, share: 16 },
  },
  quote: 'hip-to-waist',
  grade: 'page',
};
