import type { UsualSource } from '../../../sewing/sources/usual.ts';
import { lacingQuotes } from '../published/published-lacing-words.ts';

const common = 'common practice, no source';

/** Who says what is usual. */
const source: Readonly<Record<UsualSource, string>> = {
  common,
  'button-sizes': 'two trade tables of button sizes',
  'lace-pieces': `${lacingQuotes.comfortable.source}; up to five times as much, ${common}`,
};

/** Quiet questions about what is unusual. */
export const doubtWords = {
  /** At the field itself, whose name stands above. */
  ask: (past: 'least' | 'most', end: string) => `at ${past} ${end} is usual: is this right?`,
  /** The same where the field has to be named. */
  askOf: (label: string, past: 'least' | 'most', end: string) =>
    `${label}: at ${past} ${end} is usual. Is this right?`,
  usual: (label: string, past: 'least' | 'most', end: string) =>
    `${label}: at ${past} ${end} is usual.`,
  source,
};
