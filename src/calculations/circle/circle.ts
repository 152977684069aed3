import { circleWords as words } from '#words/calculations/circle-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { circleAnswer } from './answer.ts';
import { circleFields } from './fields.ts';
import { rounded } from './rounded.ts';

/** A circular skirt or a part of one, a flounce, or gores: pieces between two arcs. */
export const circle: Calculation = {
  id: 'circle',
  title: words.title,
  ...circleFields.asked,
  work(draft, bench) {
    const read = circleFields.read(draft, bench);
    if (!read.ok) return read;
    const found = rounded(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: circleAnswer(found.value, bench) };
  },
};
