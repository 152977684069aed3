import type { Quoted } from './published.ts';

/** What of this file is quoted; its words are in `src/words/en/published/published-pleat-words.ts`. */
export type PleatQuote = 'knife-takes' | 'box-takes' | 'fitted-level';

/**
 * Depths of cloth a knife pleat takes up.
 *
 * Reference: National Instructional Media Institute (Government of India), CITS Dress Making, Trade Practical, vol. 2, 2024, pages 203–204.
 */
export const KNIFE_TAKES: Quoted<number, PleatQuote> = {
  value: 2,
  quote: 'knife-takes',
  grade: 'manual',
};

/**
 * Depths of cloth a box pleat takes up, and an inverted one: two knife pleats back to back, or face to face.
 *
 * Reference: the same, pages 204–205.
 */
export const BOX_TAKES: Quoted<number, PleatQuote> = {
  value: 4,
  quote: 'box-takes',
  grade: 'manual',
};
