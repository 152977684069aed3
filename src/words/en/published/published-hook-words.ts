import type { HookQuote } from '../../../sewing/sources/hooks.ts';
import type { Quote } from './published-words.ts';

/** What is published of hooks. */
export const hookQuotes: Readonly<Record<HookQuote, Quote>> = {
  'hook-set-back-eighth': {
    says: 'hooks are set 1/8 in back from the edge',
    source: 'Guide C-232, extension sheet; School Sewing, textbook',
  },
  'hook-set-back-quarter': {
    says: 'hooks are set 1/4 in back from the edge',
    source: 'The New Dressmaker, handbook, 1921; Text-Book on Domestic Art',
  },
};
