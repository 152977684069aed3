import { type ExactLength, exactLength, type Length, settled } from '../../lengths/length.ts';
import { mustBeCount, mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import type { Run } from '../run.ts';
import { ONE_REPEAT } from '../sources/repeats.ts';

const MOST_PANELS = 100;
const MOST_REPEATS = 1000;
/** Nearer than this to a line of the repeat a place is on it: noise of dividing, in 1/8000 mm. */
const NEAR = 1e-4;

/** A repeat as it is measured: over several, so that a doubtful graduation is shared by them. */
export interface RepeatInput {
  span: Length;
  repeats: number;
}

/** What is wrong with a repeat. */
export function repeatProblems({ span, repeats }: RepeatInput): Problem[] {
  return [...mustBePositive('span', span), ...mustBeCount('repeats', repeats, 1, MOST_REPEATS)];
}

/** One repeat: span ÷ repeats. */
export function repeatOf({ span, repeats }: RepeatInput): ExactLength {
  return exactLength(span / repeats);
}

/**
 * How far past a line a place lies that is measured from one: place mod repeat, nothing on a line (geometry).
 *
 * @param place nothing or more
 */
export function pastLine(input: RepeatInput, place: ExactLength): ExactLength {
  const repeat = repeatOf(input);
  const lines = Math.floor((place + NEAR) / repeat);
  return settled(exactLength(Math.max(0, place - lines * repeat)));
}

/** Equal panels, cut at the same line of the repeat. */
export interface Panels {
  /** Whole repeats from the start of one to the next one's. */
  each: number;
  cloth: ExactLength;
  /** Beyond what the panels take themselves. */
  extra: ExactLength;
  /** By the published rule: all panels and one repeat. */
  rule: ExactLength;
  run: Run;
}

/**
 * Cloth for panels that match: (panels − 1) × ⌈long ÷ repeat⌉ × repeat + long (derived here). The published
 * one repeat more is too little from three panels on.
 *
 * Problems: those of the repeat, panels of nothing, none or over 100 of them.
 */
export function panels(input: RepeatInput, count: number, long: Length): Outcome<Panels> {
  const problems = [
    ...repeatProblems(input),
    ...mustBeCount('panels', count, 1, MOST_PANELS),
    ...mustBePositive('long', long),
  ];
  return answerUnless(problems, () => {
    const { span, repeats } = input;
    // Whole units on both sides: a panel of just so many repeats takes no more.
    const each = Math.ceil((long * repeats) / span);
    const from = (i: number) => exactLength((i * each * span) / repeats);
    const cloth = exactLength(from(count - 1) + long);
    const marks = Array.from({ length: count }, (_, i) => ({
      at: from(i),
      label: String(i + 1),
      kind: 'placement' as const,
    }));
    const run: Run = { datum: 'cut-end', length: Math.ceil(cloth) as Length, marks };
    const rule = exactLength(count * long + ONE_REPEAT.value * repeatOf(input));
    return {
      ok: true,
      value: { each, cloth, extra: exactLength(cloth - count * long), rule, run },
    };
  });
}

/** A second piece that meets the first one at a line of the repeat. */
export interface MatchInput extends RepeatInput {
  /** From a line of the repeat to the first piece's match point. */
  first: Length;
  /** From the second piece's upper edge to its own. */
  below: Length;
  /** From that line to where cloth is free. */
  free: Length;
}

export interface Match {
  /** From the line to the second piece's upper edge. */
  start: ExactLength;
  /** Repeats from the first match point to the second. */
  on: number;
  lost: ExactLength;
}

/**
 * Where the second piece begins: the first place from `free` on at which its match point shows what the
 * first one's shows, free + ((first − below − free) mod repeat); less than a repeat is lost (derived here).
 *
 * Problems: those of the repeat, places below nothing.
 */
export function matchAt(input: MatchInput): Outcome<Match> {
  const { first, below, free } = input;
  const problems = [
    ...repeatProblems(input),
    ...mustNotBeNegative('first', first),
    ...mustNotBeNegative('below', below),
    ...mustNotBeNegative('free', free),
  ];
  return answerUnless(problems, () => {
    const repeat = repeatOf(input);
    const on = Math.ceil((free + below - first) / repeat - NEAR / repeat);
    const start = settled(exactLength(first - below + on * repeat));
    return { ok: true, value: { start, on, lost: exactLength(Math.max(0, start - free)) } };
  });
}

/** A piece whose centre lies on a line, or between two. */
export interface CentreInput extends RepeatInput {
  wide: Length;
  on: 'line' | 'between';
}

/**
 * How far inside both edges the last line lies: (wide ÷ 2 − phase) mod repeat, with a phase of nothing on a
 * line, of half a repeat between two; and how many repeats lie between it and the centre (derived here).
 *
 * Problems: those of the repeat, a piece of nothing, or one on which no line would lie.
 */
export function centred(input: CentreInput): Outcome<{ inside: ExactLength; repeats: number }> {
  const { wide, on } = input;
  return answerUnless([...repeatProblems(input), ...mustBePositive('wide', wide)], () => {
    const repeat = repeatOf(input);
    const phase = on === 'line' ? 0 : repeat / 2;
    const room = wide / 2 - phase;
    if (room < 0) return refused({ kind: 'too-short', field: 'wide', least: repeat, given: wide });
    const repeats = Math.floor((room + NEAR) / repeat);
    const inside = settled(exactLength(Math.max(0, room - repeats * repeat)));
    return { ok: true, value: { inside, repeats } };
  });
}

/** A seam whose two edges slant to the stripes, each by its own angle in degrees. */
export interface SlantInput extends RepeatInput {
  one: number;
  other: number;
  seam: Length;
}

export interface Slanted {
  /** The repeat along each edge. */
  one: ExactLength;
  other: ExactLength;
  /** How far apart the lines are at the seam's end, where they meet at its beginning. */
  drift: ExactLength;
}

const STEEPEST = 85;

/**
 * Along an edge that slants by α from the warp the repeat is repeat ÷ cos α long; after a seam's length
 * what met at its beginning is seam × |cos α − cos β| apart (geometry). Equal angles match everywhere.
 *
 * Problems: those of the repeat, a seam of nothing, angles below 0 or over 85°.
 */
export function slanted(input: SlantInput): Outcome<Slanted> {
  const { one, other, seam } = input;
  const problems = [
    ...repeatProblems(input),
    ...angleProblem('one', one),
    ...angleProblem('other', other),
    ...mustBePositive('seam', seam),
  ];
  return answerUnless(problems, () => {
    const repeat = repeatOf(input);
    const [a, b] = [cosOf(one), cosOf(other)];
    return {
      ok: true,
      value: {
        one: exactLength(repeat / a),
        other: exactLength(repeat / b),
        drift: exactLength(seam * Math.abs(a - b)),
      },
    };
  });
}

function cosOf(degrees: number): number {
  return Math.cos((degrees * Math.PI) / 180);
}

function angleProblem(field: string, given: number): Problem[] {
  const least = 0;
  return given >= least && given <= STEEPEST
    ? []
    : [{ kind: 'out-of-range', field, given, least, most: STEEPEST }];
}
