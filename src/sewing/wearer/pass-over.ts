import { type ExactLength, exactLength, type Length, ZERO } from '../../lengths/length.ts';
import { mustBePositive, mustBePositiveIfGiven, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import { type LeastSlit, leastSlit, type SlitLevel } from './least-slit.ts';

/** An edge that something has to pass: a neckline the head, a cuff the hand. All round, in 1/8000 mm. */
export interface PassInput {
  /** The edge, closed. Nothing where there is only a slit. */
  edge: Length;
  /** The head, the hand, the heel, the hips. */
  body: Length;
  ease: Length;
  /** The garment further down, and how far down that is; both or neither. */
  below?: Length | undefined;
  down?: Length | undefined;
}

/** What has to pass, and the opening that lets it. */
export interface Pass {
  needs: ExactLength;
  least: ExactLength;
  by: Exclude<LeastSlit['by'], 'never'>;
}

/**
 * The least opening of an edge: its slit adds twice its length to what is round, (body + ease − edge) ÷ 2,
 * and where the garment is known further down, at least to where that is wide enough (`least-slit.ts`).
 *
 * Problems: a body of nothing, an edge or ease below nothing; a garment too narrow further down for
 * any opening.
 */
export function passOver(input: PassInput): Outcome<Pass> {
  const { edge, body, ease, below, down } = input;
  return answerUnless(passProblems(input), () => {
    const needs = exactLength(body + ease);
    const levels: SlitLevel[] = [{ from: ZERO, garment: edge, needs }];
    if (below !== undefined && down !== undefined)
      levels.push({ from: down, garment: below, needs });
    const { slit, by } = leastSlit(levels);
    if (by !== 'never') return { ok: true, value: { needs, least: slit, by } };
    return refused({ kind: 'does-not-fit', field: 'below', room: below ?? edge, needed: needs });
  });
}

/** How far round an edge opens with a slit: both its edges lie flat (derived here). */
export function opensTo(edge: Length, slit: ExactLength): ExactLength {
  return exactLength(edge + 2 * slit);
}

function passProblems({ edge, body, ease, below, down }: PassInput): Problem[] {
  return [
    ...mustNotBeNegative('edge', edge),
    ...mustBePositive('body', body),
    ...mustNotBeNegative('ease', ease),
    ...mustBePositiveIfGiven('below', below),
    ...mustBePositiveIfGiven('down', down),
  ];
}
