import { seamWords as words } from '#words/seam-words.ts';

/** What answers about seams have in common: no offers, and the caution where blades come. */
export const NOTHING = {
  lines: [],
  offers: [],
  warnings: [],
  cautions: [words.blades],
  runs: [],
} as const;
