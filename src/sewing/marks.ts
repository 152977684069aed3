import { toGraduation } from '../lengths/graduation.ts';
import { insideGraduation } from '../lengths/inside-graduation.ts';
import {
  type ExactLength,
  exactLength,
  type Length,
  length,
  settled,
  ZERO,
} from '../lengths/length.ts';
import type { Mark, Run } from './run.ts';

/** A mark as it is made with the tape in hand. */
export interface MarkedMark extends Omit<Mark, 'at'> {
  /** Where it would be if a tape could show it: of a mark made elsewhere, where it was planned. */
  exact: ExactLength;
  /**
   * Where it is marked: the nearest graduation from the datum, of those inside its bounds where
   * it has some; or the measured place of one that is made.
   */
  at: ExactLength;
  /** From the mark before as marked, for checking with the tape; the first one from the datum. */
  step: ExactLength;
}

/** A run marked with one tape. */
export interface MarkedRun extends Omit<Run, 'marks'> {
  /** The smallest division of the tape it is marked with. */
  graduation: Length;
  marks: readonly MarkedMark[];
  /**
   * The most any mark is from its exact place: never over half a graduation, or a whole one
   * where it must stay inside or folds lie before it; further where a mark was made elsewhere.
   */
  worstError: ExactLength;
  /** The most any step between neighbours differs from its exact step: likewise never over a graduation. */
  worstUnevenness: ExactLength;
  /**
   * Two places that differ fall on one graduation, or one on the datum it is some way
   * from: the tape is too coarse for this run.
   */
  tooCoarse: boolean;
}

/**
 * Where an exact place is marked: on the nearest graduation. What lies in folds before it is
 * rounded by itself, and what shows by itself: else the rounding of every fold would add up in
 * what is left to see (derived here). Then it is within one graduation of its place on the flat
 * cloth, and within half of one when all is folded.
 *
 * @param taken of the place, what lies in folds before it
 */
export function placeOnTape(place: ExactLength, step: Length, taken: ExactLength = ZERO): Length {
  const visible = toGraduation(exactLength(place - taken), step);
  return length(visible + toGraduation(taken, step));
}

/**
 * Marks a run out with the tape in hand.
 *
 * Every mark is rounded from the datum by itself, never by adding up rounded
 * steps, so that no error grows along the run. A mark that is sewn, or made elsewhere,
 * stays where it was measured, and the step after it is taken from there. Time grows
 * with the number of marks, no faster.
 *
 * @param step the tape's graduation, more than nothing
 */
export function markOut(run: Run, step: Length): MarkedRun {
  let exactBefore: ExactLength = ZERO;
  let before: ExactLength = ZERO;
  let worstError = 0;
  let worstUnevenness = 0;
  let tooCoarse = false;
  // Marks across each other are on one line of any tape: each is compared with its own row.
  const rows = new Map<ExactLength | undefined, { exact: ExactLength; at: ExactLength }>();
  const marks = run.marks.map(({ at: place, ...mark }, i): MarkedMark => {
    const made = mark.kind === 'sewn' || mark.planned !== undefined;
    const exact = mark.planned ?? place;
    const inside = mark.inside && insideGraduation(exact, step, mark.inside);
    const at = made ? place : (inside ?? placeOnTape(place, step, mark.taken));
    tooCoarse ||= mark.inside !== undefined && inside === undefined;
    const marked: MarkedMark = { ...mark, exact, at, step: exactLength(at - before) };
    worstError = Math.max(worstError, Math.abs(at - exact));
    if (i > 0) {
      const uneven = Math.abs(marked.step - (exact - exactBefore));
      worstUnevenness = Math.max(worstUnevenness, uneven);
    }
    const beside = rows.get(mark.across) ?? { exact: ZERO, at: ZERO };
    tooCoarse ||= !made && at === beside.at && settled(exactLength(exact - beside.exact)) !== 0;
    rows.set(mark.across, { exact, at });
    exactBefore = exact;
    before = at;
    return marked;
  });
  return {
    datum: run.datum,
    length: run.length,
    graduation: step,
    marks,
    worstError: exactLength(worstError),
    worstUnevenness: exactLength(worstUnevenness),
    tooCoarse,
  };
}
