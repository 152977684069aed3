import { ventWords as words } from '#words/calculations/vent-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { ventAnswer } from './answer.ts';
import { ventFields } from './fields.ts';
import { ventOf } from './worked.ts';

/** Room at the hip, and where a vent has to begin. */
export const vent: Calculation = {
  id: 'vent',
  title: words.title,
  ...ventFields.asked,
  work(draft, bench) {
    const read = ventFields.read(draft, bench);
    if (!read.ok) return read;
    const outcome = ventOf(read.value);
    if (!outcome.ok) return refusedFor(outcome.problems);
    return { ok: true, answer: ventAnswer(read.value, outcome.value, bench) };
  },
};
