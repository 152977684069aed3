import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBePositive, mustBePositiveIfGiven, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';

/** A dart by its opening where its legs end, or by the angle between them in degrees. */
export type DartOpening = { by: 'width'; width: Length } | { by: 'angle'; angle: number };

export interface DartInput {
  opening: DartOpening;
  /** From the point to the edge along each leg. */
  leg: Length;
}

/** A dart's two legs. */
export interface Wedge {
  /** Between its legs, in radians. */
  angle: number;
  /** Straight across between the ends of its legs. */
  width: ExactLength;
  /** From the point straight to the middle between them. */
  middle: ExactLength;
}

/** The least and the most angle between legs, in degrees. */
const LEAST_ANGLE = 0.5;
const MOST_ANGLE = 170;
const DEGREES = 180 / Math.PI;

/**
 * A dart: its angle is 2·asin(width ÷ 2 ÷ leg), which stays the same wherever it is moved to (geometry).
 *
 * Problems: a length of nothing, an opening that is no less than both legs together, an angle of less than
 * half a degree or over 170.
 */
export function wedge(input: DartInput): Outcome<Wedge> {
  const { opening, leg } = input;
  return answerUnless([...openingProblems(opening), ...mustBePositive('leg', leg)], () => {
    if (opening.by === 'angle') {
      return { ok: true, value: wedgeOf(opening.angle / DEGREES, leg) };
    }
    const { width } = opening;
    const under = exactLength(2 * leg * Math.sin(MOST_ANGLE / DEGREES / 2));
    if (width >= under) return refused({ kind: 'not-under', field: 'width', under, given: width });
    const angle = 2 * Math.asin(width / 2 / leg);
    return { ok: true, value: { angle, width, middle: exactLength(leg * Math.cos(angle / 2)) } };
  });
}

/** A dart of some angle in radians with legs of some length. */
export function wedgeOf(angle: number, leg: ExactLength): Wedge {
  const width = exactLength(2 * leg * Math.sin(angle / 2));
  return { angle, width, middle: exactLength(leg * Math.cos(angle / 2)) };
}

function openingProblems(opening: DartOpening): Problem[] {
  if (opening.by === 'width') return mustBePositive('width', opening.width);
  return outside('angle', opening.angle, LEAST_ANGLE, MOST_ANGLE);
}

/** What is wrong with a number that must lie between two others. */
export function outside(field: string, given: number, least: number, most: number): Problem[] {
  return given < least || given > most ? [{ kind: 'out-of-range', field, given, least, most }] : [];
}

/** The raw edge a dart is cut with, so that its fold is caught in the seam. */
export interface EdgeInput {
  leg: Length;
  /** On the side it is pressed to and on the other, between leg and edge in degrees. */
  slant: number;
  other: number;
  /** Beyond the stitch line. */
  seam: Length;
  /** Of the piece across, there; where it is known. */
  piece: Length | undefined;
}

export interface DartEdge {
  /** Along the middle line from the point: to the stitch line, and to the raw edge. */
  tip: ExactLength;
  cutTip: ExactLength;
  /** Along each leg from the point to the raw edge. */
  cutLeg: ExactLength;
  /** How far a finished edge is from smooth, in radians: more than nothing is a peak, less a dip. */
  kink: number;
}

/** The sharpest and the bluntest angle of a leg with its edge, in degrees. */
const SHARPEST = 20;
const BLUNTEST = 160;
/** What turning radians to degrees may be off by. */
const NOISE = 1e-9;

/**
 * Where the raw edge runs between the legs. Folded to one side, the dart lies on that side's edge: from leg to
 * middle line its edge is that one's mirror image, from there on the same turned about the point. With α
 * between leg ℓ and edge, and θ between the legs, they meet ℓ × sin α ÷ sin(α + θ ÷ 2) from the point. The
 * allowance lengthens each leg by itself ÷ sin α. Sewn, the edge is smooth where both angles make 180°
 * (derived here; a plan folded gives the same).
 *
 * Problems: an angle under 20° or over 160°, edges that never meet, a negative seam, an opening as wide as the piece.
 */
export function dartEdge(input: EdgeInput, dart: Wedge): Outcome<DartEdge> {
  return answerUnless(edgeProblems(input, dart), () => {
    const { leg, slant, other, seam } = input;
    const [near, far] = [slant / DEGREES, other / DEGREES];
    const meet = near + dart.angle / 2;
    const tipOf = (along: number) => exactLength((along * Math.sin(near)) / Math.sin(meet));
    const cutLeg = exactLength(leg + seam / Math.sin(near));
    const kink = Math.PI - near - far;
    return { ok: true, value: { tip: tipOf(leg), cutTip: tipOf(cutLeg), cutLeg, kink } };
  });
}

function edgeProblems(
  { slant, other, seam, piece }: EdgeInput,
  { angle, width }: Wedge,
): Problem[] {
  // With half of the dart's angle, so that it meets the middle line; in hundredths, as it is typed.
  const meets = BLUNTEST + SHARPEST / 2 - (angle / 2) * DEGREES;
  const most = Math.min(BLUNTEST, Math.floor(100 * (meets + NOISE)) / 100);
  const alone = [
    ...outside('slant', slant, SHARPEST, most),
    ...outside('other', other, SHARPEST, BLUNTEST),
    ...mustNotBeNegative('seam', seam),
    ...mustBePositiveIfGiven('piece', piece),
  ];
  if (alone.length > 0 || piece === undefined || piece > width) return alone;
  return [{ kind: 'not-over', field: 'piece', over: width, given: piece }];
}
