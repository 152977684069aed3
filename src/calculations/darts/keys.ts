import type { Taker } from './fields.ts';

/** Keys of the outputs of one of each place. */
export const KEYS: Readonly<Record<Taker, string>> = {
  sides: 'side-edge',
  frontDarts: 'front-dart',
  backDarts: 'back-dart',
};
