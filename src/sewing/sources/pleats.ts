import type { Published } from './published.ts';

/**
 * Depths of cloth a knife pleat takes up.
 *
 * Reference: National Instructional Media Institute (Government of India), CITS Dress Making, Trade Practical, vol. 2, 2024, pages 203–204.
 */
export const KNIFE_TAKES: Published<number> = {
  value: 2,
  says: 'a knife pleat takes its depth twice, whatever it is',
  source: 'Dress Making, Trade Practical 2, government teaching book, 2024',
  grade: 'manual',
};

/**
 * Depths of cloth a box pleat takes up, and an inverted one: two knife pleats back to back, or face to face.
 *
 * Reference: the same, pages 204–205.
 */
export const BOX_TAKES: Published<number> = {
  value: 4,
  says: 'a box or inverted pleat takes its depth four times',
  source: 'Dress Making, Trade Practical 2, government teaching book, 2024',
  grade: 'manual',
};
