import { type ExactLength, exactLength } from '../lengths/length.ts';
import { mustBePositive } from './length-checks.ts';
import { answerUnless, type Outcome, type Problem } from './problem.ts';
import { type FinishInput, type Row, rowsOf } from './seam-rows.ts';
import { BOUND, FELLED, FRENCH, GRADED, TRIMMED } from './sources/seams.ts';

/** What a finish takes of the allowance, and its rows in order. */
export interface FinishPlan {
  /** From the raw edge to the final stitch line, on each edge. */
  consumed: ExactLength;
  /** What the finish takes over the allowance given; nothing when it fits. */
  over: ExactLength;
  /** What is left of the allowance; nothing when it is over. */
  spare: ExactLength;
  rows: readonly Row[];
  /** Bound only: how wide to cut the bias strip. */
  strip: ExactLength | undefined;
}

/**
 * What a seam finish takes of the allowance, edge by edge.
 *
 * A French seam takes its two rows together, and its second row must be wider
 * than what was left after trimming, or the raw edge shows (derived here). Every
 * other finish takes the allowance as it is, and must leave its own rows room.
 * Figures and sources: `sources/seams.ts`.
 *
 * Problems: a distance of nothing, an allowance too small for the finish, a
 * second row no wider than the trimmed edge.
 */
export function finishSeam(input: FinishInput): Outcome<FinishPlan> {
  return answerUnless(finishProblems(input), () => {
    const { finish, given } = input;
    const consumed = finish === 'french' ? exactLength(input.first + input.second) : given;
    return {
      ok: true,
      value: {
        consumed,
        over: exactLength(Math.max(0, consumed - given)),
        spare: exactLength(Math.max(0, given - consumed)),
        rows: rowsOf(input),
        strip: finish === 'bound' ? exactLength(given + BOUND.value.wider) : undefined,
      },
    };
  });
}

/** The least allowance a finish works on. */
export function leastAllowance({ finish, first, second }: FinishInput): ExactLength {
  switch (finish) {
    case 'plain':
      return TRIMMED.value[0];
    case 'french':
      return exactLength(first + second);
    case 'felled':
      return exactLength(FELLED.value.turn + FELLED.value.under);
    case 'mock-french':
      return exactLength(4 * TRIMMED.value[0]);
    case 'bound':
      return exactLength(2 * BOUND.value.stitch);
    case 'graded':
      return GRADED.value.outer;
  }
}

function finishProblems(input: FinishInput): Problem[] {
  const { finish, given, first, trim, second } = input;
  const own =
    finish === 'french'
      ? ([
          ['first', first],
          ['trim', trim],
          ['second', second],
        ] as const)
      : [];
  const alone = [
    ...mustBePositive('given', given),
    ...own.flatMap(([field, length]) => mustBePositive(field, length)),
  ];
  if (alone.length > 0) return alone;
  if (finish === 'french') {
    if (trim >= first) return [{ kind: 'not-under', field: 'trim', under: first, given: trim }];
    return second <= trim ? [{ kind: 'not-over', field: 'second', given: second, over: trim }] : [];
  }
  const least = leastAllowance(input);
  return given < least ? [{ kind: 'too-short', field: 'given', least, given }] : [];
}

/** The published French seam, for a start. */
export const USUAL_FRENCH = FRENCH.value;
