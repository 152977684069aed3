import { sharesWords as words } from '#words/calculations/shares-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { sharesAnswer } from './answer.ts';
import { sharesFields } from './fields.ts';
import { changedOf } from './read.ts';

/** A change of girth or length shared over seam edges, darts and lines in whole steps. */
export const shares: Calculation = {
  id: 'shares',
  title: words.title,
  ...sharesFields.asked,
  work(draft, bench) {
    const read = sharesFields.read(draft, bench);
    if (!read.ok) return read;
    const found = changedOf(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: sharesAnswer(found.value, bench) };
  },
};
