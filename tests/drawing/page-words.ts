import { paperWords } from '#words/paper/paper-words.ts';
import type { PaperWords } from '../../src/drawing/paper-job.ts';

/** What stands on pages, with lengths in millimetres. */
export const PAGE_WORDS: PaperWords = {
  ...paperWords,
  bandOf: ({ name, datum, length }, from, to) =>
    paperWords.bandOf(name, `${from}`, `${to}`, `${length} mm`, datum),
  partOf: (across, down) =>
    paperWords.partOf(`${across.from}`, `${across.to}`, `${down.from}`, `${down.to}`),
};
