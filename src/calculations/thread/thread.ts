import { threadWords as words } from '#words/calculations/thread-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { threadAnswer } from './answer.ts';
import { threadFields } from './fields.ts';
import { threadOf } from './worked.ts';

/** Thread for seams of one kind: how much, of which thread, how many spools and bobbins. */
export const thread: Calculation = {
  id: 'thread',
  title: words.title,
  ...threadFields.asked,
  work(draft, bench) {
    const read = threadFields.read(draft, bench);
    if (!read.ok) return read;
    const found = threadOf(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: threadAnswer(read.value, found.value, bench) };
  },
};
