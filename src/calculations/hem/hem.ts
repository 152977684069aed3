import { hemWords as words } from '#words/hem-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Calculation, Draft } from '../../calculation/calculation.ts';
import { type DraftReader, readDraft } from '../../calculation/draft.ts';
import { roundIn } from '../../calculation/draft-numbers.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { hem as workHem } from '../../sewing/hem.ts';
import { curvedHem } from '../../sewing/hem-curve.ts';
import type { HemInput } from '../../sewing/hem-input.ts';
import { problemsOfWhole } from '../../sewing/hem-whole.ts';
import type { Outcome, Problem } from '../../sewing/problem.ts';
import { type Taper, trueTaper } from '../../sewing/taper.ts';
import { hemAnswer } from './answer.ts';
import { hemFields, isWhole } from './fields.ts';
import { toCorner, toFacing } from './onward.ts';
import type { Parts } from './parts.ts';
import { hemInput, readApart, readCurve, readWidths, type Widths } from './read.ts';

/** A hem, its lines, its curve, its taper. */
export const hem: Calculation = {
  id: 'hem',
  title: words.title,
  start: startingDraft,
  fields: hemFields,
  beside: [
    { id: 'facing', label: words.faced, carry: toFacing },
    { id: 'corner', label: words.corner, carry: toCorner },
  ],
  work(draft, bench) {
    const read = readDraft(draft, bench);
    const hemRead = hemInput(read, draft);
    if (hemRead && !hemRead.ok && read.faults.length === 0) return refusedFor(hemRead.problems);
    const input = hemRead?.ok ? hemRead.value : undefined;
    const apart = input && readApart(read, draft, input.depth);
    const curve = apart === undefined ? undefined : readCurve(read, draft, apart);
    const widths = apart === undefined ? undefined : readWidths(read, draft, apart);
    if (!input || read.faults.length > 0) return { ok: false, faults: read.faults };
    const parts = {
      hem: workHem(input),
      curve: curve && curvedHem(input.depth, curve.input, curve.ease),
      taper: widths && taperOf(input, widths),
    };
    const problems = Object.values(parts).flatMap((part) =>
      part && !part.ok ? part.problems : [],
    );
    if (problems.length > 0)
      return refusedFor(asGiven(eachFieldOnce(problems), input, read, draft));
    const solved = Object.fromEntries(
      Object.entries(parts).flatMap(([key, part]) => (part?.ok ? [[key, part.value]] : [])),
    ) as unknown as Parts;
    return {
      ok: true,
      answer: hemAnswer(input, { ...solved, ease: curve?.ease ?? 0 }, draft, bench),
    };
  },
};

/** Where all there is to turn up is given, a problem with the depth is said of all of it. */
function asGiven(problems: Problem[], input: HemInput, read: DraftReader, draft: Draft): Problem[] {
  const whole = isWhole(draft) ? read.length('depth') : undefined;
  return whole === undefined ? problems : problemsOfWhole(problems, input, whole);
}

/** The depth is used by every part, and would be named by each. */
function eachFieldOnce(problems: readonly Problem[]): Problem[] {
  return problems.filter(({ field }, i) => problems.findIndex((one) => one.field === field) === i);
}

function startingDraft(bench: Bench): Draft {
  const scale = roundIn(bench);
  return {
    depth: scale('2', '20', '1'),
    given: 'depth',
    style: 'unequal',
    turn: scale('0.7', '7', '1/4'),
    edgeStitch: scale('0.2', '2', '1/8'),
    thickness: '',
    finished: '',
    otherEnd: '',
    left: '',
    shape: 'straight',
    chord: scale('40', '400', '16'),
    rise: scale('5', '50', '2'),
    round: scale('60', '600', '24'),
    above: scale('57', '570', '23'),
    apart: '',
    cloth: 'medium',
    ease: '6',
    taper: 'none',
    atHem: scale('20', '200', '8'),
    acrossAbove: scale('21', '210', '8 1/2'),
  };
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
