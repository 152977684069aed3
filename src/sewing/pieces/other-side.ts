import { type ExactLength, exactLength, type Length, ZERO } from '../../lengths/length.ts';
import { mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, mapped, type Outcome } from '../problem.ts';
import type { Run } from '../run.ts';

/** How two sides of an opening meet. */
export interface Meeting {
  /** From this side's edge in to its line of marks. */
  setBack: Length;
  /** How far one edge lies over the other when closed; nothing when they just meet. */
  lap: Length;
}

/** What to mark on the other side. */
export interface OtherSide {
  /** The same marks from the same datum, so that both sides come out even. */
  run: Run;
  /** How far they shift along the edge: never at all. */
  along: Length;
  /** From the other side's edge in to its line of marks; below nothing: out past the edge. */
  setBack: ExactLength;
}

/**
 * Carries a run of marks over to the other side of an opening.
 *
 * Along the edge nothing shifts; across it the marks shift by the lap. Edges
 * that just meet have no lap: a hook set back from its edge then needs an eye
 * that projects past the other edge by as much, and `setBack` comes out below
 * nothing by that much.
 *
 * Source for hooks: School Sewing §133, the eye projects as far as the hook is set in.
 */
export function otherSide(run: Run, meeting: Meeting): Outcome<OtherSide> {
  return mapped(otherSetBack(meeting), (setBack) => ({ run, along: ZERO, setBack }));
}

/** From the other side's edge in to its line of marks; below nothing: out past the edge. */
export function otherSetBack({ setBack, lap }: Meeting): Outcome<ExactLength> {
  const problems = [...mustNotBeNegative('setBack', setBack), ...mustNotBeNegative('lap', lap)];
  return answerUnless(problems, () => ({ ok: true, value: exactLength(lap - setBack) }));
}
