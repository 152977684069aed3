import { type ExactLength, exactLength, inches, type Length } from '../../lengths/length.ts';
import { mustBePositive } from '../length-checks.ts';
import { answerUnless, type Outcome } from '../problem.ts';
import {
  type ButtonholeQuote,
  OVERLAP_DIAMETER,
  OVERLAP_HALF_AND_QUARTER,
  OVERLAP_SMALL_BUTTON,
  OVERLAP_THREE_QUARTERS,
} from '../sources/buttonholes.ts';
import type { Quoted } from '../sources/published.ts';

/** What one published rule asks for. */
export interface OverlapRule {
  least: ExactLength;
  rule: Quoted<{ diameters: number; more: Length }, ButtonholeQuote>;
}

/** What the published rules ask for a button, to be shown, not ruled on. */
export interface Overlap {
  rules: readonly OverlapRule[];
  /** The smallest and the largest of them. */
  from: ExactLength;
  to: ExactLength;
}

/** A button this near to 3/8 in is taken as "about 3/8 in". Ours, no source. */
const ABOUT = inches(1 / 16);
const SMALL = inches(3 / 8);

/**
 * How far the cloth should reach past the centre line for a button, by each
 * published rule. They conflict, and which is widest changes with the diameter.
 */
export function overlapPastCentre(diameter: Length): Outcome<Overlap> {
  return answerUnless(mustBePositive('diameter', diameter), () => {
    const rules = [
      OVERLAP_HALF_AND_QUARTER,
      OVERLAP_THREE_QUARTERS,
      OVERLAP_DIAMETER,
      ...(Math.abs(diameter - SMALL) <= ABOUT ? [OVERLAP_SMALL_BUTTON] : []),
    ].map((rule): OverlapRule => {
      const { diameters, more } = rule.value;
      return { rule, least: exactLength(diameters * diameter + more) };
    });
    const least = rules.map((rule) => rule.least);
    const from = exactLength(Math.min(...least));
    const to = exactLength(Math.max(...least));
    return { ok: true, value: { rules, from, to } };
  });
}
