import { lacingWords as words } from '#words/lacing-words.ts';
import type { Calculation, Work } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { lace } from '../../sewing/lacing.ts';
import type { Problem } from '../../sewing/problem.ts';
import { lacingAnswer } from './answer.ts';
import { type LacingAsked, lacingFields } from './fields.ts';
import { type LacingRead, lacingRead } from './read.ts';

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
      return refusedFor(other.problems.map((one) => ofSecond(one, read.value)));
    }
    const laced = { first: outcome.value, second: other?.value };
    return { ok: true, answer: lacingAnswer(read.value, laced, bench) };
  },
};

/** What is wrong with the second row’s own holes is a fault of the fields that are its own. */
function ofSecond(problem: Problem, { ownPitch }: LacingRead): Problem {
  const own: Readonly<Record<string, keyof LacingAsked>> = {
    holes: 'holes2',
    ...(ownPitch && { pitch: 'pitch2' as const }),
  };
  return { ...problem, field: own[problem.field] ?? problem.field };
}
