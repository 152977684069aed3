import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBeCount, mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, refused } from '../problem.ts';
import type { Run } from '../run.ts';

const MOST_PARTS = 100;

/** A raw edge that curves, and a stitch line beside it. Lengths in 1/8000 mm. */
export interface ArcInput {
  /** Straight across the raw edge's curve. */
  chord: Length;
  rise: Length;
  /** From the raw edge to the stitch line. */
  off: Length;
  /** Towards the middle of the curve, or away from it. */
  side: 'inside' | 'outside';
  parts: number;
}

export interface Arc {
  radius: ExactLength;
  /** What the curve turns by, in radians. */
  turn: number;
  edge: ExactLength;
  /** Along the stitch line. */
  line: ExactLength;
  /** Straight from one of its marks to the next, for dividers. */
  step: ExactLength;
  run: Run;
}

/**
 * A curve by its chord c and rise s: radius c² ÷ 8s + s ÷ 2, turn 4 × atan(2s ÷ c), length radius × turn; a
 * line so far off it is off × turn shorter or longer (geometry). Marks divide the stitch line evenly.
 *
 * Problems: lengths of nothing, parts under 1 or over 100, a line past the middle of the curve.
 */
export function arcOf({ chord, rise, off, side, parts }: ArcInput): Outcome<Arc> {
  const problems = [
    ...mustBePositive('chord', chord),
    ...mustBePositive('rise', rise),
    ...mustNotBeNegative('off', off),
    ...mustBeCount('parts', parts, 1, MOST_PARTS),
  ];
  return answerUnless(problems, () => {
    const radius = exactLength((chord * chord) / (8 * rise) + rise / 2);
    const turn = 4 * Math.atan((2 * rise) / chord);
    const inner = side === 'inside' ? radius - off : radius + off;
    if (inner <= 0) return refused({ kind: 'not-under', field: 'off', under: radius, given: off });
    const line = exactLength(inner * turn);
    const marks = Array.from({ length: parts + 1 }, (_, i) => ({
      at: exactLength((i * line) / parts),
      label: String(i),
      kind: 'measure' as const,
    }));
    return {
      ok: true,
      value: {
        ...{ radius, turn, line, edge: exactLength(radius * turn) },
        step: exactLength(2 * inner * Math.sin(Math.min(Math.PI, turn / parts) / 2)),
        run: { datum: 'zero', length: Math.ceil(line) as Length, marks },
      },
    };
  });
}

/** A slanted edge: √(high² + aside²). Problems: a height of nothing, less than nothing aside. */
export function slantedEdge(high: Length, aside: Length): Outcome<ExactLength> {
  return answerUnless(
    [...mustBePositive('high', high), ...mustNotBeNegative('aside', aside)],
    () => ({
      ok: true,
      value: exactLength(Math.hypot(high, aside)),
    }),
  );
}

/** Cloth torn along a thread at both ends, by its diagonals. */
export interface Squared {
  /** How far one edge runs ahead of the other; less than nothing the other way. */
  skew: ExactLength;
  /** What both diagonals measure once it is pulled square. */
  wanted: ExactLength;
  /** What is left square, where the skew is cut off instead. */
  usable: ExactLength;
}

/**
 * Squaring by diagonals: skew = (one² − other²) ÷ (4 × long); pulled square both are √((one² + other²) ÷ 2)
 * (derived here: both are hypotenuses of long ± skew).
 *
 * Problems: lengths of nothing, diagonals that no such cloth has.
 */
export function squared(long: Length, one: Length, other: Length): Outcome<Squared> {
  const problems = [
    ...mustBePositive('long', long),
    ...mustBePositive('one', one),
    ...mustBePositive('other', other),
  ];
  return answerUnless(problems, () => {
    const skew = (one * one - other * other) / (4 * long);
    const wanted = Math.sqrt((one * one + other * other) / 2);
    const usable = long - Math.abs(skew);
    if (Math.hypot(long, skew) >= wanted) {
      return refused({ kind: 'not-under', field: 'long', under: exactLength(wanted), given: long });
    }
    return {
      ok: true,
      value: {
        skew: exactLength(skew),
        wanted: exactLength(wanted),
        usable: exactLength(Math.max(0, usable)),
      },
    };
  });
}
