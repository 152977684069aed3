import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBeCount, mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';

/** The most seams or darts that go round a garment. */
const MOST_SEAMS = 100;

/** All round in 1/8000 mm: a measure of the body, and what the garment is to be wider. */
export interface WantedInput {
  body: Length;
  /** Less than nothing where cloth is to stretch. */
  ease: Length;
}

/** Seams and darts that are sewn otherwise than cut for. */
export interface GirthChange {
  seams?: number | undefined;
  /** Further out on each edge of each of the seams; less than nothing is further in. */
  edge?: Length | undefined;
  darts?: number | undefined;
  /** What each dart takes up less; less than nothing is more. */
  dart?: Length | undefined;
}

export interface PiecesInput extends GirthChange {
  /** Widths of all pieces together, as they lie flat. */
  pieces: Length;
  /** Of these, what goes into the allowances: of n seams 2n edges. Nothing of finished widths. */
  allowances: Length;
  /** Of these, what is lapped, or taken up in darts and pleats. */
  taken: Length;
}

export interface PiecesGirth {
  /** What the seams and darts that are changed add all round. */
  change: ExactLength;
  /** The finished girth, with that. */
  girth: ExactLength;
}

/**
 * Finished girth wanted: body + ease (common practice; the ranges of ease are in `ease.ts`).
 *
 * Problems: a body of nothing; so little ease that nothing is left.
 */
export function wantedGirth({ body, ease }: WantedInput): Outcome<ExactLength> {
  return answerUnless(mustBePositive('body', body), () => {
    if (body + ease > 0) return { ok: true, value: exactLength(body + ease) };
    return refused({ kind: 'not-over', field: 'ease', over: exactLength(-body), given: ease });
  });
}

/**
 * Finished girth that pieces give: their widths less allowances and what is lapped or taken up, and of each
 * seam sewn further out twice that (both its edges), of each dart what it takes up less (derived here).
 *
 * Problems: pieces of nothing, allowances that leave nothing, no whole number of seams or darts, seams or
 * darts that take all there is.
 */
export function piecesGirth(input: PiecesInput): Outcome<PiecesGirth> {
  return answerUnless(piecesProblems(input), () => {
    const { pieces, allowances, taken, seams = 0, edge = 0, darts = 0, dart = 0 } = input;
    const change = exactLength(2 * seams * edge + darts * dart);
    const girth = exactLength(pieces - allowances - taken + change);
    if (girth > 0) return { ok: true, value: { change, girth } };
    const without = exactLength(allowances + taken - change);
    return refused({ kind: 'not-over', field: 'pieces', over: without, given: pieces });
  });
}

/** Each edge of n seams by half of an n-th of a change of girth (derived here). Problems: no whole number of seams. */
export function onEachEdge(change: ExactLength, seams: number): Outcome<ExactLength> {
  return answerUnless(mustBeCount('seams', seams, 1, MOST_SEAMS), () => ({
    ok: true,
    value: exactLength(change / (2 * seams)),
  }));
}

/** Each of n darts by an n-th of a change of girth (derived here). Problems: no whole number of darts. */
export function inEachDart(change: ExactLength, darts: number): Outcome<ExactLength> {
  return answerUnless(mustBeCount('darts', darts, 1, MOST_SEAMS), () => ({
    ok: true,
    value: exactLength(change / darts),
  }));
}

/** How far from the body a garment stands if its ease lies evenly all round: ease ÷ 2π (derived here). */
export function clearance(ease: ExactLength): ExactLength {
  return exactLength(ease / (2 * Math.PI));
}

function piecesProblems({ pieces, allowances, taken, seams, darts }: PiecesInput): Problem[] {
  return [
    ...mustBePositive('pieces', pieces),
    ...mustNotBeNegative('allowances', allowances),
    ...mustNotBeNegative('taken', taken),
    ...(seams === undefined ? [] : mustBeCount('seams', seams, 1, MOST_SEAMS)),
    ...(darts === undefined ? [] : mustBeCount('darts', darts, 1, MOST_SEAMS)),
  ];
}
