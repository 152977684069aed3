import { pleatsWords as words } from '#words/calculations/pleats-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { pleats as pleated } from '../../sewing/pleats.ts';
import { stripsFor } from '../../sewing/strips.ts';
import { pleatsAnswer } from './answer.ts';
import { pleatFields, pleatsInput } from './fields.ts';

/** Knife, box and inverted pleats over a finished width, and the strip they are laid in. */
export const pleats: Calculation = {
  id: 'pleats',
  title: words.title,
  ...pleatFields.asked,
  work(draft, bench) {
    const read = pleatFields.read(draft, bench);
    if (!read.ok) return read;
    const { cloth, seam, deep } = read.value;
    const input = pleatsInput(read.value);
    const plan = pleated(input);
    if (!plan.ok) return refusedFor(plan.problems);
    const needed = plan.value.strip;
    const strips = cloth === undefined ? undefined : stripsFor({ needed, cloth, seam, deep });
    if (strips && !strips.ok) return refusedFor(strips.problems);
    const answer = pleatsAnswer(
      { asked: read.value, input, plan: plan.value, strips: strips?.value },
      draft,
      bench,
    );
    return { ok: true, answer };
  },
};
