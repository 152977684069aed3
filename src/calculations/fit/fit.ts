import { fitWords as words } from '#words/calculations/fit-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { fitAnswer } from './answer.ts';
import { fitFields } from './fields.ts';
import { fitOf } from './worked.ts';

/** Finished girth from body and ease, and from the pieces back to the ease there is. */
export const fit: Calculation = {
  id: 'fit',
  title: words.title,
  ...fitFields.asked,
  work(draft, bench) {
    const read = fitFields.read(draft, bench);
    if (!read.ok) return read;
    const outcome = fitOf(read.value);
    if (!outcome.ok) return refusedFor(outcome.problems);
    return { ok: true, answer: fitAnswer(read.value, outcome.value, bench) };
  },
};
