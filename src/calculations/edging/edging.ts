import { edgingWords as words } from '#words/calculations/edging-words.ts';
import type { Calculation, Work } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { stripHoles } from '../../sewing/edging/strip-holes.ts';
import { joinProblems } from '../../sewing/edging/strip-joined.ts';
import { edgingAnswer } from './answer.ts';
import { edgingFields } from './fields.ts';
import { toCentre, toCrossing, toLacing } from './onward.ts';
import { stripOf } from './strip.ts';

/** An iron has this many teeth at the most; one tooth is an awl. */
const TEETH = { least: 2, most: 30 };

/** The holes along an edging strip. */
export const edging: Calculation = {
  id: 'edging',
  title: words.title,
  ...edgingFields.asked,
  beside: [
    { id: 'centre', label: words.count, carry: toCentre },
    { id: 'crossing', label: words.crossing, carry: toCrossing },
    { id: 'lacing', label: words.lacing, carry: toLacing },
  ],
  work(draft, bench): Work {
    const read = edgingFields.read(draft, bench);
    if (!read.ok) return read;
    const { teeth, stock, crossings } = read.value;
    const strip = stripOf(read.value);
    const outcome = stripHoles(strip);
    if (!outcome.ok) return refusedFor(outcome.problems);
    if (teeth !== undefined && (teeth < TEETH.least || teeth > TEETH.most)) {
      return refusedFor([{ kind: 'out-of-range', field: 'teeth', given: teeth, ...TEETH }]);
    }
    const problems = joinProblems(strip, stock, crossings);
    if (problems.length > 0) return refusedFor(problems);
    return {
      ok: true,
      answer: edgingAnswer({ strip, teeth, stock, crossings }, outcome.value, bench),
    };
  },
};
