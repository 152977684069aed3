import { type Length, mm } from '../../lengths/length.ts';
import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-band-words.ts`. */
export type BandQuote = 'wide' | 'underlap';

type Range = Quoted<readonly [least: Length, most: Length], BandQuote>;

/** How wide a waistband is when it is sewn. Reference: moodlehub.ca, page 47834, a school's course. */
export const WAISTBAND_WIDE: Range = { value: [mm(40), mm(50)], quote: 'wide', grade: 'manual' };

/** How far a waistband runs under its other end. Reference: the same. */
export const UNDERLAP: Range = { value: [mm(50), mm(80)], quote: 'underlap', grade: 'manual' };
