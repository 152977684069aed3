import { type Length, UNITS_PER_INCH } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-piece-words.ts`. */
export type PieceQuote = 'fitting-allowances';

const inch = (parts: number) => (UNITS_PER_INCH * parts) as Length;

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
