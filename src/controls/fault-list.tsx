import { answerWords } from '#words/mark-words.ts';
import { type ProblemSay, problemWords } from '#words/problem-words.ts';
import { readStepsWords } from '#words/read-steps-words.ts';
import { readWords } from '#words/read-words.ts';
import type { Bench } from '../calculation/bench.ts';
import { type Fault, type Field, isUnfinished } from '../calculation/calculation.ts';
import { bound, exactly } from '../calculation/tape-text.ts';
import { Rich } from './rich.tsx';

interface Props {
  faults: readonly Fault[];
  fields: readonly Field[];
  bench: Bench;
}

/** Why there is no answer, and what would mend it; mistakes before what is merely unfinished. */
export function FaultList({ faults, fields, bench }: Props) {
  const mistakes = faults.filter((fault) => !isUnfinished(fault));
  const said = mistakes.length > 0 ? mistakes : faults.slice(0, 1);
  return (
    <>
      <p class="number none" aria-hidden="true">
        <strong>{answerWords.none}</strong>
      </p>
      {said.map((fault, i) => (
        <p class={isUnfinished(fault) ? '' : 'warning'} key={fault.field + i}>
          <Rich text={faultWords(fault, fields, bench)} />
        </p>
      ))}
    </>
  );
}

/** The sentence for a fault: its field, what is wrong, the mend. */
function faultWords({ field, why }: Fault, fields: readonly Field[], bench: Bench): string {
  const label = (key: string) => fields.find((known) => known.key === key)?.label ?? key;
  if (why.of === 'words') return why.words;
  if (why.of === 'reading') return readWords(label(field), why.fault, bench.decimalMark);
  if (why.of === 'steps') return readStepsWords(label(field), why.fault);
  const say: ProblemSay = {
    field: label,
    length: (x, which) => (which ? bound(x, which, bench) : exactly(x, bench)),
  };
  return problemWords(why.problem, say);
}
