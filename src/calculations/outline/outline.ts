import { outlineWords as words } from '#words/calculations/outline-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { outlineAnswer } from './answer.ts';
import { outlineFields } from './fields.ts';
import { outlineWorked } from './worked.ts';

/** Holes round a closed outline, corners shared; or the same number on two edges. */
export const outline: Calculation = {
  id: 'outline',
  title: words.title,
  ...outlineFields.asked,
  work(draft, bench) {
    const read = outlineFields.read(draft, bench);
    if (!read.ok) return read;
    const found = outlineWorked(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: outlineAnswer(found.value, bench) };
  },
};
