import { openingWords as words } from '#words/calculations/opening-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { mustBePositiveIfGiven } from '../../sewing/length-checks.ts';
import { passOver } from '../../sewing/wearer/pass-over.ts';
import { openingAnswer } from './answer.ts';
import { openingFields } from './fields.ts';

/** Whether an edge passes the head, the hand, the heel or the hips, and the opening it takes. */
export const opening: Calculation = {
  id: 'opening',
  title: words.title,
  ...openingFields.asked,
  work(draft, bench) {
    const read = openingFields.read(draft, bench);
    if (!read.ok) return read;
    const { slit } = read.value;
    const problems = mustBePositiveIfGiven('slit', slit);
    const found = passOver(read.value);
    if (problems.length > 0) return refusedFor(problems);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: openingAnswer(read.value, found.value, bench) };
  },
};
