import { matchWords as words } from '#words/calculations/match-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { matchAnswer } from './answer.ts';
import { matchFields } from './fields.ts';
import { matchedOf } from './read.ts';

/** Two edges sewn together: what is eased where, marks for it, and what is in the way. */
export const match: Calculation = {
  id: 'match',
  title: words.title,
  ...matchFields.asked,
  work(draft, bench) {
    const read = matchFields.read(draft, bench);
    if (!read.ok) return read;
    const found = matchedOf(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: matchAnswer(found.value, draft, bench) };
  },
};
