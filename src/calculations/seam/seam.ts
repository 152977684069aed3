import { seamWords as words } from '#words/calculations/seam-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { seamFields } from './fields.ts';
import { WORKS } from './works.ts';

/** Seam allowances: what a finish takes, another allowance, letting out, clips. */
export const seam: Calculation = {
  id: 'seam',
  title: words.title,
  ...seamFields.asked,
  work(draft, bench) {
    const read = seamFields.read(draft, bench);
    if (!read.ok) return read;
    const outcome = WORKS[read.value.what](read.value, bench);
    return outcome.ok ? { ok: true, answer: outcome.value } : refusedFor(outcome.problems);
  },
};
