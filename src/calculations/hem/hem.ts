import { hemWords as words } from '#words/calculations/hem-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { hem as workHem } from '../../sewing/hems/hem.ts';
import { curvedHem } from '../../sewing/hems/hem-curve.ts';
import type { Problem } from '../../sewing/problem.ts';
import { hemAnswer } from './answer.ts';
import { hemFields } from './fields.ts';
import { toCorner, toFacing } from './onward.ts';
import type { Parts } from './parts.ts';
import { apartOf, asGiven, curveOf, easeOf, hemInput, taperOf, widthsOf } from './read.ts';

/** A hem, its lines, its curve, its taper. */
export const hem: Calculation = {
  id: 'hem',
  title: words.title,
  ...hemFields.asked,
  beside: [
    { id: 'facing', label: words.faced, carry: toFacing },
    { id: 'corner', label: words.corner, carry: toCorner },
  ],
  work(draft, bench) {
    const read = hemFields.read(draft, bench);
    if (!read.ok) return read;
    const hemRead = hemInput(read.value);
    if (!hemRead.ok) return refusedFor(hemRead.problems);
    const input = hemRead.value;
    const apart = apartOf(read.value, input.depth);
    const curve = curveOf(read.value, apart);
    const ease = easeOf(read.value);
    const widths = widthsOf(read.value, apart);
    const parts = {
      hem: workHem(input),
      curve: curve && curvedHem(input.depth, curve, ease),
      taper: widths && taperOf(input, widths),
    };
    const problems = Object.values(parts).flatMap((part) => {
      const said = part && asGiven<unknown>(part, input, read.value);
      return said && !said.ok ? said.problems : [];
    });
    if (problems.length > 0) return refusedFor(eachFieldOnce(problems));
    const solved = Object.fromEntries(
      Object.entries(parts).flatMap(([key, part]) => (part?.ok ? [[key, part.value]] : [])),
    ) as unknown as Parts;
    const ask = hemFields.asks(draft);
    return {
      ok: true,
      answer: hemAnswer(input, { ...solved, ease }, ask, bench),
    };
  },
};

/** The depth is used by every part, and would be named by each. */
function eachFieldOnce(problems: readonly Problem[]): Problem[] {
  return problems.filter(({ field }, i) => problems.findIndex((one) => one.field === field) === i);
}
