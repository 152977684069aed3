import { needed } from '../../calculation/needed.ts';
import type { Length } from '../../lengths/length.ts';
import {
  type HoleSide,
  type OutlineHoles,
  outlineHoles,
  type PairHoles,
  pairHoles,
} from '../../sewing/edging/outline-holes.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless, mapped, type Outcome } from '../../sewing/problem.ts';
import {
  type OutlineAsked,
  outlineOf,
  type PAIR_FIELDS,
  type ROUND_FIELDS,
  ruleOf,
} from './fields.ts';

/** Holes as they were worked out: round one outline, or on two edges that meet. */
export type Worked = { asked: OutlineAsked } & (
  | { round: OutlineHoles; pair?: undefined }
  | { round?: undefined; pair: PairHoles & { lengths: readonly [Length, Length] } }
);

/** Holes round the outline, as asked or as many as were begun. */
export function roundOf(
  asked: Pick<OutlineAsked, (typeof ROUND_FIELDS)[number]>,
  begun?: number,
): Outcome<OutlineHoles> {
  return outlineHoles(outlineOf(asked), ruleOf(asked, begun));
}

/** Holes of both edges, as asked or as many as were begun. */
export function pairOf(
  asked: Pick<OutlineAsked, (typeof PAIR_FIELDS)[number]>,
  begun?: number,
): Outcome<PairHoles & { lengths: readonly [Length, Length] }> {
  const { one, other } = needed({ one: asked.one, other: asked.other });
  return mapped(pairHoles(one, other, ruleOf(asked, begun)), (pair) => ({
    ...pair,
    lengths: [one, other] as const,
  }));
}

/** All that is asked of holes, or every reason why not. */
export function outlineWorked(asked: OutlineAsked): Outcome<Worked> {
  return answerUnless<Worked>(mustBePositive('hole', asked.hole), () =>
    asked.shape === 'pair'
      ? mapped(pairOf(asked), (pair) => ({ asked, pair }))
      : mapped(roundOf(asked), (round) => ({ asked, round })),
  );
}

/** The sides that differ: both of a rectangle, all that are free, else the first. */
export function unlike({ sides }: OutlineHoles, shape: OutlineAsked['shape']): HoleSide[] {
  if (shape === 'free') return [...sides];
  return sides.slice(0, shape === 'rectangle' ? 2 : 1);
}
