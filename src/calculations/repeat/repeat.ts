import { repeatWords as words } from '#words/calculations/repeat-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { repeatAnswer } from './answer.ts';
import { repeatFields } from './fields.ts';
import { repeatWorked } from './worked.ts';

/** Stripes and checks: what matching costs, where pieces begin, and where the repeat falls. */
export const repeat: Calculation = {
  id: 'repeat',
  title: words.title,
  ...repeatFields.asked,
  work(draft, bench) {
    const read = repeatFields.read(draft, bench);
    if (!read.ok) return read;
    const found = repeatWorked(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: repeatAnswer(found.value, bench) };
  },
};
