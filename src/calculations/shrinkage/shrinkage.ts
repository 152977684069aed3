import { shrinkageWords as words } from '#words/calculations/shrinkage-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { shrinkageAnswer } from './answer.ts';
import { shrinkageFields } from './fields.ts';
import { shrinkageOf } from './worked.ts';

/** What cloth loses, and what is cut so that it comes out as wanted. */
export const shrinkage: Calculation = {
  id: 'shrinkage',
  title: words.title,
  ...shrinkageFields.asked,
  work(draft, bench) {
    const read = shrinkageFields.read(draft, bench);
    if (!read.ok) return read;
    const kept = shrinkageOf(read.value);
    if (!kept.ok) return refusedFor(kept.problems);
    return { ok: true, answer: shrinkageAnswer(read.value, kept.value, bench) };
  },
};
