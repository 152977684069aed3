import { biasWords as words } from '#words/calculations/bias-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { biasAnswer } from './answer.ts';
import { biasFields } from './fields.ts';
import { biasOf } from './worked.ts';

/** Bias strips: joined, in one from a tube, or one from a square; how much cloth, or how much strip. */
export const bias: Calculation = {
  id: 'bias',
  title: words.title,
  ...biasFields.asked,
  work(draft, bench) {
    const read = biasFields.read(draft, bench);
    if (!read.ok) return read;
    const found = biasOf(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: biasAnswer(read.value, found.value, bench) };
  },
};
