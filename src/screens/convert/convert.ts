import type { Calculation } from '../../controls/calculation.ts';
import { readDraft } from '../../controls/draft.ts';
import { convertWords as words } from '../../words/convert-words.ts';
import { lengthAnswer } from './length.ts';

/** Any length in both systems. */
export const convert: Calculation = {
  id: 'convert',
  title: words.title,
  start: (bench) => ({ length: bench.unit === 'in' ? '5/8' : '5/8 in' }),
  fields: () => [{ kind: 'length', key: 'length', label: words.length }],
  work(draft, bench) {
    const read = readDraft(draft, bench);
    const length = read.length('length');
    if (length === undefined) return { ok: false, faults: read.faults };
    if (length < 0) {
      return {
        ok: false,
        faults: [{ field: 'length', why: { of: 'words', words: words.negative } }],
      };
    }
    return { ok: true, answer: lengthAnswer(length, read.text('length'), bench) };
  },
  beside: [{ id: 'sizes', label: words.beside }],
};
