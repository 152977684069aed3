import { type Length, length } from '../../lengths/length.ts';
import { mustBePositive, mustBeWithin, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome } from '../problem.ts';
import { depthsTaken, MOST_PLEATS, type PleatsInput } from './pleat-input.ts';

/** A strip that is there, to be laid in pleats. */
export interface StripToPleat extends Omit<PleatsInput, 'finished' | 'rule'> {
  /** From cut end to cut end, seams and all. */
  there: Length;
  /** Wanted from one pleat to the next. */
  width: Length;
}

/**
 * Pleats that a strip gives: as many as take their width and their folds of it, n = ⌊(S − F) ÷
 * (width + takes)⌋; the strip comes to S − n × takes, and what is over makes each a little wider.
 *
 * Source: Dress Making, Trade Practical 2, page 205, whose exercise has nothing over.
 *
 * Problems: a strip too short for one pleat, or so long that there are too many; a width or depth of
 * nothing; a seam or flat part of less.
 *
 * @param begun so many pleats instead, where they are begun
 */
export function pleatsInStrip(
  { there, width, ...same }: StripToPleat,
  begun?: number,
): Outcome<PleatsInput> {
  const { kind, depth, flat, seam } = same;
  const alone = [
    ...mustBePositive('there', there),
    ...mustBePositive('width', width),
    ...mustBePositive('depth', depth),
    ...mustNotBeNegative('seam', seam),
    ...mustNotBeNegative('flat', flat),
  ];
  return answerUnless(alone, () => {
    const takes = depth * depthsTaken(kind).value;
    const ends = 2 * seam + flat;
    const count = begun ?? Math.floor((there - ends) / (width + takes));
    const least = length(ends + Math.max(1, begun ?? 1) * takes + width);
    const most = length(ends + (MOST_PLEATS + 1) * (width + takes) - 1);
    return answerUnless(mustBeWithin('there', there, least, most), () => {
      const finished = length(there - 2 * seam - count * takes);
      return { ok: true, value: { ...same, finished, rule: { by: 'count', count } } };
    });
  });
}
