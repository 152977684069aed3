import { pleatsWords as words } from '#words/calculations/pleats-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { pleatsAnswer } from './answer.ts';
import { pleatFields } from './fields.ts';
import { pleated } from './pleated.ts';

/** Knife, box and inverted pleats over a finished width, and the strip they are laid in. */
export const pleats: Calculation = {
  id: 'pleats',
  title: words.title,
  ...pleatFields.asked,
  work(draft, bench) {
    const read = pleatFields.read(draft, bench);
    if (!read.ok) return read;
    const found = pleated(read.value);
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: pleatsAnswer(found.value, draft, bench) };
  },
};
