import { type ExactLength, exactLength, type Length, settled } from '../lengths/length.ts';
import { mustNotBeNegative } from './length-checks.ts';
import {
  angleProblems,
  beyondOf,
  type PieceInput,
  sizeProblems,
  type Way,
  wayProblems,
} from './piece-input.ts';
import { answerUnless, mapped, type Outcome, refused } from './problem.ts';

/** One way of a piece: what the hand cuts, and what that gives finished. */
export interface Sized {
  cut: ExactLength;
  /** The whole of it, opened. */
  gives: ExactLength;
  /** What its edges take, of what the hand cuts. */
  takes: ExactLength;
  /** How often what is cut lies in the piece: on the fold twice. */
  times: 1 | 2;
  /** What it gives finished where it was cut at another size. */
  givenBy(cut: ExactLength): ExactLength;
}

export interface Piece {
  across: Sized | undefined;
  along: Sized | undefined;
  /** How far the raw corner lies beyond the finished one, along the bottom and along the side. */
  corner: { alongBottom: ExactLength; alongSide: ExactLength };
  /** The cut piece opened, where it is widest; undefined where that can't be known. */
  widest: ExactLength | undefined;
}

/**
 * A piece cut from its finished size: cut = (finished + what its edges take) ÷ (1 − what the cloth
 * loses), on the fold (half of it + what the far edge takes) ÷ (1 − loss). A side that meets the bottom at φ
 * takes a ÷ sin φ along it; an edge may add to the other way, or to none. The raw corner lies (a₂ + a₁ × cos φ) ÷ sin φ beyond the finished one
 * along edge 1 (derived here). Turned round: finished = cut × (1 − loss) − what the edges take.
 *
 * Problems: no size, one of nothing, an allowance of less, sides too flat or meeting below the top,
 * cloth that loses over half, a piece cut no larger than its edges take.
 */
export function piece(input: PieceInput): Outcome<Piece> {
  return answerUnless(
    [...sizeProblems(input), ...wayProblems(input, 'width'), ...wayProblems(input, 'length')],
    () => {
      const across = wayOf(input, 'width');
      const along = wayOf(input, 'length');
      if (!across.ok) return across;
      if (!along.ok) return along;
      const known = input.angle === 90 ? across.value : across.value && along.value;
      const widest = known && widestOf(input);
      if (widest?.ok === false) return widest;
      const corner = cornerOf(input);
      const ways = { across: across.value, along: along.value };
      return { ok: true, value: { ...ways, corner, widest: widest?.value } };
    },
  );
}

function wayOf(input: PieceInput, way: Way): Outcome<Sized | undefined> {
  return input[way] === undefined ? { ok: true, value: undefined } : sizedAlong(input, way);
}

/**
 * One way of a piece by itself, as `piece` has it.
 *
 * @throws an Error where that way has no size
 */
export function sizedAlong(input: PieceInput, way: Way): Outcome<Sized> {
  return answerUnless(wayProblems(input, way), (): Outcome<Sized> => {
    const size = input[way];
    if (size === undefined) throw new Error(`a piece without a ${way}`);
    const takes = takenOf(input, way);
    const lost = way === 'width' ? input.shrinks.across : input.shrinks.along;
    const times = way === 'width' && input.fold ? 2 : 1;
    const givenBy = (cut: ExactLength) =>
      settled(exactLength(times * ((cut * (100 - lost)) / 100 - takes)));
    if (input.given === 'finished') {
      const cut = settled(exactLength(((size / times + takes) * 100) / (100 - lost)));
      return { ok: true, value: { cut, gives: size, takes, times, givenBy } };
    }
    const gives = givenBy(size);
    if (gives > 0) return { ok: true, value: { cut: size, gives, takes, times, givenBy } };
    const room = exactLength((size * (100 - lost)) / 100);
    return refused({ kind: 'does-not-fit', field: way, room, needed: takes });
  });
}

