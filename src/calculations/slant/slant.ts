import { slantWords as words } from '#words/calculations/slant-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { slantedHem } from '../../sewing/hems/slanted-hem.ts';
import { slantAnswer } from './answer.ts';
import { slantFields, slantInput } from './fields.ts';

/** A slanted hem, of one piece or of a pair. */
export const slant: Calculation = {
  id: 'slant',
  title: words.title,
  ...slantFields.asked,
  beside: [{ id: 'hem', label: words.straight }],
  work(draft, bench) {
    const read = slantFields.read(draft, bench);
    if (!read.ok) return read;
    const found = slantedHem(slantInput(read.value));
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: slantAnswer(read.value, found.value, bench) };
  },
};
