import type { Draft } from '../../src/calculation/calculation.ts';
import type { Outputs } from '../../src/calculation/output.ts';
import { type WorkMade, workOutputs } from '../../src/calculation/work-outputs.ts';
import { type ExactLength, toMm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';

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
