import { dartsWords as words } from '#words/calculations/darts-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { dartsAnswer } from './answer.ts';
import { dartsFields } from './fields.ts';
import { taken } from './taken.ts';

/** What seams and darts take between two girths. */
export const darts: Calculation = {
  id: 'darts',
  title: words.title,
  ...dartsFields.asked,
  work(draft, bench) {
    const read = dartsFields.read(draft, bench);
    if (!read.ok) return read;
    const found = taken(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: dartsAnswer(found.value, bench) };
  },
};
