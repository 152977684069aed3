import {
  type ExactLength,
  exactLength,
  type Length,
  length,
  settled,
  UNITS_PER_MM,
} from '../../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';

/** One piece, its sides square to the line they are measured from. */
export interface SlantedPiece {
  /** Finished, along one side and along the other. */
  one: Length;
  other: Length;
  /** To the raw edge, where the cloth is there already. */
  there?: { one: Length; other: Length } | undefined;
}

export interface SlantedHemInput {
  /** One, or a pair whose hems are to be as deep. */
  pieces: readonly SlantedPiece[];
  /** From side to side, square. */
  across: Length;
  /** How deep it is to be; left out where it takes the cloth that is there. */
  depth?: Length | undefined;
  /** The first turn; nothing where it is turned once. */
  turn: Length | 'equal';
}

/** A piece with the hem it gets. */
export interface Slanted {
  /** Of the hem line off square, in radians. */
  angle: number;
  /** Along the hem line. */
  along: ExactLength;
  /** From hem line to raw edge, along either side. */
  below: ExactLength;
  /** To the raw edge, along one side and along the other. */
  cut: { one: ExactLength; other: ExactLength };
  /** What of the cloth that is there is over. */
  trims: { one: ExactLength; other: ExactLength } | undefined;
  /**
   * Where the sides of the allowance turn at the inner fold (the raw edge of a single turn): so far
   * out beside the shorter side and in beside the longer one, so far down from the hem line.
   */
  mirror: { aside: ExactLength; down: ExactLength };
}

export interface SlantedHem {
  /** Square to the hem line. */
  depth: Length;
  turn: Length;
  /** Both together. */
  allowance: Length;
  pieces: readonly Slanted[];
}

/** A thousandth of a millimetre. */
const FINEST = UNITS_PER_MM / 1000;

/** Which fields of which piece, in their order. */
const FIELDS = [
  { one: 'one', other: 'other', there: { one: 'thereOne', other: 'thereOther' } },
  {
    one: 'secondOne',
    other: 'secondOther',
    there: { one: 'secondThereOne', other: 'secondThereOther' },
  },
] as const;

/**
 * A hem line that runs off square by σ = atan(difference of the sides ÷ across). What is turned up on it
 * is the mirror of what it lies on: at depth D its side ends 2D·sin σ beside the piece's own, out at the
 * shorter side and in at the longer, D·cos 2σ ÷ cos σ down from the hem line. What a first turn turns in is mirrored
 * once more and runs straight on. The raw edge lies A ÷ cos σ below the hem line along each side
 * (A = depth and turn).
 *
 * From the cloth that is there, both pieces of a pair get the depth that the shortest of it allows: the
 * least of cloth below × cos σ, less the turn; of an equal turn half, down to a whole unit. Geometry,
 * derived here; that a hem's depth is what is there less its turn: `sources/hems.ts`.
 *
 * Problems: a length of nothing, sides that differ as much as they are apart or more (the mirror would lie
 * above the hem line), no cloth below a hem line, a first turn that leaves nothing or is deeper than the
 * hem, a hem deeper than its piece is long.
 */
export function slantedHem(input: SlantedHemInput): Outcome<SlantedHem> {
  return answerUnless(alone(input), () => {
    const { pieces, across, turn } = input;
    const angles = pieces.map((piece) => Math.atan(dropOf(piece) / across));
    const most = mostBelow(pieces, angles);
    const taken = depthOf(input, most);
    if (!taken.ok) return taken;
    const depth = taken.value;
    const first = turn === 'equal' ? depth : turn;
    return answerUnless(deepProblems(input, depth, first, most), () => {
      const allowance = length(depth + first);
      const each = pieces.map((piece, i) =>
        slanted(piece, angles[i] ?? 0, across, depth, allowance),
      );
      return { ok: true, value: { depth, turn: first, allowance, pieces: each } };
    });
  });
}

/** By how much one side is longer than the other. */
function dropOf({ one, other }: SlantedPiece): number {
  return Math.abs(other - one);
}

function slanted(
  { one, other, there }: SlantedPiece,
  angle: number,
  across: Length,
  depth: Length,
  allowance: Length,
): Slanted {
  const below = exactLength(allowance / Math.cos(angle));
  return {
    angle,
    along: exactLength(across / Math.cos(angle)),
    below,
    cut: { one: exactLength(one + below), other: exactLength(other + below) },
    trims: there && {
      one: overOf(there.one - one - below),
      other: overOf(there.other - other - below),
    },
    mirror: {
      aside: exactLength(2 * depth * Math.sin(angle)),
      down: exactLength((depth * Math.cos(2 * angle)) / Math.cos(angle)),
    },
  };
}

