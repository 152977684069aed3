import { pocketWords as words } from '#words/calculations/pocket-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { pocketAnswer } from './answer.ts';
import { pocketFields } from './fields.ts';
import { pocketOf } from './worked.ts';

/** A pocket's place, alike on both fronts, and what is cut for it. */
export const pocket: Calculation = {
  id: 'pocket',
  title: words.title,
  ...pocketFields.asked,
  work(draft, bench) {
    const read = pocketFields.read(draft, bench);
    if (!read.ok) return read;
    const found = pocketOf(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: pocketAnswer(found.value, bench) };
  },
};
