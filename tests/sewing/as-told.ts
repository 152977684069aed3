import { expect } from 'vitest';
import type { Outcome, Problem } from '../../src/sewing/problem.ts';

/** What a refusal says would do: a number, from below or above, itself in or out. */
const BOUNDS = {
  least: { up: true, itself: true },
  needed: { up: true, itself: true },
  over: { up: true, itself: false },
  most: { up: false, itself: true },
  under: { up: false, itself: false },
} as const;

type Name = keyof typeof BOUNDS;

/**
 * The bound a refusal of a field names, once it has been tried: what it says will do is not
 * refused for that field any more, and a step less (or more) still is.
 *
 * @param at what comes of a value of that field
 * @param wrong a value that is refused
 * @param name which bound of the refusal
 */
export function boundTold(
  at: (value: number) => Outcome<unknown>,
  wrong: number,
  field: string,
  name: Name,
): number {
  const told = problemOf(at(wrong), field);
  const bound = told && name in told ? Number(told[name as keyof Problem]) : Number.NaN;
  const { up, itself } = BOUNDS[name];
  // Whole units, as they are typed: of a sum the last places are not looked at.
  const whole = up ? Math.ceil(bound - 1e-6) : Math.floor(bound + 1e-6);
  const onIt = Math.abs(whole - bound) < 1e-6;
  const enough = itself || !onIt ? whole : up ? whole + 1 : whole - 1;
  expect(problemOf(at(enough), field), `${enough} will do`).toBeUndefined();
  const less = up ? enough - 1 : enough + 1;
  expect(problemOf(at(less), field), `${less} will not`).toBeDefined();
  return bound;
}

function problemOf(outcome: Outcome<unknown>, field: string): Problem | undefined {
  return outcome.ok ? undefined : outcome.problems.find((problem) => problem.field === field);
}
