import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published-piece-words.ts`. */
export type PieceQuote = 'patch-pocket' | 'fitting-allowances';

const inch = (parts: number) => (UNITS_PER_INCH * parts) as Length;

/**
 * What the edges of a patch pocket take: its top a hem of 1 in and a turn, the others a seam.
 *
 * Reference: A Complete Course in Dressmaking, vol. 2, about 1922, pages 27 and 32, en.wikisource.org.
 */
export const PATCH_POCKET: Quoted<{ top: Length; others: Length }, PieceQuote> = {
  value: { top: inch(11 / 8), others: inch(3 / 8) },
  quote: 'patch-pocket',
  grade: 'manual',
};

/** What each edge takes; nothing where the source has none for it. */
export interface EdgesTake {
  top: Length;
  bottom: Length | undefined;
  side: Length;
}

/**
 * What is left at the edges of drafted pieces that are still to be fitted. A bodice's top is its shoulder.
 *
 * Reference: a drafting textbook of the 1920s whose title the scan does not show,
 * search.library.wisc.edu APQNNBQSEU2T5M9B.
 */
export const FITTING: Quoted<
  Readonly<Record<'skirt' | 'bodice' | 'sleeve', EdgesTake>>,
  PieceQuote
> = {
  value: {
    skirt: { top: inch(1 / 2), bottom: undefined, side: inch(3 / 2) },
    bodice: { top: inch(1), bottom: undefined, side: inch(1) },
    sleeve: { top: inch(1 / 4), bottom: inch(1 / 4), side: inch(1) },
  },
  quote: 'fitting-allowances',
  grade: 'manual',
};
