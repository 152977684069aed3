/** What was asked of a piece: a length of it, or one of its points, sides or allowances. */
export type PieceField =
  | 'length'
  | 'width'
  | 'start'
  | 'end'
  | 'x'
  | 'y'
  /** How far a side bows out. */
  | 'rise'
  | 'allowance';

/**
 * Why there is no piece, with its facts; its sentence is in the words. Lengths in millimetres.
 * `at` is the point, or the side, counted from 0; a side goes from the point of its number to the next.
 *
 * - `not-a-number`: what was given is none.
 * - `out-of-range`: below the least or over the most that a piece can be.
 * - `too-few`, `too-many`: so many corners make no outline, or one too fine to be laid.
 * - `no-area`: the corners lie along one line, or nearly.
 * - `crosses`: two sides meet, or one runs back over another, at that place.
 * - `too-round`: a side that bows by more than half a circle would.
 * - `no-fold`: a piece on the fold without a straight side along its lowest edge.
 */
export type PieceProblem =
  | { kind: 'not-a-number'; field: PieceField; at?: number }
  | {
      kind: 'out-of-range';
      field: PieceField;
      at?: number;
      mm: number;
      least: number;
      most: number;
    }
  | { kind: 'too-few'; points: number; least: number }
  | { kind: 'too-many'; points: number; most: number }
  | { kind: 'no-area'; mm2: number; least: number }
  | { kind: 'crosses'; side: number; other: number; x: number; y: number }
  | { kind: 'too-round'; at: number; mm: number; most: number }
  | { kind: 'no-fold' };

/** A piece, or every reason why there is none. */
export type PieceOutcome<Value> =
  | { ok: true; value: Value }
  | { ok: false; problems: readonly [PieceProblem, ...PieceProblem[]] };

/** The answer when nothing is wrong, otherwise every reason why there is none. */
export function pieceUnless<Value>(
  problems: readonly PieceProblem[],
  answer: () => PieceOutcome<Value>,
): PieceOutcome<Value> {
  const [first, ...more] = problems;
  return first ? { ok: false, problems: [first, ...more] } : answer();
}

/** The least and the most a piece may measure, in mm: what scissors can cut, and a bolt of cloth. */
export const LEAST_MM = 1;
export const MOST_MM = 50_000;

/** What is wrong with a length that must be between two others. */
export function outOfRange(
  mm: number,
  field: PieceField,
  { least = LEAST_MM, most = MOST_MM, at }: { least?: number; most?: number; at?: number } = {},
): PieceProblem[] {
  const where = at === undefined ? {} : { at };
  if (!Number.isFinite(mm)) return [{ kind: 'not-a-number', field, ...where }];
  if (mm >= least && mm <= most) return [];
  return [{ kind: 'out-of-range', field, ...where, mm, least, most }];
}
