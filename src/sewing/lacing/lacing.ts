import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import type { HolePlace } from '../hole-place.ts';
import { holeRun } from '../hole-run.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';
import type { Run } from '../run.ts';
import { lacingProblems } from './lacing-checks.ts';
import { doubtsOf, type LacingDoubt } from './lacing-doubts.ts';
import { middleStart, otherFace } from './lacing-halves.ts';
import type { LacingInput } from './lacing-input.ts';
import { type Strand, strandsOf } from './lacing-kinds.ts';
import { added, partsOfPitch, partsOfRow } from './lacing-parts.ts';
import { type Face, type PathParts, pathOf } from './lacing-repeat.ts';
import { type ToCut, toCut } from './lacing-to-cut.ts';

export interface Laced extends ToCut {
  strands: readonly Strand[];
  /** Lace from hole to hole, by geometry. */
  perPitch: ExactLength;
  /** First to last hole. */
  edge: Length;
  /** All of the way but the tails: straight parts, passes and turns. */
  parts: PathParts;
  /** Taken by each turn. */
  extra: ExactLength;
  /** Both tails. */
  tails: Length;
  middle: FromMiddle | undefined;
  pieces: number;
  /** Each piece, all alike, without what a splice laps. */
  each: ExactLength;
  /** The faces the two ends of the lace hang out of, where it is one strand from one end. */
  ends?: readonly [Face, Face] | undefined;
  doubts: readonly LacingDoubt[];
  run: Run;
}

/** A lace worked from the middle of the row; lengths to the first hole and to the last. */
export interface FromMiddle {
  /** Where both halves begin. */
  at: HolePlace;
  /** Where that is between two holes, the face on which the lace goes from one to the other. */
  face: Face | undefined;
  /** Each half, with its tail. */
  halves: readonly [ExactLength, ExactLength];
  /** What of the first piece goes to each side: all of the halves where it is the only one. */
  first: readonly [ExactLength, ExactLength];
}

/** Shorter pieces than so many repeats are hardly more than splices. Ours, no source. */
const LEAST_REPEATS = 4;

/**
 * How much lace a row of holes takes (derived here): all straight parts, the thickness
 * for each pass from face to face, the way round a flat lace for each turn, and the tails;
 * or what is published, where that is more (`toCut`). Pieces and halves are shares of
 * what is cut.
 *
 * The lace passes through the first hole before its first stitch, and through the last
 * after its last one: n holes are n passes and n − 1 stitches.
 */
export function lace(input: LacingInput): Outcome<Laced> {
  return answerUnless(lacingProblems(input), () => {
    const value = laced(input);
    return answerUnless(piecesProblems(input, value), () => ({ ok: true, value }));
  });
}

function piecesProblems({ longest }: LacingInput, found: Laced): Problem[] {
  const { pieces, perPitch, strands, total, geometry } = found;
  const repeat = perPitch * (strands[0]?.repeat.advance ?? 1);
  const least = exactLength((LEAST_REPEATS * repeat * total) / geometry);
  return pieces > 1 && longest < least
    ? [{ kind: 'too-short', field: 'longest', least, given: longest }]
    : [];
}

function laced(input: LacingInput): Laced {
  const { kind, holes, pitch, thickness, tail } = input;
  const strands = strandsOf(kind, input);
  // Over a flat lace and back under it; its own thickness is left out.
  const extra = exactLength(2 * (input.lace ?? input.margin));
  const lengthOf = ({ straight, passes, turns }: PathParts) =>
    exactLength(straight + passes * thickness + turns * extra);
  const { begun, ways } = partsOfRow(input, strands);
  const parts = added([begun, ...ways]);
  const way = lengthOf(parts);
  const tails = (2 * tail) as Length;
  const edge = ((holes - 1) * pitch) as Length;
  const cut = toCut({ kind, way, through: thickness, edge, tails });
  const pieces = piecesOf(input, cut.total);
  const each = exactLength(cut.total / pieces);
  const share = (cut.total - tails) / way;
  const halves = ways.map((one) =>
    exactLength(share * (lengthOf(begun) / 2 + lengthOf(one)) + tail),
  );
  return {
    ...cut,
    strands,
    perPitch: exactLength(
      strands.reduce((all, strand) => all + lengthOf(partsOfPitch(strand, pitch)), 0),
    ),
    edge,
    parts,
    extra,
    tails,
    middle: middleOf(input, strands, halves, exactLength(((pieces - 1) / 2) * each)),
    pieces,
    each,
    ends: middleStart(input) ? undefined : endsOf(strands, holes - 1),
    doubts: doubtsOf(input, strands, cut),
    run: holeRun(holes, pitch),
  };
}

/** Alike, and none longer than asked. From the middle one lies over it, so that their count is odd. */
function piecesOf(input: LacingInput, total: ExactLength): number {
  const least = total / input.longest;
  return middleStart(input) ? 1 + 2 * Math.ceil((least - 1) / 2) : Math.ceil(least);
}

/** @param spliced what of each half is in further pieces */
function middleOf(
  input: LacingInput,
  [strand]: readonly Strand[],
  [toFirst, toLast]: readonly ExactLength[],
  spliced: ExactLength,
): FromMiddle | undefined {
  const start = middleStart(input);
  const begin = strand?.repeat.points[0];
  if (!start || !begin || toFirst === undefined || toLast === undefined) return undefined;
  const between = start.left !== start.right;
  return {
    at: { hole: start.left + 1, beyond: between ? 0.5 : 0 },
    face: between ? otherFace(begin.face) : undefined,
    halves: [toFirst, toLast],
    first: [exactLength(toFirst - spliced), exactLength(toLast - spliced)],
  };
}

function endsOf(strands: readonly Strand[], stitches: number): Laced['ends'] {
  const [strand, second] = strands;
  const path = strand && !second ? pathOf(strand.repeat, stitches) : [];
  const [first, last] = [path[0], path.at(-1)];
  return first && last && [otherFace(first.face), last.face];
}
