import { placketWords as words } from '#words/calculations/placket-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { placketAnswer } from './answer.ts';
import { placketFields } from './fields.ts';
import { placketOf } from './worked.ts';

/** An opening's strips, or its zip. */
export const placket: Calculation = {
  id: 'placket',
  title: words.title,
  ...placketFields.asked,
  work(draft, bench) {
    const read = placketFields.read(draft, bench);
    if (!read.ok) return read;
    const found = placketOf(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: placketAnswer(found.value, bench) };
  },
};
