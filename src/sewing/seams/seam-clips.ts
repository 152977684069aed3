import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBePositive, mustBePositiveIfGiven } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import type { Run } from '../run.ts';
import { CLIP_SHORT, CLIPS } from '../sources/seams.ts';

/** The most spaces between clips on one curve. */
const MOST_SPACES = 2000;

export interface ClipInput {
  /** Of the stitch line. */
  radius: Length;
  allowance: Length;
  /** How far one clip may open (or one notch close) at the raw edge. */
  opening: Length;
  /** Along the stitch line, from end to end of the curve, when the clips are to be marked. */
  along?: Length | undefined;
  /** Of clips that were begun: how many they are, whatever would be asked today. */
  count?: number | undefined;
}

/** Clips on a curved seam: how far apart at most, how deep, and where. */
export interface Clips {
  /** How far apart at most: the lesser of what the opening allows and what is published. */
  spacing: ExactLength;
  /** What the opening alone allows. */
  byOpening: ExactLength;
  /** From the raw edge, stopping short of the stitching. */
  deep: ExactLength;
  /** How much longer or shorter the raw edge is than the stitch line; known with its length. */
  differs: ExactLength | undefined;
  /** The clips along the stitch line, evenly between the ends of the curve. */
  run: Run | undefined;
}

/**
 * Clips so that none opens by more than is allowed: no further apart than o·R/A, and no
 * further than published. By Steiner the raw edge is longer or shorter than the stitch
 * line by A for every radian, and the clips share that out (derived here).
 *
 * Source of the widest spacing and the depth: `CLIPS`, `CLIP_SHORT`.
 *
 * Problems: nothing or less in a length, an allowance with no room for a clip, a
 * clip that opens wider than the allowance, a curve longer than its circle, more
 * than 2,000 spaces.
 */
export function clipCurve(input: ClipInput): Outcome<Clips> {
  return answerUnless(clipProblems(input), (): Outcome<Clips> => {
    const { radius, allowance, opening, along } = input;
    const byOpening = exactLength((opening * radius) / allowance);
    const spacing = exactLength(Math.min(byOpening, CLIPS.value[1]));
    const deep = exactLength(allowance - CLIP_SHORT.value);
    const clips = { spacing, byOpening, deep, differs: undefined, run: undefined };
    if (along === undefined) return { ok: true, value: clips };
    const most = exactLength(MOST_SPACES * spacing);
    if (along > most) return refused(tooMany(input, along, spacing === byOpening, most));
    const differs = exactLength((allowance * along) / radius);
    // A length that is a whole number of spacings needs no further clip for the noise of dividing.
    const asked = Math.max(1, Math.ceil(along / spacing - 1e-9));
    const run = clipRun(along, input.count === undefined ? asked : input.count + 1);
    return { ok: true, value: { ...clips, differs, run } };
  });
}

/** What makes too many clips: the opening where it asks for them, else the length of the curve. */
function tooMany(
  { radius, allowance }: ClipInput,
  along: Length,
  byOpening: boolean,
  most: ExactLength,
): Problem {
  if (!byOpening) return { kind: 'too-long', field: 'along', most, given: along };
  const least = exactLength((along * allowance) / (radius * MOST_SPACES));
  return { kind: 'too-close', field: 'opening', least, most: MOST_SPACES };
}

function clipRun(along: Length, spaces: number): Run {
  const marks = Array.from({ length: spaces - 1 }, (_, i) => ({
    at: exactLength((along * (i + 1)) / spaces),
    label: String(i + 1),
    kind: 'measure' as const,
  }));
  return { datum: 'zero', length: along, marks };
}

function clipProblems({ radius, allowance, opening, along }: ClipInput): Problem[] {
  const alone = [
    ...mustBePositive('radius', radius),
    ...mustBePositive('allowance', allowance),
    ...mustBePositive('opening', opening),
    ...mustBePositiveIfGiven('along', along),
  ];
  if (alone.length > 0) return alone;
  const short = CLIP_SHORT.value;
  if (allowance <= short) {
    return [{ kind: 'not-over', field: 'allowance', over: short, given: allowance }];
  }
  if (opening > allowance) {
    return [{ kind: 'too-long', field: 'opening', most: allowance, given: opening }];
  }
  const circle = exactLength(2 * Math.PI * radius);
  return along !== undefined && along > circle
    ? [{ kind: 'too-long', field: 'along', most: circle, given: along }]
    : [];
}
