import { exactLength, type Length, length } from '../../lengths/length.ts';
import { mustBePositive, mustBePositiveIfGiven, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';

/** The most strips that are joined to one. */
export const MOST_STRIPS = 500;

export interface StripsInput {
  /** The length they come to, from seam to seam. */
  needed: Length;
  /** The usable width of the cloth, which each strip runs across. */
  cloth: Length;
  /** Taken by each edge of a join, and left at both ends. */
  seam: Length;
  /** Left at both ends, where that is another: an open strip may end on its selvedges. */
  ends?: Length | undefined;
  /** Joined to a ring: its ends are a join, too. */
  ring?: boolean | undefined;
  /** How deep each is cut, along the cloth. */
  deep?: Length | undefined;
}

/** Strips across the cloth, joined end to end. */
export interface Strips {
  count: number;
  joins: number;
  /** What is left over of the last one. */
  left: Length;
  /** The length of cloth they are cut from; undefined where their depth isn't known. */
  cloth: Length | undefined;
}

/**
 * How many strips across the cloth come to a length: ⌈needed ÷ (cloth − 2 seams)⌉. Where the two outer
 * edges keep the same seams, an open strip and a ring take the same number; where they keep other
 * ends it is ⌈(needed + 2 ends − 2 seams) ÷ (cloth − 2 seams)⌉, one at the least (derived here).
 *
 * Source: National Instructional Media Institute (Government of India), CITS Dress Making, Trade
 * Practical, vol. 2, 2024, page 203.
 *
 * Problems: nothing needed, a seam of less, cloth that is all seam or so narrow that it takes more
 * than 500 strips.
 */
export function stripsFor(input: StripsInput): Outcome<Strips> {
  return answerUnless(stripProblems(input), () => {
    const { cloth, seam, deep, ring } = input;
    const needed = joined(input);
    const each = cloth - 2 * seam;
    // Both are whole: a quotient of whole numbers is whole only where it is.
    const count = Math.max(1, Math.ceil(needed / each));
    return {
      ok: true,
      value: {
        count,
        joins: ring ? count : count - 1,
        left: length(count * each - needed),
        cloth: deep === undefined ? undefined : length(count * deep),
      },
    };
  });
}

/** What strips come to together, each less its seams: other ends than seams are one longer, or shorter. */
function joined({ needed, seam, ends = seam, ring }: StripsInput): number {
  return needed + (ring ? 0 : 2 * (ends - seam));
}

function stripProblems(input: StripsInput): Problem[] {
  const { needed, cloth, seam, ends, deep } = input;
  const alone = [
    ...mustBePositive('needed', needed),
    ...mustBePositive('cloth', cloth),
    ...mustNotBeNegative('seam', seam),
    ...(ends === undefined ? [] : mustNotBeNegative('ends', ends)),
    ...mustBePositiveIfGiven('deep', deep),
  ];
  if (alone.length > 0) return alone;
  // However little is needed, a strip has to have something beside its seams.
  const least = exactLength(2 * seam + Math.max(1, joined(input)) / MOST_STRIPS);
  return cloth < least ? [{ kind: 'too-short', field: 'cloth', least, given: cloth }] : [];
}
