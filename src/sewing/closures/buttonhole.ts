import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBePositive } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';
import {
  BUTTONHOLE_ABOVE_BUTTON,
  BUTTONHOLE_AND_AN_EIGHTH,
  BUTTONHOLE_AS_THE_BUTTON,
  BUTTONHOLE_BY_GIRTH,
  BUTTONHOLE_DIAMETER,
  BUTTONHOLE_DIAMETER_AND_AN_EIGHTH,
  BUTTONHOLE_PAST_CENTRE,
  BUTTONHOLE_ROUND,
  type ButtonholeQuote,
} from '../sources/buttonholes.ts';
import type { Quoted } from '../sources/published.ts';

/** The published rules for a buttonhole's length. They conflict; the first is the default. */
export const BUTTONHOLE_RULES = {
  'diameter-thickness': BUTTONHOLE_AS_THE_BUTTON,
  'diameter-thickness-eighth': BUTTONHOLE_AND_AN_EIGHTH,
  'half-girth-eighth': BUTTONHOLE_BY_GIRTH,
  diameter: BUTTONHOLE_DIAMETER,
  round: BUTTONHOLE_ROUND,
  'diameter-eighth': BUTTONHOLE_DIAMETER_AND_AN_EIGHTH,
} as const;

export type ButtonholeRule = keyof typeof BUTTONHOLE_RULES;

/** A button and the hole it is to pass. */
export interface ButtonholeInput {
  diameter: Length;
  /** Read only by the rules that use it. */
  thickness: Length;
  /** Measured round the widest part; without it the girth rule takes 2 × (diameter + thickness). */
  girth?: Length | undefined;
  rule: ButtonholeRule;
  direction: 'horizontal' | 'vertical';
}

/**
 * A buttonhole and where it lies.
 *
 * Horizontal: `past` is toward the edge from the centre line, `rest` the other
 * way. Vertical, on the centre line: `past` is above the button's place at
 * most, `rest` below it.
 */
export interface Buttonhole {
  length: ExactLength;
  past: Length;
  rest: ExactLength;
  lengthRule: Quoted<number, ButtonholeQuote>;
  placeRule: Quoted<Length, ButtonholeQuote>;
}

/**
 * How long a buttonhole is cut and where it starts, by a published rule.
 *
 * Problems: a diameter, thickness or girth of nothing or less, a girth less
 * than twice the diameter, a diameter too small for the hole to reach the line.
 */
export function buttonhole(input: ButtonholeInput): Outcome<Buttonhole> {
  return answerUnless(buttonholeProblems(input), () => {
    const length = buttonholeLength(input);
    const placeRule =
      input.direction === 'horizontal' ? BUTTONHOLE_PAST_CENTRE : BUTTONHOLE_ABOVE_BUTTON;
    const past = placeRule.value;
    const rest = exactLength(length - past);
    return {
      ok: true,
      value: { length, past, rest, lengthRule: BUTTONHOLE_RULES[input.rule], placeRule },
    };
  });
}

function buttonholeLength({ rule, diameter, thickness, girth }: ButtonholeInput): ExactLength {
  switch (rule) {
    case 'diameter-thickness':
    case 'diameter-thickness-eighth':
      return exactLength(diameter + thickness + BUTTONHOLE_RULES[rule].value);
    case 'half-girth-eighth':
      return exactLength((girth ?? 2 * (diameter + thickness)) / 2 + BUTTONHOLE_BY_GIRTH.value);
    case 'diameter':
    case 'diameter-eighth':
      return exactLength(diameter + BUTTONHOLE_RULES[rule].value);
    case 'round':
      return exactLength(diameter * BUTTONHOLE_ROUND.value);
  }
}

function buttonholeProblems(input: ButtonholeInput): Problem[] {
  const { rule, diameter, thickness, girth } = input;
  const byGirth = rule === 'half-girth-eighth' && girth !== undefined;
  const usesThickness = rule.startsWith('diameter-thickness') || rule === 'half-girth-eighth';
  const problems = [
    ...mustBePositive('diameter', diameter),
    ...(usesThickness && !byGirth ? mustBePositive('thickness', thickness) : []),
    ...(byGirth ? mustBePositive('girth', girth) : []),
  ];
  if (problems.length > 0) return problems;
  if (byGirth && girth < 2 * diameter) {
    return [{ kind: 'too-short', field: 'girth', least: exactLength(2 * diameter), given: girth }];
  }
  const least = BUTTONHOLE_PAST_CENTRE.value;
  return diameter < least ? [{ kind: 'too-short', field: 'diameter', least, given: diameter }] : [];
}
