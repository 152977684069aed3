import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBeCount, mustBePositive } from '../length-checks.ts';
import { answerUnless, type Outcome } from '../problem.ts';
import { outside, type Wedge, wedgeOf } from './dart.ts';

/** The most darts one is split in. */
const MOST_PARTS = 12;

/** One of the darts that another is moved and split into. */
export interface Moved {
  angle: number;
  width: ExactLength;
}

/**
 * A dart moved to another edge, in as many as are wanted: angles add up, θ = Σθᵢ, and each is 2 × r × sin(θᵢ ÷ 2)
 * wide at a leg of r (geometry).
 *
 * Problems: a leg of nothing, no whole number of darts or over 12.
 */
export function moveDart(
  { angle }: Wedge,
  { reach, parts }: { reach: Length; parts: number },
): Outcome<Moved> {
  const problems = [
    ...mustBePositive('reach', reach),
    ...mustBeCount('parts', parts, 1, MOST_PARTS),
  ];
  return answerUnless(problems, () => ({ ok: true, value: wedgeOf(angle / parts, reach) }));
}

/** An edge that takes a dart's width as gathers, or as ease. */
export interface Gathered {
  /** The edge before it is drawn up. */
  strip: ExactLength;
  ratio: number;
}

/**
 * A dart left open and drawn up over some of its edge: (zone + width) ÷ zone times as full.
 *
 * Problems: a zone of nothing.
 */
export function gatherDart({ width }: Wedge, zone: Length): Outcome<Gathered> {
  return answerUnless(mustBePositive('zone', zone), () => {
    const strip = exactLength(zone + width);
    return { ok: true, value: { strip, ratio: strip / zone } };
  });
}

/** A dart of which a seam takes a part. */
export interface Seamed {
  /** Of what is left as a dart: between its legs in radians, and its width at the same leg. */
  angle: number;
  kept: ExactLength;
  /** What the seam takes at the same distance from the point. */
  taken: ExactLength;
}

/**
 * A part of a dart's angle taken by a seam through its point, the rest left as a dart.
 *
 * @param percent of the angle, more than 0 up to 100
 */
export function dartInSeam({ angle }: Wedge, leg: Length, percent: number): Outcome<Seamed> {
  return answerUnless(outside('part', percent, 1, 100), () => {
    const turned = (angle * percent) / 100;
    const kept = wedgeOf(angle - turned, leg);
    return {
      ok: true,
      value: { angle: kept.angle, kept: kept.width, taken: wedgeOf(turned, leg).width },
    };
  });
}

/** A dart with a point at both ends. */
export interface TwoEnded {
  /** From the widest place to each point, along its legs. */
  above: ExactLength;
  below: ExactLength;
}

/**
 * The legs of a dart that is widest between its points: √(h² + (width ÷ 2)²) each way (geometry).
 *
 * Problems: a length of nothing.
 */
export function twoEnded(of: { width: Length; above: Length; below: Length }): Outcome<TwoEnded> {
  const { width, above, below } = of;
  const problems = [
    ...mustBePositive('width', width),
    ...mustBePositive('above', above),
    ...mustBePositive('below', below),
  ];
  const legOf = (high: Length) => exactLength(Math.hypot(high, width / 2));
  return answerUnless(problems, () => ({
    ok: true,
    value: { above: legOf(above), below: legOf(below) },
  }));
}
