import {
  type ExactLength,
  exactLength,
  type Length,
  LONGEST,
  length,
} from '../../lengths/length.ts';
import { mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';

/** The most strips or rounds that are cut from a piece. */
export const MOST_STRIPS = 500;
/** With √2 in it, a number is whole where it is to a unit. */
const NEAR = 1;

/** Strips across the bias of a rectangle, joined end to end. Lengths in 1/8000 mm. */
export interface BiasInput {
  width: Length;
  /** The cloth from selvedge to selvedge. */
  cloth: Length;
  /** The shortest strip that is used, along its shorter edge. */
  shortest: Length;
  /** Taken by each edge of a join. */
  seam: Length;
}

/** What a piece of cloth gives. */
export interface Bias {
  strips: number;
  joins: number;
  /** Joined, from end to end. */
  long: ExactLength;
  /** Where each line is from the corner, along one edge and on along the next, and so both ways round. */
  lines: readonly ExactLength[];
}

/** How far apart lines are along the selvedge: width × √2, at 45° (a table of 1916 has it to an eighth). */
export function alongSelvedge(width: ExactLength): ExactLength {
  return exactLength(width * Math.SQRT2);
}

/** What each join takes of a strip's length: its ends run at 45°, 2 × √2 × the seam (derived here). */
export function joinTakes(seam: ExactLength): ExactLength {
  return exactLength(2 * Math.SQRT2 * seam);
}

/**
 * Joined strips from a piece of the cloth's width B, cut x long: the first line is shortest ÷ √2 from
 * the corner along both edges, each other width × √2 further; at t from the corner a line is √2 ×
 * min(t, x, B, B + x − t) long, a strip counts by its shorter edge, and each join takes 2√2 seams
 * (derived here). Area alone (`areaFor`) promises more than can be cut whole.
 *
 * Problems: a width or cloth of nothing, less than nothing, strips as wide as the cloth, strips all of which go into
 * their joins, cloth narrower or a piece shorter than one strip takes, more than 500 strips.
 */
export function biasFrom(input: BiasInput, piece: Length): Outcome<Bias> {
  const problems = [...biasProblems(input), ...mustBePositive('long', piece)];
  return answerUnless(problems, () => {
    const least = leastPiece(input);
    if (piece < least - NEAR) {
      return refused({ kind: 'too-short', field: 'long', least, given: piece });
    }
    const narrow = exactLength((input.cloth + piece) / (MOST_STRIPS * Math.SQRT2));
    if (input.width < narrow) {
      return refused({ kind: 'too-close', field: 'width', least: narrow, most: MOST_STRIPS });
    }
    return { ok: true, value: cutFrom(input, piece) };
  });
}

/**
 * The shortest piece that gives so much strip, to a unit: what a piece gives never falls as it grows.
 *
 * Problems: those of `biasFrom`, nothing needed, more than 500 strips.
 */
export function biasFor(input: BiasInput, need: Length): Outcome<Length> {
  const problems = [...biasProblems(input), ...mustBePositive('need', need)];
  return answerUnless(problems, () => {
    const tooMany = manyProblem(input, need);
    if (tooMany) return refused(tooMany);
    const least = Math.max(1, Math.ceil(leastPiece(input) - NEAR));
    const reaches = (piece: number) => cutFrom(input, length(piece)).long >= need - NEAR;
    let [short, enough] = [least - 1, least];
    while (!reaches(enough) && enough < LONGEST) [short, enough] = [enough, 2 * enough];
    while (enough - short > 1) {
      const half = Math.floor((short + enough) / 2);
      if (reaches(half)) enough = half;
      else short = half;
    }
    return { ok: true, value: length(enough) };
  });
}

/** The piece by its area, (need × width + shortest² ÷ 2) ÷ cloth: never more than is really taken. */
export function areaFor({ width, cloth, shortest }: BiasInput, need: Length): ExactLength {
  return exactLength((need * width + (shortest * shortest) / 2) / cloth);
}

/** The strip by area of a piece, (cloth × piece − shortest² ÷ 2) ÷ width: never less than is really had. */
export function areaGives({ width, cloth, shortest }: BiasInput, piece: Length): ExactLength {
  return exactLength((cloth * piece - (shortest * shortest) / 2) / width);
}

function cutFrom(input: BiasInput, piece: Length): Bias {
  const { width, cloth, shortest, seam } = input;
  const [first, apart] = [shortest / Math.SQRT2, alongSelvedge(width)];
  const strips = Math.floor((cloth + piece - 2 * first + NEAR) / apart);
  const lines = Array.from({ length: strips + 1 }, (_, i) => exactLength(first + i * apart));
  const long = (at: number) => Math.SQRT2 * Math.min(at, piece, cloth, cloth + piece - at);
  const each = lines.slice(1).map((at, i) => Math.min(long(at), long(lines[i] ?? at)));
  const sum = each.reduce((all, one) => all + one, 0);
  const joined = exactLength(sum - (strips - 1) * joinTakes(seam));
  return { strips, joins: strips - 1, long: joined, lines };
}

/** The piece that just gives one strip. */
function leastPiece({ width, cloth, shortest }: BiasInput): ExactLength {
  const corners = Math.SQRT2 * shortest + alongSelvedge(width) - cloth;
  return exactLength(Math.max(shortest / Math.SQRT2, corners));
}

function biasProblems({ width, cloth, shortest, seam }: BiasInput): Problem[] {
  const alone = [
    ...mustBePositive('width', width),
    ...mustBePositive('cloth', cloth),
    ...mustNotBeNegative('shortest', shortest),
    ...mustNotBeNegative('seam', seam),
  ];
  if (alone.length > 0) return alone;
  if (width >= cloth) return [{ kind: 'not-under', field: 'width', under: cloth, given: width }];
  const least = joinTakes(seam);
  if (shortest < least) return [{ kind: 'too-short', field: 'shortest', least, given: shortest }];
  const wide = exactLength(shortest / Math.SQRT2);
  return cloth < wide ? [{ kind: 'too-short', field: 'cloth', least: wide, given: cloth }] : [];
}

/** Too many strips by the area, which a real piece never has fewer of. */
function manyProblem({ width, cloth }: BiasInput, need: Length): Problem | undefined {
  const room = MOST_STRIPS * Math.SQRT2 - need / cloth;
  if (room <= 0) {
    const most = exactLength(MOST_STRIPS * Math.SQRT2 * cloth);
    return { kind: 'too-long', field: 'need', most, given: need };
  }
  const least = exactLength(cloth / room);
  return width < least
    ? { kind: 'too-close', field: 'width', least, most: MOST_STRIPS }
    : undefined;
}
