import { inches, type Length } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-thread-words.ts`. */
export type ThreadQuote =
  | 'ratios'
  | 'guide'
  | 'chain-ratio'
  | 'chain-formula'
  | 'lock-formula'
  | 'single-formula'
  | 'looper'
  | 'waste'
  | 'ends'
  | 'working'
  | 'ticket'
  | 'cotton-ticket';

/**
 * Threads in use at once, by what each stitch is made of: what ISO 4915 describes, from memory.
 */
export const THREADS = {
  lock: 2,
  zigzag: 2,
  chain: 2,
  single: 1,
  blind: 1,
  over2: 2,
  over3: 3,
  over4: 4,
  safety: 5,
  twin: 3,
  cover4: 4,
  cover5: 5,
  cover9: 9,
  hand: 1,
} as const;

/** A stitch: those of ISO 4915 by what they are called, and whatever is sewn by hand. */
export type StitchKind = keyof typeof THREADS;

type Ratios = Readonly<Partial<Record<StitchKind, number>>>;

/**
 * Thread to seam, length to length.
 *
 * Reference: factors of Carr and Latham, a textbook of clothing manufacture, and a thread maker, as
 * tabulated in scribd.com document 194966618.
 */
export const RATIOS: Quoted<Ratios, ThreadQuote> = {
  value: {
    ...{ lock: 2.5, single: 4, chain: 5.5, zigzag: 7, over2: 12, over3: 14, over4: 18 },
    ...{ safety: 20, twin: 18, cover4: 25, cover5: 28, cover9: 32 },
  },
  quote: 'ratios',
  grade: 'manual',
};

/**
 * The same of a thread maker's guide to stitch types, approximate: of what both have, half is otherwise.
 *
 * Reference: a standard stitch type classification, scribd.com document 49933681.
 */
export const GUIDE: Quoted<Ratios, ThreadQuote> = {
  value: { lock: 2.5, single: 5, blind: 4.5, zigzag: 5.5 },
  quote: 'guide',
  grade: 'page',
};

/**
 * The same of a chainstitch, in a worked example.
 *
 * Reference: a thread maker's bulletin on estimating consumption, archived 2008,
 * web.archive.org/web/20080216233719, estimating_consumption.htm.
 */
export const CHAIN_RATIO: Quoted<Ratios, ThreadQuote> = {
  value: { chain: 5 },
  quote: 'chain-ratio',
  grade: 'page',
};

/** What a formula has before its thickness: thread of one stitch in stitch lengths. */
type Constant = Quoted<number, ThreadQuote>;

/** Chainstitch: 4 + 2 × thickness ÷ stitch length. Reference: the same bulletin. */
export const CHAIN_FORMULA: Constant = { value: 4, quote: 'chain-formula', grade: 'page' };

/**
 * Lockstitch: 2 + 2 × thickness ÷ stitch length.
 *
 * Reference: teaching pages on textile calculation, textilecalculation.blogspot.com, June 2015.
 */
export const LOCK_FORMULA: Constant = { value: 2, quote: 'lock-formula', grade: 'page' };

/** Single chainstitch: 3 + 2 × thickness ÷ stitch length. Reference: the same pages. */
export const SINGLE_FORMULA: Constant = { value: 3, quote: 'single-formula', grade: 'page' };

/** A looper's part of a chainstitch's thread. Reference: the bulletin above. */
export const LOOPER: Quoted<number, ThreadQuote> = { value: 0.6, quote: 'looper', grade: 'page' };

/**
 * Thread that is lost: per cent of what is sewn, least and most.
 *
 * Reference: the bulletin above, 15 to 20; apparelscience.com, measuring thread consumption, 10 to 15.
 */
export const WASTE: Quoted<readonly [number, number], ThreadQuote> = {
  value: [10, 20],
  quote: 'waste',
  grade: 'page',
};

/** A thread worked with by hand, least and most. Reference: a teaching page, melgeecrafts.com. */
export const WORKING: Quoted<readonly [Length, Length], ThreadQuote> = {
  value: [inches(18), inches(24)],
  quote: 'working',
  grade: 'page',
};

/**
 * A ticket number is that many thousands over the tex: three times the metric count.
 *
 * Reference: a teaching page, apparelmerchandisinglearner.blogspot.com, May 2017.
 */
export const TICKET: Quoted<number, ThreadQuote> = {
  value: 3000,
  quote: 'ticket',
  grade: 'page',
};

/**
 * The same of cotton: three times its cotton count, 590.54 over the tex.
 *
 * Reference: the same page.
 */
export const COTTON_TICKET: Quoted<number, ThreadQuote> = {
  value: 3 * 590.54,
  quote: 'cotton-ticket',
  grade: 'page',
};
