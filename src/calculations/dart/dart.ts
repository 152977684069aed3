import { dartWords as words } from '#words/calculations/dart-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { dartAnswer } from './answer.ts';
import { darted } from './darted.ts';
import { dartFields } from './fields.ts';

/** One dart, its raw edge, and what it may be turned into. */
export const dart: Calculation = {
  id: 'dart',
  title: words.title,
  ...dartFields.asked,
  work(draft, bench) {
    const read = dartFields.read(draft, bench);
    if (!read.ok) return read;
    const found = darted(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: dartAnswer(found.value, bench) };
  },
};
