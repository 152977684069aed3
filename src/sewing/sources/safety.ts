import type { Published } from './published.ts';

/**
 * The hottest sole plate for one dot, in °C. The 2023 edition of ISO 3758 says 120;
 * the lower figure is shown, since labels of the older edition are still worn.
 *
 * Reference: ISO 3758:2012, as given by donnad.it and launderwise.com; boken.or.jp news 25066 for 2023. The standards themselves were not read.
 * It says: one dot: sole plate at most 110 °C (ISO 3758:2012); 120 °C in the edition of 2023.
 */
export const IRON_ONE_DOT: Published<number> = {
  value: 110,
  grade: 'page',
};
