import type { Draft } from '../../src/calculation/calculation.ts';
import type { Outputs } from '../../src/calculation/output.ts';
import { type ExactLength, toInches, toMm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { type Came, type WorkMade, workOutputs } from './work-outputs.ts';

/**
 * What outputs come to with some fields typed, each as it is told at the bench: lengths and
 * marks in millimetres, without the last places of divisions; what is not here, why.
 */
export function givenBy(gives: Outputs, set: Draft, made: WorkMade = {}) {
  const bench = benchOf();
  const came = workOutputs(gives, { ...gives.fields.asked.start(bench), ...set }, bench, made);
  return Object.fromEntries(
    gives.outputs.map(({ key, kind }) => {
      const one = came.get(key);
      if (one?.state === 'absent') return [key, `absent by ${one.by}`];
      if (one?.state === 'waits') return [key, `waits for ${one.for}`];
      if (one?.state !== 'here') return [key, one?.faults.map(({ field }) => field)];
      if (typeof one.value === 'object') return [key, one.value.marks.map(({ at }) => inMm(at))];
      return [key, kind === 'length' ? inMm(one.value as ExactLength) : one.value];
    }),
  );
}

function inMm(length: ExactLength): number {
  return Number(toMm(length).toFixed(6));
}

/** What a calculation gives for a draft, to be looked up by key. */
export function lookUpIn(outputs: Outputs) {
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
