import { cordWords as words } from '#words/calculations/cord-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { cordAnswer } from './answer.ts';
import { corded } from './corded.ts';
import { cordFields } from './fields.ts';

/** A drawstring, its casing, and the limits of its ends for children. */
export const cord: Calculation = {
  id: 'cord',
  title: words.title,
  ...cordFields.asked,
  work(draft, bench) {
    const read = cordFields.read(draft, bench);
    if (!read.ok) return read;
    const found = corded(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: cordAnswer(found.value, bench) };
  },
};
