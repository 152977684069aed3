import { type ExactLength, exactLength, type Length, settled } from '../../lengths/length.ts';
import { mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, mapped, type Outcome, refused } from '../problem.ts';
import type { Edge } from './piece-edges.ts';
import {
  angleProblems,
  beyondOf,
  isUpright,
  type PieceInput,
  sizeProblems,
  type Way,
  wayProblems,
} from './piece-input.ts';
import { cosineOf, crossed, type Middle, outlineOf, rawMiddle, sineOf } from './piece-outline.ts';
import { slantTakes } from './piece-slants.ts';

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
  /** The cut piece opened, where it is widest and along the grain in all; undefined where that can't be known. */
  widest: ExactLength | undefined;
  longest: ExactLength | undefined;
}

/**
 * A piece cut from its finished size: cut = (finished + what its edges take) ÷ (1 − what the cloth
 * loses), on the fold (half of it + what the far edge takes) ÷ (1 − loss). A side that meets the bottom at φ
 * takes a ÷ sin φ along it; an edge may add to the other way, or to none. The raw corner lies (a₂ + a₁ × cos φ) ÷ sin φ beyond the finished one
 * along edge 1 (derived here). Turned round: finished = cut × (1 − loss) − what the edges take.
 *
 * An edge that slants by so much over so much takes a ÷ cos of that of the other way.
 *
 * Problems: no size, one of nothing, an allowance of less, sides too flat or meeting below the top,
 * an edge that slants by half a right angle or more, edges that cross,
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
      const both = across.value && along.value;
      const widest = (isUpright(input) ? across.value : both) && widestOf(input);
      if (widest?.ok === false) return widest;
      const longest = (isLevel(input) ? along.value : both) && longestOf(input);
      if (longest?.ok === false) return longest;
      const corner = cornerOf(input);
      const ways = { across: across.value, along: along.value };
      return {
        ok: true,
        value: { ...ways, corner, widest: widest?.value, longest: longest?.value },
      };
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
  const { slants } = input;
  if (slants) {
    const taken = (edge: Edge, all: number) => all * slantTakes(slants[edge]);
    if (way === 'length') {
      return settled(exactLength(taken('top', top) + taken('bottom', bottom)));
    }
    const far = input.fold ? 0 : taken('other', other);
    return settled(exactLength(taken('side', side) + far));
  }
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

/** Whether top and bottom are level. */
export function isLevel({ slants }: Pick<PieceInput, 'slants'>): boolean {
  return !slants?.top?.by && !slants?.bottom?.by;
}

/**
 * The cut piece from its highest to its lowest place, along the grain.
 *
 * @throws an Error where it has no length, or a slanted top or bottom and no width
 */
export function longestOf(input: PieceInput): Outcome<ExactLength> {
  const along = sizedAlong(input, 'length');
  if (!along.ok || isLevel(input)) return mapped(along, ({ cut }) => cut);
  const across = sizedAlong(input, 'width');
  if (!across.ok) return across;
  return spanned(input, { wide: across.value.gives, long: along.value.gives }, 'y');
}

/** How far the cut outline reaches one way, before the cloth loses anything. */
function spanned(input: PieceInput, middle: Middle, way: 'x' | 'y'): Outcome<ExactLength> {
  const problem = crossed(input, middle);
  if (problem) return refused(problem);
  const corners = outlineOf(input, middle.wide, middle.long).cut.map((corner) => corner[way]);
  // On the fold its highest place may be there.
  const places = way === 'x' ? corners : [...corners, ...rawMiddle(input, middle.long)];
  const { across, along } = input.shrinks;
  const kept = (100 - (way === 'x' ? across : along)) / 100;
  const reach = Math.max(...places) - Math.min(...places);
  return { ok: true, value: exactLength(reach / kept) };
}

/**
 * The cut piece opened, where it is widest: at its raw bottom or top. Sides that meet below the top
 * are refused.
 *
 * @throws an Error where it has no width, or slanted sides and no length
 */
export function widestOf(input: PieceInput): Outcome<ExactLength> {
  const across = sizedAlong(input, 'width');
  if (!across.ok || isUpright(input)) {
    return mapped(across, ({ cut, times }) => exactLength(times * cut));
  }
  const along = sizedAlong(input, 'length');
  if (!along.ok) return along;
  const [wide, long] = [across.value.gives, along.value.gives];
  if (input.slants) return spanned(input, { wide, long }, 'x');
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
