import { readWords } from '#words/common/read-words.ts';
import { type ProblemSay, problemWords } from '#words/controls/problem-words.ts';
import { readStepsWords } from '#words/controls/read-steps-words.ts';
import type { Bench } from '../calculation/bench.ts';
import type { Fault } from '../calculation/calculation.ts';
import { bound, exactly } from '../calculation/tape-text.ts';
import type { Problem } from '../sewing/problem.ts';

/** The sentence for a fault: its field, what is wrong, the mend. */
export function faultWords({ field, why }: Fault, label: ProblemSay['field'], bench: Bench) {
  if (why.of === 'words') return why.words;
  if (why.of === 'reading') return readWords(label(field), why.fault, bench.decimalMark);
  if (why.of === 'steps') return readStepsWords(label(field), why.fault);
  return problemSaid(why.problem, label, bench);
}

/** The sentence for a problem, its lengths in the bench's unit. */
export function problemSaid(problem: Problem, field: ProblemSay['field'], bench: Bench): string {
  return problemWords(problem, {
    field,
    length: (x, which) => (which ? bound(x, which, bench) : exactly(x, bench)),
  });
}
