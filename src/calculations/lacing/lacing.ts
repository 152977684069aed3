import { lacingWords as words } from '#words/calculations/lacing-words.ts';
import type { Calculation, Work } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { lace } from '../../sewing/lacing/lacing.ts';
import { lacingAnswer } from './answer.ts';
import { lacingFields } from './fields.ts';
import { lacingRead } from './read.ts';
import { ofSecond } from './row.ts';

/** The lace for a row of holes, and its way through them. */
export const lacing: Calculation = {
  id: 'lacing',
  title: words.title,
  ...lacingFields.asked,
  work(draft, bench): Work {
    const read = lacingRead(draft, bench);
    if (!read.ok) return read;
    const { input, second } = read.value;
    const outcome = lace(input);
    if (!outcome.ok) return refusedFor(outcome.problems);
    const other = second && lace(second);
    if (other && !other.ok) {
      return refusedFor(other.problems.map((one) => ofSecond(one, read.value.ownPitch)));
    }
    const laced = { first: outcome.value, second: other?.value };
    return { ok: true, answer: lacingAnswer(read.value, laced, bench) };
  },
};
