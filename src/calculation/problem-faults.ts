import type { Problem } from '../sewing/problem.ts';
import type { Fault, Work } from './calculation.ts';

/** No answer, for these problems of the fields they name. */
export function refusedFor(problems: readonly Problem[]): Work {
  return { ok: false, faults: faultsOf(problems) };
}

/** Problems as faults at the fields they name. */
export function faultsOf(problems: readonly Problem[]): Fault[] {
  return problems.map((problem) => ({ field: problem.field, why: { of: 'problem', problem } }));
}
