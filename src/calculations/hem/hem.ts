import { hemWords as words } from '#words/hem-words.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { hem as workHem } from '../../sewing/hem.ts';
import { curvedHem } from '../../sewing/hem-curve.ts';
import type { HemInput } from '../../sewing/hem-input.ts';
import { problemsOfWhole } from '../../sewing/hem-whole.ts';
import type { Outcome, Problem } from '../../sewing/problem.ts';
import { type Taper, trueTaper } from '../../sewing/taper.ts';
import { hemAnswer } from './answer.ts';
import { type HemRead, hemFields } from './fields.ts';
import { toCorner, toFacing } from './onward.ts';
import type { Parts } from './parts.ts';
import { apartOf, curveOf, hemInput, type Widths, widthsOf } from './read.ts';

/** A hem, its lines, its curve, its taper. */
export const hem: Calculation = {
  id: 'hem',
  title: words.title,
  ...hemFields.asked,
  beside: [
    { id: 'facing', label: words.faced, carry: toFacing },
    { id: 'corner', label: words.corner, carry: toCorner },
  ],
  work(draft, bench) {
    const read = hemFields.read(draft, bench);
    if (!read.ok) return read;
    const hemRead = hemInput(read.value);
    if (!hemRead.ok) return refusedFor(hemRead.problems);
    const input = hemRead.value;
    const apart = apartOf(read.value, input.depth);
    const curve = curveOf(read.value, apart);
    const widths = widthsOf(read.value, apart);
    const parts = {
      hem: workHem(input),
      curve: curve && curvedHem(input.depth, curve.input, curve.ease),
      taper: widths && taperOf(input, widths),
    };
    const problems = Object.values(parts).flatMap((part) =>
      part && !part.ok ? part.problems : [],
    );
    if (problems.length > 0) {
      return refusedFor(asGiven(eachFieldOnce(problems), input, read.value));
    }
    const solved = Object.fromEntries(
      Object.entries(parts).flatMap(([key, part]) => (part?.ok ? [[key, part.value]] : [])),
    ) as unknown as Parts;
    const ask = hemFields.asks(draft);
    return {
      ok: true,
      answer: hemAnswer(input, { ...solved, ease: curve?.ease ?? 0 }, ask, bench),
    };
  },
};

/** Where all there is to turn up is given, a problem with the depth is said of all of it. */
function asGiven(problems: Problem[], input: HemInput, { given, depth }: HemRead): Problem[] {
  return given === 'all' ? problemsOfWhole(problems, input, depth) : problems;
}

/** The depth is used by every part, and would be named by each. */
function eachFieldOnce(problems: readonly Problem[]): Problem[] {
  return problems.filter(({ field }, i) => problems.findIndex((one) => one.field === field) === i);
}

function taperOf({ depth, turn }: HemInput, widths: Widths): Outcome<Taper> {
  return namedAbove(trueTaper({ ...widths, depth, turn }));
}

/** The taper's upper width has a field of its own here: `above` is the curve's. */
function namedAbove<Value>(outcome: Outcome<Value>): Outcome<Value> {
  if (outcome.ok) return outcome;
  const named = outcome.problems.map(
    (problem): Problem =>
      problem.field === 'above' ? { ...problem, field: 'acrossAbove' } : problem,
  );
  return { ok: false, problems: named as unknown as typeof outcome.problems };
}
