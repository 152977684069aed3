import {
  type ExactLength,
  exactLength,
  type Length,
  UNITS_PER_INCH,
  ZERO,
} from '../../lengths/length.ts';
import { mustBePositive } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';
import { BOUND, FELLED, FRENCH, GRADED, LEAST_EDGE } from '../sources/seams.ts';
import { type Finish, type FinishInput, type Row, rowsOf } from './seam-rows.ts';

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
  /** Flat-felled only, when more is turned under than fits between fold and seam: what fits. */
  turnAtMost: ExactLength | undefined;
}

/**
 * What a seam finish takes of the allowance, edge by edge.
 *
 * A French seam takes its two rows together, and its second row must be wider
 * than what was left after trimming, or the raw edge shows (derived here). Every
 * other finish takes the allowance as it is, and must leave its own rows room.
 * Figures and sources: `sources/seams.ts`.
 *
 * Problems: topstitching past the allowance, a distance of nothing, an allowance too small for the finish, a
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
        turnAtMost:
          finish === 'felled' && 2 * input.turn > given ? exactLength(given / 2) : undefined,
      },
    };
  });
}

/** The least of something, or what it must be more than. */
export interface Least {
  at: ExactLength;
  more: boolean;
}

/** The least allowance a finish works on. */
export function leastAllowance({ finish, first, second, under, turn }: FinishInput): Least {
  const least = (at: number) => ({ at: exactLength(at), more: false });
  switch (finish) {
    case 'plain':
      return least(LEAST_EDGE);
    case 'french':
      return least(first + second);
    case 'felled':
      return { at: exactLength(turn + under), more: true };
    case 'mock-french':
      return least(4 * LEAST_EDGE);
    case 'bound':
      return least(2 * BOUND.value.stitch);
    case 'graded':
      return least(GRADED.value.outer);
  }
}

/** Why a length is less than the least, if it is. */
function underLeast(field: string, given: Length, { at, more }: Least): Problem[] {
  if (more) return given > at ? [] : [{ kind: 'not-over', field, over: at, given }];
  return given >= at ? [] : [{ kind: 'too-short', field, least: at, given }];
}

/** The rows that only some finishes have, by the field each is given in. */
const OWN_ROWS: Record<Finish, readonly (keyof FinishInput)[]> = {
  plain: [],
  french: ['first', 'trim', 'second'],
  felled: ['under', 'turn'],
  'mock-french': [],
  bound: [],
  graded: [],
};

/** Why the rows that only this finish has can't be, whatever the allowance. */
export function rowProblems(input: FinishInput): Problem[] {
  const { finish, first, trim, second } = input;
  const alone = OWN_ROWS[finish].flatMap((field) => mustBePositive(field, input[field] as Length));
  if (alone.length > 0 || finish !== 'french') return alone;
  if (trim >= first) return [{ kind: 'not-under', field: 'trim', under: first, given: trim }];
  return second <= trim ? [{ kind: 'not-over', field: 'second', given: second, over: trim }] : [];
}

function finishProblems(input: FinishInput): Problem[] {
  const alone = [...mustBePositive('given', input.given), ...rowProblems(input)];
  // A French seam that takes more than is given is an answer: by how much, and what it costs.
  if (alone.length > 0 || input.finish === 'french') return alone;
  const short = underLeast('given', input.given, leastAllowance(input));
  return short.length > 0 ? short : topProblems(input);
}

/** Topstitching catches the allowance that lies under it, and a second row lies beyond the first (derived here). */
function topProblems({ given, top, topSecond }: FinishInput): Problem[] {
  const rows = [
    { field: 'top', at: top, over: ZERO },
    { field: 'topSecond', at: topSecond, over: top ?? ZERO },
  ];
  return rows.flatMap(({ field, at, over }): Problem[] => {
    if (at === undefined) return [];
    if (at >= given) return [{ kind: 'not-under', field, under: given, given: at }];
    return at > over ? [] : [{ kind: 'not-over', field, over, given: at }];
  });
}

/**
 * The rows to begin with: the published French seam; of the published flat-felled one the
 * trimming, and a turn of 1/4 in (ours), since the published 3/8 in is more than it leaves
 * room for on its 5/8 in.
 */
export const USUAL_ROWS = {
  ...FRENCH.value,
  under: FELLED.value.under,
  turn: (UNITS_PER_INCH / 4) as Length,
};
