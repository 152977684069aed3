import { curveWords as words } from '#words/calculations/curve-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { curveAnswer } from './answer.ts';
import { curveFields } from './fields.ts';
import { curveWorked } from './worked.ts';

/** A stitch line inside a curved edge, a slanted edge, and a cut end squared by its diagonals. */
export const curve: Calculation = {
  id: 'curve',
  title: words.title,
  ...curveFields.asked,
  work(draft, bench) {
    const read = curveFields.read(draft, bench);
    if (!read.ok) return read;
    const found = curveWorked(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: curveAnswer(found.value, bench) };
  },
};
