import { collarWords as words } from '#words/calculations/collar-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { collar as collarOf } from '../../sewing/bands/collar.ts';
import { collarAnswer } from './answer.ts';
import { collarFields } from './fields.ts';

/** A collar, upper and under. */
export const collar: Calculation = {
  id: 'collar',
  title: words.title,
  ...collarFields.asked,
  work(draft, bench) {
    const read = collarFields.read(draft, bench);
    if (!read.ok) return read;
    const found = collarOf(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: collarAnswer(read.value, found.value, bench) };
  },
};
