import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBeCount, mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome } from '../problem.ts';
import type { Run } from '../run.ts';

const MOST_LOOPS = 40;

/** Loops for a belt. Lengths in 1/8000 mm. */
export interface LoopsInput {
  around: Length;
  loops: number;
  belt: Length;
  /** Of the belt: it passes under the loop. */
  thick: Length;
  ease: Length;
  /** Turned in at each end. */
  turn: Length;
}

/** Loops as they are cut, and where they are sewn on. */
export interface Loops {
  each: ExactLength;
  strip: ExactLength;
  /** Round from the centre back. */
  run: Run;
}

/**
 * Each loop is belt + 2 × its thickness + ease + 2 turns long; they lie evenly round from the centre back,
 * so that both fronts mirror each other (derived here; ease is common practice, no source).
 *
 * Problems: lengths of nothing or below it, no loop, more than 40.
 */
export function loops(input: LoopsInput): Outcome<Loops> {
  const { around, belt, thick, ease, turn } = input;
  const problems = [
    ...mustBePositive('around', around),
    ...mustBeCount('loops', input.loops, 1, MOST_LOOPS),
    ...mustBePositive('belt', belt),
    ...mustNotBeNegative('thick', thick),
    ...mustNotBeNegative('ease', ease),
    ...mustNotBeNegative('turn', turn),
  ];
  return answerUnless(problems, () => {
    const each = exactLength(belt + 2 * thick + ease + 2 * turn);
    const marks = Array.from({ length: input.loops }, (_, i) => ({
      at: exactLength((i * around) / input.loops),
      label: String(i + 1),
      kind: 'placement' as const,
    }));
    const run: Run = { datum: 'zero', length: around, marks };
    return { ok: true, value: { each, strip: exactLength(input.loops * each), run } };
  });
}

/** A hanger's tape: twice its drop and a seam at both ends. Problems: a drop of nothing, a seam below it. */
export function hanger(drop: Length, seam: Length): Outcome<ExactLength> {
  return answerUnless(
    [...mustBePositive('drop', drop), ...mustNotBeNegative('seam', seam)],
    () => ({
      ok: true,
      value: exactLength(2 * drop + 2 * seam),
    }),
  );
}
