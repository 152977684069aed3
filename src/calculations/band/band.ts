import { bandWords as words } from '#words/calculations/band-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { bandAnswer } from './answer.ts';
import { banded } from './banded.ts';
import { bandFields } from './fields.ts';

/** A waistband or cuff, and its interfacing. */
export const band: Calculation = {
  id: 'band',
  title: words.title,
  ...bandFields.asked,
  work(draft, bench) {
    const read = bandFields.read(draft, bench);
    if (!read.ok) return read;
    const found = banded(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: bandAnswer(found.value, bench) };
  },
};
