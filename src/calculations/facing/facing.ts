import { facingWords as words } from '#words/calculations/facing-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { facedHem, facingLength } from '../../sewing/hems/hem-facing.ts';
import { facingAnswer } from './answer.ts';
import { facingFields } from './fields.ts';

/** A hem finished with a facing, where its curve is too full or too short to be turned up. */
export const facing: Calculation = {
  id: 'facing',
  title: words.title,
  ...facingFields.asked,
  work(draft, bench) {
    const read = facingFields.read(draft, bench);
    if (!read.ok) return read;
    const outcome = facedHem(read.value);
    if (!outcome.ok) return refusedFor(outcome.problems);
    const { edge, seam } = read.value;
    const long = edge === undefined ? undefined : facingLength(edge, seam);
    if (long?.ok === false) return refusedFor(long.problems);
    return { ok: true, answer: facingAnswer(read.value, outcome.value, bench) };
  },
};
