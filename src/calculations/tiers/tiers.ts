import { tiersWords as words } from '#words/calculations/tiers-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { tiers as workTiers } from '../../sewing/fullness/tiers.ts';
import { tiersAnswer } from './answer.ts';
import { tiersFields, tiersInput } from './fields.ts';

/** Tiers of gathered strips, each on the one above. */
export const tiers: Calculation = {
  id: 'tiers',
  title: words.title,
  ...tiersFields.asked,
  beside: [{ id: 'gathers', label: words.one }],
  work(draft, bench) {
    const read = tiersFields.read(draft, bench);
    if (!read.ok) return read;
    const found = workTiers(tiersInput(read.value));
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: tiersAnswer(read.value, found.value, bench) };
  },
};
