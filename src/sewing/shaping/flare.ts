import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBeCount, mustBePositive, mustBeWithin, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';

/** The most slashes, godets or pieces of one hem. */
const MOST = 60;
/** The widest a godet opens, in degrees. */
const MOST_GODET = 180;
const LEAST_GODET = 5;
const DEGREES = 180 / Math.PI;

/** A piece that is slashed from its hem to points and spread. */
export interface SlashInput {
  /** The hem before, all round. */
  sweep: Length;
  /** From the points to the hem. */
  long: Length;
  slashes: number;
  /** Each spread so far at the hem, or all until the hem is as wanted. */
  how: { by: 'spread'; spread: Length } | { by: 'wanted'; wanted: Length };
}

export interface Slashed {
  spread: ExactLength;
  hem: ExactLength;
  /** Of each slash, in radians. */
  angle: number;
}

/**
 * Flare by slashes: each adds its spread to the hem and nothing at its point (geometry).
 *
 * Problems: lengths of nothing, no whole number of slashes, a hem wanted that is no longer than it was.
 */
export function slash({ sweep, long, slashes, how }: SlashInput): Outcome<Slashed> {
  const alone = [
    ...mustBePositive('sweep', sweep),
    ...mustBePositive('long', long),
    ...mustBeCount('slashes', slashes, 1, MOST),
    ...(how.by === 'spread'
      ? mustBePositive('spread', how.spread)
      : mustBePositive('wanted', how.wanted)),
  ];
  const more: Problem[] =
    alone.length === 0 && how.by === 'wanted' && how.wanted <= sweep
      ? [{ kind: 'not-over', field: 'wanted', over: sweep, given: how.wanted }]
      : [];
  return answerUnless([...alone, ...more], () => {
    const hem = how.by === 'wanted' ? how.wanted : sweep + slashes * how.spread;
    const spread = (hem - sweep) / slashes;
    const value = { spread: exactLength(spread), hem: exactLength(hem), angle: spread / long };
    return { ok: true, value };
  });
}

export interface GodetInput {
  sweep: Length;
  godets: number;
  /** Its straight edges, from its point to the hem line. */
  edge: Length;
  /** By the angle between them in degrees, or by what it adds to the hem. */
  how: { by: 'angle'; angle: number } | { by: 'added'; added: Length };
  seam: Length;
  /** Added below the hem line. */
  hem: Length;
}

export interface Godet {
  angle: number;
  /** What one adds, along its arc. */
  added: ExactLength;
  hem: ExactLength;
  /** Straight across at the hem line. */
  chord: ExactLength;
  /** Cloth for one, along its middle and across it, with seams to where both meet at its point. */
  long: ExactLength;
  wide: ExactLength;
}

/**
 * A godet: a part of a circle whose straight edges are g long adds angle × g to the hem (geometry).
 *
 * Problems: lengths of nothing or less, no whole number, an angle under 5° or over 180.
 */
export function godet({ sweep, godets, edge, how, seam, hem }: GodetInput): Outcome<Godet> {
  const alone = [
    ...mustBePositive('sweep', sweep),
    ...mustBeCount('godets', godets, 1, MOST),
    ...mustBePositive('edge', edge),
    ...(how.by === 'added' ? mustBePositive('added', how.added) : []),
    ...mustNotBeNegative('seam', seam),
    ...mustNotBeNegative('hemMore', hem),
  ];
  return answerUnless(alone.length > 0 ? alone : openProblems(how, edge), () => {
    const angle = how.by === 'angle' ? how.angle / DEGREES : how.added / edge;
    const added = exactLength(angle * edge);
    const outer = edge + hem;
    const side = angle / 2 + Math.asin(Math.min(1, seam / outer));
    return {
      ok: true,
      value: {
        angle,
        added,
        hem: exactLength(sweep + godets * added),
        chord: exactLength(2 * edge * Math.sin(angle / 2)),
        long: exactLength(outer + seam / Math.sin(angle / 2)),
        wide: exactLength(2 * outer * Math.sin(Math.min(Math.PI / 2, side))),
      },
    };
  });
}

function openProblems(how: GodetInput['how'], edge: Length): Problem[] {
  if (how.by === 'angle') {
    const { angle: given } = how;
    const [least, most] = [LEAST_GODET, MOST_GODET];
    const within = given >= least && given <= most;
    return within ? [] : [{ kind: 'out-of-range', field: 'angle', given, least, most }];
  }
  const added = (angle: number) => exactLength((angle / DEGREES) * edge);
  return mustBeWithin('added', how.added, added(LEAST_GODET), added(MOST_GODET));
}

export interface LengthenInput {
  /** Upper edge and hem, all round, and how long it is between. */
  upper: Length;
  sweep: Length;
  long: Length;
  /** So much longer, or less than nothing for shorter. */
  change: ExactLength;
  pieces: number;
}

export interface Lengthened {
  long: ExactLength;
  /** The hem where the change is made at it; at a line within the hem is kept. */
  hem: ExactLength;
  /** How far each side edge jogs at a line, to be drawn anew. */
  jog: ExactLength;
}

/**
 * Length changed by Δ. At the hem the sweep changes by (hem − upper edge) ÷ length × Δ; at a line within the
 * hem is kept, and each of a piece's edges, leaning γ from the grain, jogs by Δ × tan γ (geometry).
 *
 * Problems: lengths of nothing, no whole number of pieces, so much shorter that nothing of it or of its hem is left.
 */
export function lengthen(input: LengthenInput): Outcome<Lengthened> {
  const { upper, sweep, long, change, pieces } = input;
  const problems = [
    ...mustBePositive('upper', upper),
    ...mustBePositive('sweep', sweep),
    ...mustBePositive('long', long),
    ...mustBeCount('pieces', pieces, 1, MOST),
  ];
  return answerUnless(problems.length > 0 ? problems : changeProblems(input), () => {
    const angle = (sweep - upper) / long;
    const jog = Math.abs(change * Math.tan(angle / (2 * pieces)));
    return {
      ok: true,
      value: {
        long: exactLength(long + change),
        hem: exactLength(sweep + angle * change),
        jog: exactLength(jog),
      },
    };
  });
}

function changeProblems({ upper, sweep, long, change, pieces }: LengthenInput): Problem[] {
  const given = Math.abs(change) as Length;
  if (change === 0) return [{ kind: 'not-positive', field: 'change', given }];
  if (long + change <= 0) return [{ kind: 'not-under', field: 'change', under: long, given }];
  // Only a hem narrower than its edge is ever used up.
  const lost = upper > sweep ? (sweep * long) / (upper - sweep) : Number.POSITIVE_INFINITY;
  if (change >= lost) {
    return [{ kind: 'not-under', field: 'change', under: exactLength(lost), given }];
  }
  // A piece whose sides lean as far as this has none that could jog.
  const least = Math.floor(Math.abs(sweep - upper) / (Math.PI * long)) + 1;
  if (least > MOST) {
    const [field, longer, shorter] =
      sweep > upper ? (['sweep', sweep, upper] as const) : (['upper', upper, sweep] as const);
    const under = exactLength(shorter + MOST * Math.PI * long);
    return [{ kind: 'not-under', field, under, given: longer }];
  }
  return pieces >= least
    ? []
    : [{ kind: 'too-few', field: 'pieces', least, most: MOST, given: pieces }];
}
