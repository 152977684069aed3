import { answerWords } from '#words/common/mark-words.ts';
import type { Bench } from '../calculation/bench.ts';
import { type Fault, type Field, isUnfinished } from '../calculation/calculation.ts';
import { faultWords } from './fault-words.ts';
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
          <Rich text={faultWords(fault, labelIn(fields), bench)} />
        </p>
      ))}
    </>
  );
}

function labelIn(fields: readonly Field[]) {
  return (key: string) => fields.find((known) => known.key === key)?.label ?? key;
}
