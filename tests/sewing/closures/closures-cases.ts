import fc from 'fast-check';
import { type Length, length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import type { ClosuresInput, SpacingRule } from '../../../src/sewing/closures/closure-input.ts';
import type { ClosureRow } from '../../../src/sewing/closures/closure-row.ts';
import { type ClosurePlan, spaceClosures } from '../../../src/sewing/closures/closures.ts';
import type { Outcome, Problem } from '../../../src/sewing/problem.ts';

/** The answer; a test fails here, saying why, when there is none. */
export function answer<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(`no answer: ${JSON.stringify(outcome.problems)}`);
  return outcome.value;
}

/** The problems; a test fails here when there is an answer. */
export function problems<Value>(outcome: Outcome<Value>): readonly Problem[] {
  if (outcome.ok) throw new Error(`an answer: ${JSON.stringify(outcome.value)}`);
  return outcome.problems;
}

/** An opening without ends of its own; a test says what else it has. */
export function opening(of: Length, rule: SpacingRule, rest: Partial<ClosuresInput> = {}) {
  return { opening: of, ends: 'given', top: ZERO, bottom: ZERO, rule, ...rest } as ClosuresInput;
}

export function planFor(input: ClosuresInput): ClosurePlan {
  return answer(spaceClosures(input));
}

export function placesMm(row: ClosureRow): number[] {
  return row.run.marks.map(({ at }) => Number(toMm(at).toFixed(6)));
}

export const byCount = (count: number): SpacingRule => ({ by: 'count', count });

/** Lengths as typed: tenths of a millimetre or eighths of an inch. */
export function typed(leastMm: number, mostMm: number): fc.Arbitrary<Length> {
  const tenths = fc.integer({ min: leastMm * 10, max: mostMm * 10 }).map((n) => mm(n / 10));
  const eighths = fc
    .integer({ min: Math.ceil((leastMm * 8) / 25.4), max: Math.floor((mostMm * 8) / 25.4) })
    .map((n) => length(n * 25_400));
  return fc.oneof(tenths, eighths);
}

export const someEnds = fc.constantFrom('given', 'whole', 'half');

/** An opening with room between its ends, whatever they are. */
export const roomy = fc.record({
  opening: typed(200, 2000),
  ends: someEnds,
  top: typed(0, 90),
  bottom: typed(0, 90),
});
