import { gathersWords as words } from '#words/calculations/gathers-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { gathersAnswer } from './answer.ts';
import { gathersFields } from './fields.ts';
import { gathered } from './gathered.ts';

/** A frill, a ruffle or a skirt gathered to an edge, and the strip it takes. */
export const gathers: Calculation = {
  id: 'gathers',
  title: words.title,
  ...gathersFields.asked,
  work(draft, bench) {
    const read = gathersFields.read(draft, bench);
    if (!read.ok) return read;
    const found = gathered(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: gathersAnswer(found.value, draft, bench) };
  },
};
