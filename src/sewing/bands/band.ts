import { type ExactLength, exactLength, type Length, length, ZERO } from '../../lengths/length.ts';
import { foldShare } from '../hems/hem-folds.ts';
import { mustBePositive, mustBePositiveIfGiven, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';
import type { Mark, Run } from '../run.ts';

/** How a band is made: of one piece folded, of two, or twice as deep and folded back. */
export type BandMake = 'fold' | 'two' | 'back';
/** Where it opens; `ring` nowhere. */
export type BandOpens = 'back' | 'front' | 'side' | 'ring';

export interface BandInput {
  girth: Length;
  ease: Length;
  opens: BandOpens;
  /** Past its middle on top and below; nothing of a ring. */
  overlap: Length;
  underlap: Length;
  /** What a ring has to pass over. */
  pass: Length | undefined;
  /** As it shows. */
  wide: Length;
  make: BandMake;
  /** Of the cloth, where it counts. */
  thickness: Length | undefined;
  seam: Length;
  /** Of girth with ease, from side to side in front; half of it where it isn't known. */
  front: Length | undefined;
}

export interface Band {
  /** Round, from middle to middle, with ease. */
  round: Length;
  /** From finished end to finished end. */
  finished: Length;
  /** What is cut, with its seams. */
  long: Length;
  across: ExactLength;
  /** What the folds of its cloth take away from it; nothing where it isn't folded or the cloth isn't known. */
  folded: ExactLength;
  /** Sides, middles and the lines its ends meet at, from the cut end. */
  run: Run;
}

/** How many folds run along it, and how often it is as wide as it shows. */
const MADE: Readonly<Record<BandMake, { folds: number; times: number }>> = {
  fold: { folds: 1, times: 2 },
  two: { folds: 0, times: 1 },
  back: { folds: 1, times: 4 },
};

/** How often a band is as wide as it shows. */
export function timesWide(make: BandMake): number {
  return MADE[make].times;
}

/**
 * A band: girth and ease, with overlap and underlap where it opens, and a seam at both ends; folded it is
 * twice as wide as it shows, folded back four times, with a seam at both edges. A fold of cloth τ thick takes
 * 0.43 τ less (geometry, as of a hem).
 *
 * Source: a school's course (moodlehub.ca, page 47834).
 *
 * Problems: lengths of nothing, less than nothing, a ring that doesn't pass, a front as long as all round.
 */
export function band(input: BandInput): Outcome<Band> {
  return answerUnless(bandProblems(input), () => {
    const { girth, ease, overlap, underlap, wide, make, seam, thickness } = input;
    const round = length(girth + ease);
    const finished = length(round + overlap + underlap);
    const { folds, times } = MADE[make];
    const folded = exactLength(thickness === undefined ? 0 : folds * foldShare(thickness, 0));
    const long = length(finished + 2 * seam);
    const across = exactLength(times * wide + 2 * seam + folded);
    const run: Run = { datum: 'cut-end', length: long, marks: marksOf(input, round) };
    return { ok: true, value: { round, finished, long, across, folded, run } };
  });
}

/** From the cut end: where the overlap ends, sides and middles between, and where the underlap begins. */
function marksOf(
  { opens, overlap, underlap, seam, front: given }: BandInput,
  round: Length,
): Mark[] {
  const front = given ?? round / 2;
  const back = round - front;
  const within: Readonly<Record<BandOpens, readonly number[]>> = {
    back: [back / 2, back / 2 + front / 2, back / 2 + front],
    front: [front / 2, front / 2 + back / 2, front / 2 + back],
    side: [front / 2, front, front + back / 2],
    ring: [back / 2, back / 2 + front / 2, back / 2 + front],
  };
  const places = [...(overlap > 0 ? [0] : []), ...within[opens], ...(underlap > 0 ? [round] : [])];
  return places.map((place, i) => ({
    at: exactLength(seam + overlap + place),
    label: String(i + 1),
    kind: 'notch',
  }));
}

function bandProblems(input: BandInput): Problem[] {
  const { girth, ease, overlap, underlap, pass, wide, thickness, seam, front, opens } = input;
  const alone = [
    ...mustBePositive('girth', girth),
    ...mustNotBeNegative('ease', ease),
    ...mustNotBeNegative('overlap', overlap),
    ...mustNotBeNegative('underlap', underlap),
    ...mustBePositiveIfGiven('pass', pass),
    ...mustBePositive('wide', wide),
    ...mustBePositiveIfGiven('thickness', thickness),
    ...mustNotBeNegative('seam', seam),
    ...mustBePositiveIfGiven('front', front),
  ];
  if (alone.length > 0) return alone;
  const round = exactLength(girth + ease);
  if (opens === 'ring' && pass !== undefined && round < pass) {
    return [{ kind: 'too-short', field: 'ease', least: exactLength(pass - girth), given: ease }];
  }
  if (front !== undefined && front >= round) {
    return [{ kind: 'not-under', field: 'front', under: round, given: front }];
  }
  const thickest = exactLength(wide / 2);
  return thickness !== undefined && thickness > thickest
    ? [{ kind: 'too-long', field: 'thickness', most: thickest, given: thickness }]
    : [];
}

/** A band cut of several pieces. */
export interface BandPieces {
  count: number;
  /** Of each, with its seams. */
  long: ExactLength;
}

/**
 * Pieces of a band that is longer than its cloth: each but the ends' seams loses one at both its ends.
 *
 * @param there of cloth along the band; undefined where it is long enough
 *
 * Problems: cloth that is all seam.
 */
export function bandPieces(
  { long }: { long: ExactLength },
  seam: Length,
  there: Length | undefined,
): Outcome<BandPieces> {
  if (there === undefined) return { ok: true, value: { count: 1, long } };
  const room = there - 2 * seam;
  const problems: Problem[] =
    room <= 0
      ? [{ kind: 'not-over', field: 'cloth', over: exactLength(2 * seam), given: there }]
      : [];
  return answerUnless([...mustBePositive('cloth', there), ...problems], () => {
    const count = Math.max(1, Math.ceil((long - 2 * seam) / room));
    return { ok: true, value: { count, long: exactLength((long - 2 * seam) / count + 2 * seam) } };
  });
}

/** What is taken up of an edge so that it is as long as its band; less than nothing where it is shorter. */
export function takenUp(edge: Length | undefined, { round }: Pick<Band, 'round'>): ExactLength {
  return edge === undefined ? ZERO : exactLength(edge - round);
}
