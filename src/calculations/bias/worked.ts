import { needed } from '../../calculation/needed.ts';
import { type ExactLength, exactLength, type Length, length, ZERO } from '../../lengths/length.ts';
import { type Bias, biasFor, biasFrom, joinTakes } from '../../sewing/cloth/bias.ts';
import {
  areaForRound,
  areaGivesRound,
  type Round,
  roundFrom,
  roundLong,
  singleFor,
  singleFrom,
  squareFor,
} from '../../sewing/cloth/bias-round.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { type BiasAsked, hasPiece } from './fields.ts';

/** A piece of cloth, and what is cut from it. */
export interface Worked {
  /** Along the selvedge, and from one to the other; of a square both its side. */
  piece: ExactLength;
  wide: ExactLength;
  /** Joined, from end to end. */
  long: ExactLength;
  joins: number;
  strips: Bias | undefined;
  round: Round | undefined;
}

/** What is asked for: the cloth first, then what it gives. */
export function biasOf(asked: BiasAsked): Outcome<Worked> {
  const found = workedOf(asked);
  const { need } = asked;
  if (need === undefined) return found;
  // A piece for what is needed reaches it to a unit: it is not said to give less.
  return mapped(found, (worked) => ({ ...worked, long: exactLength(Math.max(worked.long, need)) }));
}

function workedOf(asked: BiasAsked): Outcome<Worked> {
  if (asked.from === 'strips') return stripsOf(asked);
  return asked.from === 'round' ? roundOf(asked) : singleOf(asked);
}

/** What strips are worked out from. */
export function stripsInput({ width, cloth, shortest, seam }: BiasAsked) {
  return { width, ...needed({ cloth, shortest, seam }) };
}

function stripsOf(asked: BiasAsked): Outcome<Worked> {
  const input = stripsInput(asked);
  const piece = !hasPiece(asked)
    ? biasFor(input, needed({ need: asked.need }).need)
    : ({ ok: true, value: needed({ long: asked.long }).long } as const);
  if (!piece.ok) return piece;
  return mapped(biasFrom(input, piece.value), (strips) => ({
    piece: piece.value,
    wide: input.cloth,
    ...{ long: strips.long, joins: strips.joins, strips, round: undefined },
  }));
}

function roundOf(asked: BiasAsked): Outcome<Worked> {
  const input = { width: asked.width, ...needed({ seam: asked.seam }) };
  const sides = sidesOf(asked, input);
  if (!sides.ok) return sides;
  const [piece, wide] = sides.value;
  return mapped(roundFrom(input, piece, wide), (round) => ({
    ...{ piece, wide, long: round.long, joins: round.joins, strips: undefined, round },
  }));
}

/** As given, or the square's, up to a whole unit. */
function sidesOf(
  asked: BiasAsked,
  input: { width: Length; seam: Length },
): Outcome<readonly [Length, Length]> {
  if (!hasPiece(asked)) {
    const square = squareFor(input, needed({ need: asked.need }).need);
    return mapped(square, (side) => [length(Math.ceil(side)), length(Math.ceil(side))] as const);
  }
  const sides = needed({ long: asked.long, short: asked.sideShort });
  return { ok: true, value: [sides.long, sides.short] };
}

function singleOf(asked: BiasAsked): Outcome<Worked> {
  const { width } = asked;
  const one = (side: ExactLength, long: ExactLength): Worked => ({
    ...{ piece: side, wide: side, long, joins: 0, strips: undefined, round: undefined },
  });
  if (!hasPiece(asked)) {
    const { need } = needed({ need: asked.need });
    return mapped(singleFor(width, need), (side) => one(side, need));
  }
  const { side } = needed({ side: asked.long });
  return mapped(singleFrom(width, side), (long) => one(side, long));
}

/** What the area alone promises of one from a tube: its length, or the side of a square. */
export function areaOfRound({ width, need }: BiasAsked, { piece, wide }: Worked): ExactLength {
  return need === undefined ? areaGivesRound(width, piece, wide) : areaForRound(width, need);
}

/** How long the strip comes out where its joins were sewn otherwise. */
export function longBy(asked: BiasAsked, worked: Worked, sewn: ExactLength): ExactLength {
  const { strips, round, wide, piece, long } = worked;
  if (strips) {
    const less = joinTakes(exactLength(sewn - (asked.seam ?? ZERO)));
    return exactLength(Math.max(0, long - strips.joins * less));
  }
  return round ? roundLong(round.rounds, exactLength(Math.min(piece, wide)), sewn) : long;
}
