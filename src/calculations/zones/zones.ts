import { zonesWords as words } from '#words/calculations/zones-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { gatherZones } from '../../sewing/fullness/gather-zones.ts';
import { zonesAnswer } from './answer.ts';
import { zonesFields, zonesInput } from './fields.ts';

/** An edge that is gathered in places, or more in some than in others. */
export const zones: Calculation = {
  id: 'zones',
  title: words.title,
  ...zonesFields.asked,
  beside: [{ id: 'gathers', label: words.even }],
  work(draft, bench) {
    const read = zonesFields.read(draft, bench);
    if (!read.ok) return read;
    const found = gatherZones(zonesInput(read.value));
    if (!found.ok) return refusedFor(found.problems);
    return { ok: true, answer: zonesAnswer(read.value, found.value, bench) };
  },
};
