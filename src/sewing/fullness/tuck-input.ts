import { exactLength, type Length, length } from '../../lengths/length.ts';
import { mustBeCount, mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import type { Problem } from '../problem.ts';

/** The most tucks on one piece. */
export const MOST_TUCKS = 300;

/** Which whole number of gaps is taken: the nearest, as many as keep them no closer, or no wider. */
export type TuckFit = 'nearest' | 'no-closer' | 'no-wider';

export type TuckSpread =
  /** Clear between one tuck and the next stitch line. */
  | { by: 'gap'; gap: Length; fit: TuckFit }
  /** From stitch line to stitch line. */
  | { by: 'spacing'; spacing: Length; fit: TuckFit }
  | { by: 'count'; count: number }
  /** So many groups of so many tucks, these just so far apart. */
  | { by: 'groups'; groups: number; each: number; spacing: Length };

export interface TucksInput {
  /** From edge to edge when all is tucked. */
  finished: Length;
  /** From both edges to the stitch lines next to them. */
  first: Length;
  last: Length;
  spread: TuckSpread;
  /** Of the first tuck, from its stitch line to its fold; each one after is deeper by the step. */
  depth: Length;
  step: Length;
  /** Of groups: each begins with the first depth anew. */
  anew?: boolean | undefined;
  /** Which edge the tucks are pressed towards. */
  lies: 'last' | 'first';
  /** Added at both edges. */
  seam: Length;
}

/** What lies between the outer stitch lines. */
export function tuckedRoom({ finished, first, last }: TucksInput): Length {
  return length(finished - first - last);
}

/** What is wrong with each number by itself, and with edges that leave no room. */
export function tuckProblems(input: TucksInput): Problem[] {
  const { finished, first, last, depth, step, seam } = input;
  const alone = [
    ...mustBePositive('finished', finished),
    ...mustNotBeNegative('first', first),
    ...mustNotBeNegative('last', last),
    ...mustBePositive('depth', depth),
    ...mustNotBeNegative('step', step),
    ...mustNotBeNegative('seam', seam),
    ...spreadAlone(input.spread),
  ];
  if (alone.length > 0) return alone;
  const needed = exactLength(first + last);
  if (needed > finished) return [{ kind: 'ends-too-long', field: 'first', room: finished, needed }];
  return spreadProblems(input);
}

function spreadAlone(spread: TuckSpread): Problem[] {
  switch (spread.by) {
    case 'gap':
      return mustNotBeNegative('gap', spread.gap);
    case 'spacing':
      return mustBePositive('spacing', spread.spacing);
    case 'count':
      return mustBeCount('count', spread.count, 1, MOST_TUCKS);
    case 'groups':
      return [
        ...mustBeCount('groups', spread.groups, 2, MOST_TUCKS),
        ...mustBeCount('each', spread.each, 2, Math.floor(MOST_TUCKS / Math.max(2, spread.groups))),
        ...mustBePositive('spacing', spread.spacing),
      ];
  }
}

/** With all numbers good alone. */
function spreadProblems(input: TucksInput): Problem[] {
  const { spread } = input;
  const room = tuckedRoom(input);
  if (spread.by === 'groups') {
    const needed = exactLength(spread.groups * (spread.each - 1) * spread.spacing);
    return needed >= room ? [{ kind: 'does-not-fit', field: 'groups', room, needed }] : [];
  }
  if (spread.by === 'count') {
    return spread.count > 1 && room === 0
      ? [{ kind: 'too-many', field: 'count', most: 1, given: spread.count }]
      : [];
  }
  const wanted = wantedSpacing(spread, input.depth);
  const least = exactLength(room / (MOST_TUCKS - 1));
  if (wanted >= least) return [];
  const field = spread.by;
  const over = spread.by === 'gap' ? input.depth : 0;
  return [{ kind: 'too-close', field, least: exactLength(least - over), most: MOST_TUCKS }];
}

/** From stitch line to stitch line, as it is asked: a gap has the tuck that lies before it beside. */
export function wantedSpacing(
  spread: Extract<TuckSpread, { by: 'gap' | 'spacing' }>,
  depth: Length,
): Length {
  return spread.by === 'gap' ? length(spread.gap + depth) : spread.spacing;
}
