import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import { mustBePositive } from './length-checks.ts';
import { answerUnless, type Outcome, type Problem } from './problem.ts';
import { BOUND, FELLED, FRENCH, GRADED, TRIMMED } from './sources/seams.ts';

/** How the raw edges of a seam are stopped from fraying. */
export type Finish = 'plain' | 'french' | 'felled' | 'mock-french' | 'bound' | 'graded';

/** One thing to do, in order, at a distance from the final stitch line. */
export interface Row {
  do:
    | 'sew'
    | 'sew-first'
    | 'sew-second'
    | 'trim'
    | 'trim-under'
    | 'trim-inner'
    | 'overcast'
    | 'press-open'
    | 'turn'
    | 'turn-under'
    | 'press-half'
    | 'edge-stitch'
    | 'fell-stitch'
    | 'bind'
    | 'enclose';
  /** From the final stitch line, towards the raw edge; nothing where it isn't a distance. */
  at: ExactLength | undefined;
}

export interface FinishInput {
  finish: Finish;
  /** The allowance the pattern gives on each edge. */
  given: Length;
  /** French only: from the raw edge to the first row; what is left after trimming; the second row. */
  first: Length;
  trim: Length;
  second: Length;
}

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

function rowsOf({ finish, given, trim, second }: FinishInput): Row[] {
  const row = (what: Row['do'], at?: number): Row => ({
    do: what,
    at: at === undefined ? undefined : exactLength(at),
  });
  switch (finish) {
    case 'plain':
      return [
        row('sew', 0),
        row('trim', Math.min(given, TRIMMED.value[1])),
        row('overcast'),
        row('press-open'),
      ];
    case 'french':
      return [
        row('sew-first', second),
        row('trim', second + trim),
        row('turn', second),
        row('sew-second', 0),
      ];
    case 'felled': {
      const fell = given - FELLED.value.turn;
      return [
        row('sew', 0),
        row('trim-under', FELLED.value.under),
        row('turn-under', fell),
        row('fell-stitch', fell),
      ];
    }
    case 'mock-french':
      return [row('sew', 0), row('press-half', given / 2), row('edge-stitch', given / 2)];
    case 'bound':
      return [row('sew', 0), row('bind', given - BOUND.value.stitch), row('press-open')];
    case 'graded':
      return [
        row('sew', 0),
        row('trim', GRADED.value.outer),
        row('trim-inner', GRADED.value.inner),
        row('enclose'),
      ];
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
    if (trim >= first) return [{ kind: 'too-long', field: 'trim', most: first, given: trim }];
    return second <= trim ? [{ kind: 'not-over', field: 'second', given: second, over: trim }] : [];
  }
  const least = leastAllowance(input);
  return given < least ? [{ kind: 'too-short', field: 'given', least, given }] : [];
}

/** The published French seam, for a start. */
export const USUAL_FRENCH = FRENCH.value;
