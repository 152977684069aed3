import { levelWords as words } from '#words/calculations/level-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { hemLevel } from '../../sewing/hems/hem-level.ts';
import { mustBePositiveIfGiven } from '../../sewing/length-checks.ts';
import { levelAnswer } from './answer.ts';
import { levelFields } from './fields.ts';

/** A hem levelled from the floor. */
export const level: Calculation = {
  id: 'level',
  title: words.title,
  ...levelFields.asked,
  work(draft, bench) {
    const read = levelFields.read(draft, bench);
    if (!read.ok) return read;
    const found = hemLevel(read.value);
    if (!found.ok) return refusedFor(found.problems);
    const odd = mustBePositiveIfGiven('sweep', read.value.sweep);
    if (odd.length > 0) return refusedFor(odd);
    const answer = levelAnswer(read.value, found.value, bench);
    const offers = answer.offers.map((one) => ({ ...one, take: { ...draft, ...one.take } }));
    return { ok: true, answer: { ...answer, offers } };
  },
};
