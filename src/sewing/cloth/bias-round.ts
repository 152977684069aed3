import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import { BY_AREA } from '../sources/bias.ts';
import { alongSelvedge, MOST_STRIPS } from './bias.ts';

/** With √2 in it, a number is whole where it is to a unit. */
const NEAR = 1;

/** A continuous strip: a piece is cut along its bias, sewn to a tube and cut round and round. */
export interface Round {
  rounds: number;
  /** Seams that cross the strip, at the most. */
  joins: number;
  long: ExactLength;
}

interface RoundInput {
  width: Length;
  /** Taken by each edge of both seams. */
  seam: Length;
}

/**
 * A continuous strip of a piece p × q, p the longer: n = ⌊(p − 2 seams) ÷ (width × √2)⌋ rounds, in
 * all n × √2 × (q − 2 seams) long, crossed by n − 1 + min(n, ⌈q ÷ (width × √2)⌉ + 1) seams at the
 * most (derived here). Its area over its width, (p − 2 seams) × (q − 2 seams) ÷ width, is never less.
 *
 * Problems: sides, width of nothing, sides that are all seam, no whole round, more than 500.
 */
export function roundFrom(input: RoundInput, one: Length, other: Length): Outcome<Round> {
  const problems = [
    ...roundProblems(input),
    ...mustBePositive('long', one),
    ...mustBePositive('sideShort', other),
  ];
  return answerUnless(problems, () => {
    const { width, seam } = input;
    const [long, short] = [Math.max(one, other), Math.min(one, other)];
    const apart = alongSelvedge(width);
    const least = exactLength(apart + 2 * seam);
    if (long < least - NEAR) {
      return refused({ kind: 'too-short', field: 'long', least, given: one });
    }
    if (short <= 2 * seam) {
      const over = exactLength(2 * seam);
      return refused({ kind: 'not-over', field: 'sideShort', over, given: other });
    }
    const rounds = Math.floor((long - 2 * seam + NEAR) / apart);
    if (rounds > MOST_STRIPS) return refused(tooMany(exactLength(long - 2 * seam)));
    const across = Math.min(rounds, Math.ceil(short / apart) + 1);
    const joins = rounds - 1 + across;
    return {
      ok: true,
      value: { rounds, joins, long: roundLong(rounds, exactLength(short), seam) },
    };
  });
}

/** How long so many rounds are together; never less than nothing. */
export function roundLong(rounds: number, short: ExactLength, seam: ExactLength): ExactLength {
  return exactLength(Math.max(0, rounds * Math.SQRT2 * (short - 2 * seam)));
}

/**
 * The least square that gives so much in whole rounds: min over n of max(n × width × √2, need ÷ (n ×
 * √2)) + 2 seams (derived here; by its area it would often have a round less).
 *
 * Problems: nothing needed, a width of nothing, more than 500 rounds.
 */
export function squareFor(input: RoundInput, need: Length): Outcome<ExactLength> {
  const problems = [...roundProblems(input), ...mustBePositive('need', need)];
  return answerUnless(problems, () => {
    const { width, seam } = input;
    // From here on every further round makes the square larger.
    const best = Math.ceil(Math.sqrt(need / (2 * width)));
    if (best > MOST_STRIPS) {
      return refused(tooMany(exactLength(need / (MOST_STRIPS * Math.SQRT2))));
    }
    const sides = Array.from({ length: best }, (_, i) => {
      const rounds = i + 1;
      return Math.max(rounds * alongSelvedge(width), need / (rounds * Math.SQRT2));
    });
    return { ok: true, value: exactLength(Math.min(...sides) + 2 * seam) };
  });
}

/**
 * What the area alone promises of a continuous strip: p × q over its width (`BY_AREA`), which is never less
 * than its whole rounds give.
 */
export function areaGivesRound(width: Length, one: ExactLength, other: ExactLength): ExactLength {
  return exactLength((BY_AREA.value * one * other) / width);
}

/** The square whose area alone promises so much: √(need × width), never more than whole rounds want. */
export function areaForRound(width: Length, need: Length): ExactLength {
  return exactLength(Math.sqrt((need * width) / BY_AREA.value));
}

/**
 * One strip from corner to corner of a square, its ends cut square: √2 × side − width (geometry).
 *
 * Problems: a side or width of nothing, a square that is all corners.
 */
export function singleFrom(width: Length, side: Length): Outcome<ExactLength> {
  const problems = [...mustBePositive('width', width), ...mustBePositive('long', side)];
  return answerUnless(problems, () => {
    const over = exactLength(width / Math.SQRT2);
    return side <= over
      ? refused({ kind: 'not-over', field: 'long', over, given: side })
      : { ok: true, value: exactLength(Math.SQRT2 * side - width) };
  });
}

/** The square for one strip: (need + width) ÷ √2. Problems: a need or width of nothing. */
export function singleFor(width: Length, need: Length): Outcome<ExactLength> {
  return answerUnless([...mustBePositive('width', width), ...mustBePositive('need', need)], () => ({
    ok: true,
    value: exactLength((need + width) / Math.SQRT2),
  }));
}

function roundProblems({ width, seam }: RoundInput): Problem[] {
  return [...mustBePositive('width', width), ...mustNotBeNegative('seam', seam)];
}

function tooMany(room: ExactLength): Problem {
  const least = exactLength(room / (MOST_STRIPS * Math.SQRT2));
  return { kind: 'too-close', field: 'width', least, most: MOST_STRIPS };
}