/** What is over; a share of a unit, as the depth is rounded down to one, is nothing. */
function overOf(units: number): ExactLength {
  return exactLength(units < FINEST ? 0 : units);
}

/** The most there is to turn up, square to the hem line, of all pieces; undefined where none is there yet. */
function mostBelow(
  pieces: readonly SlantedPiece[],
  angles: readonly number[],
): ExactLength | undefined {
  const each = pieces.flatMap(({ one, other, there }, i) =>
    there ? [Math.min(there.one - one, there.other - other) * Math.cos(angles[i] ?? 0)] : [],
  );
  return each.length === 0 ? undefined : exactLength(Math.min(...each));
}

function depthOf({ depth, turn }: SlantedHemInput, most: ExactLength | undefined): Outcome<Length> {
  if (depth !== undefined) return { ok: true, value: depth };
  if (most === undefined) throw new Error('neither a depth nor cloth to take it of');
  const whole = Math.floor(settled(exactLength(turn === 'equal' ? most / 2 : most - turn)));
  if (whole > 0) return { ok: true, value: length(whole) };
  // Where no turn takes it, there is hardly a unit of cloth.
  if (turn === 'equal' || turn === 0) {
    return refused({ kind: 'not-positive', field: 'thereOne', given: length(0) });
  }
  return refused({ kind: 'not-under', field: 'turn', under: most, given: turn });
}

function alone({ pieces, across, depth, turn }: SlantedHemInput): Problem[] {
  const lengths = [
    ...pieces.flatMap(({ one, other }, i) => [
      ...mustBePositive(fieldsOf(i).one, one),
      ...mustBePositive(fieldsOf(i).other, other),
    ]),
    ...mustBePositive('across', across),
    ...(depth === undefined ? [] : mustBePositive('depth', depth)),
    ...(turn === 'equal' ? [] : mustNotBeNegative('turn', turn)),
  ];
  if (lengths.length > 0) return lengths;
  return pieces.flatMap((piece, i) => [...steepProblems(piece, across, i), ...bare(piece, i)]);
}

function fieldsOf(i: number) {
  return FIELDS[i === 0 ? 0 : 1];
}

function steepProblems(piece: SlantedPiece, across: Length, i: number): Problem[] {
  if (dropOf(piece) < across) return [];
  const { one, other } = piece;
  const [field, given, shorter] =
    other > one ? (['other', other, one] as const) : (['one', one, other] as const);
  const under = exactLength(shorter + across);
  return [{ kind: 'not-under', field: fieldsOf(i)[field], under, given }];
}

/** A raw edge that lies above the hem line, or on it. */
function bare({ one, other, there }: SlantedPiece, i: number): Problem[] {
  if (!there) return [];
  const names = fieldsOf(i).there;
  return [...notOver(names.one, one, there.one), ...notOver(names.other, other, there.other)];
}

function notOver(field: string, over: Length, given: Length): Problem[] {
  return given > over ? mustBePositive(field, given) : [{ kind: 'not-over', field, over, given }];
}

function deepProblems(
  { pieces, depth: asked }: SlantedHemInput,
  depth: Length,
  first: Length,
  most: ExactLength | undefined,
): Problem[] {
  if (first > depth) {
    // Of the cloth that is there a smaller turn leaves a deeper hem.
    const least = most === undefined ? depth : exactLength(most / 2);
    return [{ kind: 'too-long', field: 'turn', most: least, given: first }];
  }
  const [shortest, field] = shortestOf(pieces);
  if (depth <= shortest) return [];
  return asked === undefined
    ? [{ kind: 'too-short', field, least: depth, given: shortest }]
    : [{ kind: 'too-long', field: 'depth', most: shortest, given: depth }];
}

/** The shortest of all sides, with its field. */
function shortestOf(pieces: readonly SlantedPiece[]): readonly [Length, string] {
  const sides = pieces.flatMap(({ one, other }, i) => [
    [one, fieldsOf(i).one] as const,
    [other, fieldsOf(i).other] as const,
  ]);
  return sides.reduce((least, side) => (side[0] < least[0] ? side : least));
}
