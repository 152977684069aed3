import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, refused } from '../problem.ts';

/** Cloth whose threads don't run straight from selvedge to selvedge. */
export interface GrainInput {
  /** From selvedge to selvedge. */
  wide: Length;
  /** From a straight edge between the selvedges to the thread, where that is greatest, along the selvedge. */
  bow: Length;
  /** From the line square to the selvedge to the thread's other end. */
  ahead: Length;
}

export interface Grain {
  /** Shares of the width, in per cent. */
  bow: number;
  skew: number;
  /** By how much the thread is off square, in degrees. */
  turned: number;
}

/**
 * Bow and skew: each its distance in per cent of the width, and the angle whose tangent the skew is
 * (ASTM D3882 as a laboratory's guide tells it, tnlab.org, d3882-08; the formula is derived).
 *
 * Problems: cloth of no width, less than nothing, a bow or a skew as long as the cloth is wide.
 */
export function offGrain({ wide, bow, ahead }: GrainInput): Outcome<Grain> {
  const problems = [
    ...mustBePositive('clothWide', wide),
    ...mustNotBeNegative('bow', bow),
    ...mustNotBeNegative('ahead', ahead),
  ];
  return answerUnless(problems, () => {
    for (const [field, given] of Object.entries({ bow, ahead })) {
      if (given >= wide) return refused({ kind: 'not-under', field, under: wide, given });
    }
    const turned = (Math.atan(ahead / wide) * 180) / Math.PI;
    return {
      ok: true,
      value: { bow: (100 * bow) / wide, skew: (100 * ahead) / wide, turned },
    };
  });
}

/**
 * By how much skewed cloth lifts one end of an edge above the other: its length × skew ÷ width (derived here).
 *
 * Problems: those of the grain, an edge of nothing.
 */
export function liftOf(input: GrainInput, over: Length): Outcome<ExactLength> {
  const found = offGrain(input);
  if (!found.ok) return found;
  return answerUnless(mustBePositive('over', over), () => ({
    ok: true,
    value: exactLength((over * input.ahead) / input.wide),
  }));
}
