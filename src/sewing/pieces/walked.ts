import {
  type ExactLength,
  exactLength,
  type Length,
  length,
  settled,
} from '../../lengths/length.ts';
import {
  mustBeCount,
  mustBePositive,
  mustBePositiveIfGiven,
  mustNotBeNegative,
} from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';
import type { Run } from '../run.ts';

const MOST_STEPS = 2000;
const MOST_PARTS = 100;

/** A curve that was walked along in equal straight steps, as with a tape or dividers. */
export interface WalkInput {
  step: Length;
  steps: number;
  /** Less than a step, at its end. */
  rest: Length;
  /** Of the curve at its tightest, where that is known. */
  radius?: Length | undefined;
  parts: number;
}

export interface Walk {
  /** As it was walked. */
  walked: Length;
  /** Along the curve itself, which no straight step follows; undefined where its radius isn't known. */
  line: ExactLength | undefined;
  /** Where each mark lies, in whole steps and what is over. */
  places: readonly { steps: number; rest: ExactLength }[];
  run: Run;
}

/**
 * A curve of any shape by walking it: n steps of h and a rest r. A straight step cuts its curve short: on a radius
 * R it is 2R × asin(h ÷ 2R) long, by about h² ÷ 24R² of it more (geometry). Even marks are walked alike,
 * so that they need no correction where the curve bends alike.
 *
 * Problems: a step of nothing, no step, more than 2000, a rest of a whole step, a radius no longer than half
 * a step, parts under 1 or over 100.
 */
export function walkedCurve(input: WalkInput): Outcome<Walk> {
  return answerUnless(walkProblems(input), () => {
    const { step, steps, rest, radius, parts } = input;
    const walked = length(steps * step + rest);
    const along = (chord: Length) =>
      radius === undefined ? chord : 2 * radius * Math.asin(chord / (2 * radius));
    const marks = Array.from({ length: parts + 1 }, (_, i) => ({
      at: settled(exactLength((i * walked) / parts)),
      label: String(i),
      kind: 'measure' as const,
    }));
    return {
      ok: true,
      value: {
        walked,
        line: radius === undefined ? undefined : exactLength(steps * along(step) + along(rest)),
        places: marks.map(({ at }) => placeOf(at, step)),
        run: { datum: 'zero', length: walked, marks },
      },
    };
  });
}

function placeOf(at: ExactLength, step: Length): { steps: number; rest: ExactLength } {
  const steps = Math.floor(at / step);
  return { steps, rest: exactLength(at - steps * step) };
}

function walkProblems({ step, steps, rest, radius, parts }: WalkInput): Problem[] {
  const alone = [
    ...mustBePositive('walkStep', step),
    ...mustBeCount('walkSteps', steps, 1, MOST_STEPS),
    ...mustNotBeNegative('walkRest', rest),
    ...mustBePositiveIfGiven('walkRadius', radius),
    ...mustBeCount('parts', parts, 1, MOST_PARTS),
  ];
  if (alone.length > 0) return alone;
  if (rest >= step) return [{ kind: 'not-under', field: 'walkRest', under: step, given: rest }];
  const over = exactLength(step / 2);
  return radius !== undefined && radius <= over
    ? [{ kind: 'not-over', field: 'walkRadius', over, given: radius }]
    : [];
}
