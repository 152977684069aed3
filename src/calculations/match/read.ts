import { needed } from '../../calculation/needed.ts';
import { type Match, match } from '../../sewing/pieces/matching.ts';
import type { MatchInput } from '../../sewing/pieces/matching-input.ts';
import { pairedOf } from '../../sewing/pieces/matching-pairs.ts';
import { answerUnless, mapped, type Outcome, type Problem } from '../../sewing/problem.ts';
import { EASE_BY_CLOTH } from '../../sewing/sources/hems.ts';
import type { MatchAsked } from './fields.ts';

/** What two edges are matched from: the rest says what the cloth takes. */
export const EDGE_FIELDS = [
  'here',
  'other',
  'alone',
  'use',
  'parts',
  'spread',
  'shares',
  'weights',
] as const satisfies readonly (keyof MatchAsked)[];

export type EdgesAsked = Pick<MatchAsked, (typeof EDGE_FIELDS)[number]>;

/** Everything worked out about two edges. */
export interface Matched {
  asked: MatchAsked;
  input: MatchInput;
  plan: Match;
  /** The part of its length the cloth eases in. */
  takes: number;
}

/** The edges that are asked for. */
export function matchInput(asked: EdgesAsked): MatchInput {
  const { here, other, alone, parts, weights } = asked;
  return { here, other, alone, parts, weights, shares: sharesOf(asked) };
}

/**
 * What part of the difference each length takes. Of a sleeve head none under the arm, which is its
 * first and last length; with fewer than three there is no other place for it.
 */
function sharesOf(asked: EdgesAsked): readonly number[] {
  const { spread, shares } = asked;
  if (spread === 'own') return shares;
  const { here } = pairedOf(asked) ?? asked;
  if (spread === 'even' || here.length < 3) return [];
  return here.map((one, i) => (i === 0 || i === here.length - 1 ? 0 : one));
}

/** The edges matched, and what their cloth takes. */
export function matchedOf(asked: MatchAsked): Outcome<Matched> {
  const input = matchInput(asked);
  const takes = takenBy(asked);
  return answerUnless(easeProblems(takes), () =>
    mapped(match(input), (plan) => ({ asked, input, plan, takes })),
  );
}

function takenBy({ cloth, ease }: Pick<MatchAsked, 'cloth' | 'ease'>): number {
  return cloth === 'own' ? needed({ ease }).ease / 100 : EASE_BY_CLOTH[cloth];
}

function easeProblems(takes: number): Problem[] {
  if (takes >= 0 && takes <= 1) return [];
  return [{ kind: 'out-of-range', field: 'ease', given: 100 * takes, least: 0, most: 100 }];
}
