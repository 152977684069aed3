import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBePositive, mustBePositiveIfGiven, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import { SLASH_FACING, TO_CENTRE } from '../sources/pockets.ts';

/** How what the pocket leaves of the half front is shared. */
export type PocketPlace =
  | { by: 'thirds' }
  | { by: 'middle' }
  /** From the centre line to its nearer edge. */
  | { by: 'given'; near: Length };

/** A pocket on one front; the other one is its mirror image. Lengths in 1/8000 mm. */
export interface PocketInput {
  /** From the centre line to the side, at the pocket's level. */
  front: Length;
  /** Along its opening. */
  width: Length;
  /** From the waist, or what else both fronts share, to the opening's nearer end. */
  down: Length;
  /** How much lower its farther end is. */
  slant: Length;
  place: PocketPlace;
}

/** Where a pocket's opening lies, alike on both fronts. */
export interface PocketAt {
  near: ExactLength;
  far: ExactLength;
  /** From the same line as its nearer end. */
  downFar: ExactLength;
}

/**
 * Where the opening of a pocket lies: its nearer edge at 2/3, or 1/2, of what it leaves of the half front.
 * What slants is as long along its opening, √(width² − slant²) across.
 *
 * Source: `TO_CENTRE`; slanted: geometry.
 * Problems: lengths of nothing; a slant not under the width; a pocket as wide as the half front, or past
 * its side.
 */
export function pocketAt(input: PocketInput): Outcome<PocketAt> {
  return answerUnless(placeProblems(input), () => {
    const { front, width, down, slant, place } = input;
    const across = Math.sqrt(width * width - slant * slant);
    if (across >= front) {
      return refused({ kind: 'not-under', field: 'width', under: front, given: width });
    }
    const near = nearOf(place, front - across);
    if (near + across > front) {
      const most = exactLength(front - across);
      return refused({ kind: 'too-long', field: 'near', most, given: near as Length });
    }
    const far = exactLength(near + across);
    return {
      ok: true,
      value: { near: exactLength(near), far, downFar: exactLength(down + slant) },
    };
  });
}

function nearOf(place: PocketPlace, left: number): number {
  if (place.by === 'given') return place.near;
  return place.by === 'middle' ? left / 2 : (left * TO_CENTRE.value.parts) / TO_CENTRE.value.of;
}

function placeProblems({ front, width, down, slant, place }: PocketInput): Problem[] {
  return [
    ...mustBePositive('front', front),
    ...mustBePositive('width', width),
    ...mustNotBeNegative('down', down),
    ...mustNotBeNegative('slant', slant),
    ...(place.by === 'given' ? mustNotBeNegative('near', place.near) : []),
    ...(width > 0 && slant >= width
      ? [{ kind: 'not-under', field: 'slant', under: width, given: slant } as const]
      : []),
  ];
}

/** A patch as it is cut. */
export interface Patch {
  wide: ExactLength;
  deep: ExactLength;
}

/**
 * A patch pocket as it is cut: a seam at each side; its hem, and a seam at both ends, along its depth.
 *
 * Source: `PATCH_TOP`. Problems: a width or depth of nothing, a hem or seam below nothing.
 */
export function patch(size: {
  width: Length;
  deep: Length;
  hem: Length;
  seam: Length;
}): Outcome<Patch> {
  const { width, deep, hem, seam } = size;
  const problems = [
    ...mustBePositive('width', width),
    ...mustBePositive('deep', deep),
    ...mustNotBeNegative('hem', hem),
    ...mustNotBeNegative('seam', seam),
  ];
  return answerUnless(problems, () => {
    const wide = exactLength(width + 2 * seam);
    return { ok: true, value: { wide, deep: exactLength(deep + hem + 2 * seam) } };
  });
}

/** The facing of a slashed pocket: 1/2 in beyond each end (`SLASH_FACING`). @param width more than nothing */
export function slashFacing(width: ExactLength): Patch {
  const { wide, beyond } = SLASH_FACING.value;
  return { wide, deep: exactLength(width + 2 * beyond) };
}

/**
 * The least opening for a hand: what is open lies flat, so half the hand's girth, and what is to spare
 * (derived here). Undefined where the hand isn't known. Problems: a hand of nothing.
 */
export function handOpening(
  hand: Length | undefined,
  ease: Length,
): Outcome<ExactLength | undefined> {
  const problems = [...mustBePositiveIfGiven('hand', hand), ...mustNotBeNegative('ease', ease)];
  return answerUnless(problems, () => ({
    ok: true,
    value: hand === undefined ? undefined : exactLength(hand / 2 + ease),
  }));
}
