import {
  type ExactLength,
  exactLength,
  type Length,
  length,
  settled,
} from '../../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import { depthIn, foldShare, foldsOf, thickestFor } from './hem-folds.ts';
import { type HemInput, hemProblems } from './hem-input.ts';

/** A hem of which is known what there is to turn up in all, the first turn with it. */
export interface WholeHem extends Omit<HemInput, 'depth' | 'turn'> {
  whole: Length;
  /** The first turn; 'equal' for one as deep as the hem. */
  turn: Length | 'equal';
}

/**
 * The depth of a hem that takes all there is: "3 in for the hem", a first turn of 1/4 in
 * with it, is 2 3/4 in deep. To a unit of 1/8000 mm, never more than there is.
 *
 * Problems: those of a hem, with the field 'depth' meaning all there is; a first turn
 * that leaves nothing over.
 */
export function hemOfWhole({ whole, turn, ...rest }: WholeHem): Outcome<HemInput> {
  const { thickness } = rest;
  const first = turn === 'equal' ? (0 as Length) : turn;
  const alone = [
    ...mustBePositive('depth', whole),
    ...mustNotBeNegative('turn', first),
    ...mustNotBeNegative('thickness', thickness),
  ];
  return answerUnless(alone, (): Outcome<HemInput> => {
    const depth = length(Math.floor(settled(depthIn(whole, turn, thickness))));
    if (depth <= 0) {
      // Of a hem that is all turn the turn's raw edge lies in the last fold.
      const folds = foldShare(thickness, 0) + foldShare(thickness, 1);
      const over = exactLength(Math.max(0, first + folds));
      return refused({ kind: 'not-over', field: 'depth', over, given: whole });
    }
    const input = { ...rest, depth, turn: turn === 'equal' ? depth : turn };
    return answerUnless(problemsOfWhole(hemProblems(input), input, whole), () => ({
      ok: true,
      value: input,
    }));
  });
}

/** The same problems, said of all there is to turn up instead of the depth alone. */
export function problemsOfWhole(
  problems: readonly Problem[],
  { depth, turn, thickness }: HemInput,
  whole: Length,
): Problem[] {
  const wholeOf = (of: ExactLength): ExactLength => {
    const first = turn === depth ? of : turn;
    const folds = foldsOf({ depth: of as Length, turn: first as Length, thickness });
    return exactLength(of + first + folds.first + folds.last);
  };
  return problems.map((problem): Problem => {
    if (problem.field === 'turn' && problem.kind === 'too-long') {
      return { ...problem, most: depthIn(whole, 'equal', thickness) };
    }
    if (problem.field === 'thickness' && problem.kind === 'too-long') {
      return { ...problem, most: thickestIn(whole, turn === depth ? 'equal' : turn, thickness) };
    }
    if (problem.field !== 'depth') return problem;
    if (problem.kind === 'too-long')
      return { ...problem, most: wholeOf(problem.most), given: whole };
    if (problem.kind === 'not-under') {
      return { ...problem, under: wholeOf(problem.under), given: whole };
    }
    return problem;
  });
}

/** The thickest cloth of which all there is can be folded: the hem gets shallower as the cloth gets thinner. */
function thickestIn(whole: Length, turn: Length | 'equal', tooThick: Length): Length {
  let [fits, over] = [0, Number(tooThick)];
  while (over - fits > 1) {
    const half = length(Math.floor((fits + over) / 2));
    const depth = depthIn(whole, turn, half);
    if (half <= thickestFor(depth, turn === 'equal' ? depth : turn)) fits = half;
    else over = half;
  }
  return length(fits);
}
