import { crossingWords as words } from '#words/calculations/crossing-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { crossing as workCrossing } from '../../sewing/crossing/strip-crossing.ts';
import { crossingAnswer } from './answer.ts';
import { crossedOf, crossingFields } from './fields.ts';

/** Where the holes of two crossing strips come to lie, and how to lay them clear. */
export const crossing: Calculation = {
  id: 'crossing',
  title: words.title,
  ...crossingFields.asked,
  work(draft, bench) {
    const read = crossingFields.read(draft, bench);
    if (!read.ok) return read;
    const input = crossedOf(read.value);
    const outcome = workCrossing(input);
    if (!outcome.ok) return refusedFor(outcome.problems);
    return { ok: true, answer: crossingAnswer(input, outcome.value, bench) };
  },
};
