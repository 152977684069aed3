import { exactLength, type Length, UNITS_PER_MM, ZERO } from '../../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';
import {
  CHAIN_FORMULA,
  CHAIN_RATIO,
  GUIDE,
  LOCK_FORMULA,
  LOOPER,
  RATIOS,
  SINGLE_FORMULA,
  type StitchKind,
  THREADS,
} from '../sources/thread.ts';

/** Where the ratio is from. */
export type RatioBy = 'formula' | 'table' | 'guide' | 'sample';

/** What the ratio of thread to seam is worked out from; what its way doesn't ask for is left out. */
export interface RatioInput {
  stitch: StitchKind;
  by: RatioBy;
  /** All layers of the seam together. */
  thickness?: Length | undefined;
  /** Of one stitch, along the seam. */
  stitchLong?: Length | undefined;
  /** Of a zigzag, from side to side. */
  zigWide?: Length | undefined;
  /** Unpicked of one's own: so long a seam, its needle threads, and all others. */
  sampleSeam?: Length | undefined;
  sampleNeedle?: Length | undefined;
  sampleOther?: Length | undefined;
}

export interface Ratio {
  /** Lengths of thread to one of seam. */
  ratio: number;
  /** What of it is the needle's; undefined where nobody says. */
  needle: number | undefined;
  /** The least a lockstitch by formula can take: what is rectangular there, round. */
  least: number | undefined;
}

/** A stitch is no shorter, so that no seam takes more than can be reckoned. Ours, no source. */
const SHORTEST = exactLength(UNITS_PER_MM / 10);

/** By which ways a stitch's ratio can be had: the surer, the earlier. */
export function waysFor(stitch: StitchKind): RatioBy[] {
  const formula = stitch === 'zigzag' || constantOf(stitch) !== undefined;
  return [
    ...(formula ? (['formula'] as const) : []),
    ...(RATIOS.value[stitch] === undefined ? [] : (['table'] as const)),
    ...(guideOf(stitch) === undefined ? [] : (['guide'] as const)),
    'sample',
  ];
}

/** The second table's ratio of a stitch. */
export function guideOf(stitch: StitchKind): number | undefined {
  return stitch === 'chain' ? CHAIN_RATIO.value.chain : GUIDE.value[stitch];
}

/** The formula's constant of a stitch that has one, and who says so. */
export function constantOf(stitch: StitchKind) {
  if (stitch === 'lock') return LOCK_FORMULA;
  if (stitch === 'chain') return CHAIN_FORMULA;
  return stitch === 'single' ? SINGLE_FORMULA : undefined;
}

/**
 * Thread to seam: by formula c + 2T ÷ s (lockstitch 2, single chainstitch 3, chainstitch 4; see
 * `sources/thread.ts`); of a zigzag 2 × (√(s² + w²) + T) ÷ s (derived here: its slope in the place of
 * a stitch length); by a table; or by a seam that was unpicked.
 *
 * The least of a lockstitch: round an ellipse s wide and T high instead of a rectangle, which is the
 * other end of what sections of stitches show (S. Ramanujan's approximation of its length).
 *
 * Problems: lengths of nothing, a stitch under 0.1 mm, a way there isn't for the stitch.
 */
export function threadRatio(input: RatioInput): Outcome<Ratio> {
  return answerUnless(problemsOf(input), () => {
    const { stitch, by } = input;
    if (by === 'sample') return { ok: true, value: bySample(input) };
    const ratio = by === 'formula' ? byFormula(input) : tabled(stitch, by);
    const round = by === 'formula' && stitch === 'lock';
    const least = round ? ellipse(input) : undefined;
    return { ok: true, value: { ratio, needle: needleOf(stitch, ratio), least } };
  });
}

function tabled(stitch: StitchKind, by: 'table' | 'guide'): number {
  return (by === 'table' ? RATIOS.value[stitch] : guideOf(stitch)) ?? 0;
}

function byFormula(input: RatioInput): number {
  const { stitch, thickness = 0, stitchLong = 0 } = input;
  const constant = constantOf(stitch);
  if (constant) return constant.value + (2 * thickness) / stitchLong;
  return (2 * (slopeOf(input) + thickness)) / stitchLong;
}

/** From one side of a zigzag to the other, as the thread goes. */
export function slopeOf({ stitchLong = ZERO, zigWide = ZERO }: RatioInput) {
  return exactLength(Math.hypot(stitchLong, zigWide));
}

function ellipse({ thickness = ZERO, stitchLong = ZERO }: RatioInput): number {
  const [a, b] = [stitchLong / 2, thickness / 2];
  return (Math.PI * (3 * (a + b) - Math.sqrt((3 * a + b) * (a + 3 * b)))) / stitchLong;
}

function bySample({
  sampleSeam = ZERO,
  sampleNeedle = ZERO,
  sampleOther = ZERO,
}: RatioInput): Ratio {
  const needle = sampleNeedle / sampleSeam;
  return { ratio: (sampleNeedle + sampleOther) / sampleSeam, needle, least: undefined };
}

/** Of a stitch of one thread all is the needle's, of a lockstitch half; of more threads nobody says. */
function needleOf(stitch: StitchKind, ratio: number): number | undefined {
  if (THREADS[stitch] === 1) return ratio;
  if (stitch === 'lock' || stitch === 'zigzag') return ratio / 2;
  return stitch === 'chain' ? ratio * (1 - LOOPER.value) : undefined;
}

function problemsOf(input: RatioInput): Problem[] {
  const { stitch, by, thickness, stitchLong, zigWide } = input;
  if (by === 'sample') return sampleProblems(input);
  if (by !== 'formula') return [];
  return [
    ...mustBePositive('thickness', thickness ?? ZERO),
    ...stitchProblems(stitchLong ?? ZERO),
    ...(stitch === 'zigzag' ? mustBePositive('zigWide', zigWide ?? ZERO) : []),
  ];
}

function stitchProblems(given: Length): Problem[] {
  const field = 'stitchLong';
  if (given > 0 && given < SHORTEST) return [{ kind: 'too-short', field, least: SHORTEST, given }];
  return mustBePositive(field, given);
}

function sampleProblems({ stitch, sampleSeam, sampleNeedle, sampleOther }: RatioInput): Problem[] {
  return [
    ...mustBePositive('sampleSeam', sampleSeam ?? ZERO),
    ...mustBePositive('sampleNeedle', sampleNeedle ?? ZERO),
    ...(THREADS[stitch] === 1 ? [] : mustNotBeNegative('sampleOther', sampleOther ?? ZERO)),
  ];
}
