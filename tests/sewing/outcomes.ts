import type { Outcome } from '../../src/sewing/problem.ts';

/** What was worked out; a test that gets a refusal instead is wrong. */
export function solved<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

/** The fields a refusal names. */
export function fieldsOf(outcome: Outcome<unknown>): string[] {
  return outcome.ok ? [] : outcome.problems.map(({ field }) => field);
}
