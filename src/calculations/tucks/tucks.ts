import { tucksWords as words } from '#words/calculations/tucks-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { tucksAnswer } from './answer.ts';
import { tuckFields } from './fields.ts';
import { tucked } from './tucked.ts';

/** Tucks over a finished width, and the cloth they take. */
export const tucks: Calculation = {
  id: 'tucks',
  title: words.title,
  ...tuckFields.asked,
  work(draft, bench) {
    const read = tuckFields.read(draft, bench);
    if (!read.ok) return read;
    const found = tucked(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: tucksAnswer(found.value, draft, bench) };
  },
};
