import type { Problem } from '../sewing/problem.ts';
import type { Fault, Work } from './calculation.ts';

/** No answer, for these problems of the fields they name. */
export function refusedFor(problems: readonly Problem[]): Work {
  const faults = problems.map(
    (problem): Fault => ({ field: problem.field, why: { of: 'problem', problem } }),
  );
  return { ok: false, faults };
}
