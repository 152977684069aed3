import { elasticWords as words } from '#words/calculations/elastic-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { elasticAnswer } from './answer.ts';
import { elasticFields } from './fields.ts';
import { elasticOf } from './worked.ts';

/** Elastic round a body, and the casing it runs in. */
export const elastic: Calculation = {
  id: 'elastic',
  title: words.title,
  ...elasticFields.asked,
  work(draft, bench) {
    const read = elasticFields.read(draft, bench);
    if (!read.ok) return read;
    const found = elasticOf(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: elasticAnswer(found.value, bench) };
  },
};