/** What the edges of one way take of what the hand cuts. */
function takenOf(input: PieceInput, way: Way): ExactLength {
  const { top, bottom, side, other } = beyondOf(input);
  if (way === 'length') return exactLength(top + bottom);
  return settled(exactLength((input.fold ? side : side + other) / sineOf(input.angle)));
}

/** What the raw corner is worked out from. */
export type CornerInput = Pick<PieceInput, 'edges' | 'adds' | 'fold' | 'angle'>;

function cornerOf(input: CornerInput): Piece['corner'] {
  const { angle } = input;
  const { side, bottom } = beyondOf(input);
  const [sine, cosine] = [sineOf(angle), cosineOf(angle)];
  return {
    alongBottom: settled(exactLength((side + bottom * cosine) / sine)),
    alongSide: settled(exactLength((bottom + side * cosine) / sine)),
  };
}

/** The raw corner beside the finished one, as `piece` has it. Problems: an angle too flat, less than nothing. */
export function rawCorner(input: CornerInput): Outcome<Piece['corner']> {
  const problems = [
    ...mustNotBeNegative('side', input.edges.side),
    ...mustNotBeNegative('bottom', input.edges.bottom),
    ...angleProblems(input.angle),
  ];
  return answerUnless(problems, () => ({ ok: true, value: cornerOf(input) }));
}

/**
 * The cut piece opened, where it is widest: at its raw bottom or top. Sides that meet below the top
 * are refused.
 *
 * @throws an Error where it has no width, or slanted sides and no length
 */
export function widestOf(input: PieceInput): Outcome<ExactLength> {
  const across = sizedAlong(input, 'width');
  if (!across.ok || input.angle === 90) {
    return mapped(across, ({ cut, times }) => exactLength(times * cut));
  }
  const along = sizedAlong(input, 'length');
  if (!along.ok) return along;
  const [wide, long] = [across.value.gives, along.value.gives];
  const narrower = (2 * cosineOf(input.angle)) / sineOf(input.angle);
  if (long * narrower >= wide) {
    const over = long - wide / narrower;
    const size = input.length as Length;
    const most =
      input.given === 'finished' ? size - over : size - (100 * over) / (100 - input.shrinks.along);
    return refused({ kind: 'too-long', field: 'length', most: exactLength(most), given: size });
  }
  const xs = outlineOf(input, wide, long).cut.map(({ x }) => x);
  const kept = (100 - input.shrinks.across) / 100;
  return { ok: true, value: exactLength((Math.max(...xs) - Math.min(...xs)) / kept) };
}

/** A corner of an outline, in 1/8000 mm from the finished corner of bottom and side; y downwards. */
export interface Corner {
  x: number;
  y: number;
}

/**
 * The finished and the cut outline of a piece, opened, before the cloth loses anything; each from
 * the corner of bottom and side along the bottom.
 *
 * @param wide finished, where the bottom is
 */
export function outlineOf(
  input: Pick<PieceInput, 'edges' | 'adds' | 'angle' | 'fold'>,
  wide: ExactLength,
  long: ExactLength,
): { finished: Corner[]; cut: Corner[] } {
  const { angle } = input;
  const slant = cosineOf(angle) / sineOf(angle);
  const { top, bottom, side, other } = beyondOf(input);
  const at = (up: number, left: number, right: number): [Corner, Corner] => [
    { x: up * slant - left / sineOf(angle), y: -up },
    { x: wide - up * slant + right / sineOf(angle), y: -up },
  ];
  const round = (low: [Corner, Corner], high: [Corner, Corner]) => [...low, high[1], high[0]];
  return {
    finished: round(at(0, 0, 0), at(long, 0, 0)),
    cut: round(at(-bottom, side, other), at(long + top, side, other)),
  };
}

function sineOf(degrees: number): number {
  return Math.sin((degrees * Math.PI) / 180);
}

/** Of a right angle nothing at all, where the machine's cosine leaves a crumb. */
function cosineOf(degrees: number): number {
  return degrees === 90 ? 0 : Math.cos((degrees * Math.PI) / 180);
}
