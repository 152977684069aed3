import { groupedWords as words } from '#words/calculations/grouped-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { groupedAnswer } from './answer.ts';
import { groupedFields } from './fields.ts';
import { groupedOf } from './worked.ts';

/** Closings that are no single row: groups, a band's lapped end, loops, a hanger, a snap over a fold. */
export const grouped: Calculation = {
  id: 'grouped',
  title: words.title,
  ...groupedFields.asked,
  work(draft, bench) {
    const read = groupedFields.read(draft, bench);
    if (!read.ok) return read;
    const found = groupedOf(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: groupedAnswer(found.value, bench) };
  },
};
