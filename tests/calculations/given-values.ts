import type { Draft } from '../../src/calculation/calculation.ts';
import type { Outputs } from '../../src/calculation/output.ts';
import { type Came, type WorkMade, workOutputs } from '../../src/calculation/work-outputs.ts';
import { type ExactLength, toInches, toMm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';

/** What a calculation gives for a draft, to be looked up by key. */
export function givenBy(outputs: Outputs) {
  return (draft: Draft, made?: WorkMade) => {
    const all = workOutputs(outputs, draft, benchOf(), made);
    const each =
      (of: (length: ExactLength) => number) =>
      (...keys: string[]) =>
        keys.map((key) => Number(of(numberIn(all.get(key)) as ExactLength).toFixed(6)));
    return {
      of: (key: string) => all.get(key),
      number: (key: string) => numberIn(all.get(key)),
      inches: each(toInches),
      mm: each(toMm),
    };
  };
}

function numberIn(one: Came | undefined): number {
  if (one?.state !== 'here' || typeof one.value !== 'number') throw new Error(JSON.stringify(one));
  return one.value;
}
