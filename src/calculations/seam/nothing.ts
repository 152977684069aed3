import { cautionWords } from '#words/common/caution-words.ts';

/** What answers about seams have in common: no offers, and the caution where blades come. */
export const NOTHING = {
  lines: [],
  offers: [],
  warnings: [],
  cautions: [cautionWords.blades],
  runs: [],
} as const;
