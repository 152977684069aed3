import { boxOf, type Outline, type Point, signedArea, tidied } from '../outline.ts';
import { cornerFill, type Way } from './allowance-corner.ts';
import { foldProblems } from './on-fold.ts';
import type { SidedOutline } from './piece-outline.ts';
import { outOfRange, type PieceOutcome, pieceUnless } from './piece-problem.ts';
import { together } from './together.ts';

/** The widest an allowance may be, in mm: a deep hem several times over. */
const MOST_ALLOWANCE = 500;

/**
 * The cut outline of a piece: around the sewn one, each side's allowance beside it. Neighbours meet
 * in a mitred corner; where they differ so that a mitre would cut into the wider of them, that ends
 * square. What allowances close in between is part of the piece.
 * @param allowances one for each side, in mm, 0 or more
 * @param onFold nothing is added below the lowest edge, which lies on the fold
 * @returns the corners, each within 0.002 mm
 */
export function withAllowances(
  piece: SidedOutline,
  allowances: readonly number[],
  onFold = false,
): PieceOutcome<Outline> {
  const problems = [
    ...[...new Set(piece.sides)]
      .sort((a, b) => a - b)
      .flatMap((at) =>
        // What isn't said is no allowance of 0.
        outOfRange(allowances[at] ?? Number.NaN, 'allowance', {
          at,
          least: 0,
          most: MOST_ALLOWANCE,
        }),
      ),
    ...(onFold ? foldProblems(piece.outline) : []),
  ];
  return pieceUnless(problems, () => ({ ok: true, value: offset(piece, allowances, onFold) }));
}

function offset(piece: SidedOutline, allowances: readonly number[], onFold: boolean): Outline {
  const { outline } = piece;
  const ways = outline.map((from, i) => {
    const to = outline[(i + 1) % outline.length]!;
    return wayOf(from, to, allowances[piece.sides[i]!]!);
  });
  const strips = ways.filter(({ wide }) => wide > 0).map(stripOf);
  const corners = ways.flatMap((way, i) => cornerFill(ways.at(i - 1)!, way));
  const { y0 } = boxOf(outline);
  const parts = together([outline, ...strips, ...corners], onFold ? y0 : undefined);
  const outer = parts.reduce((most, one) => (signedArea(one) > signedArea(most) ? one : most));
  return tidied(outer);
}

function wayOf(from: Point, to: Point, wide: number): Way {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  return { from, to, u: [dx / length, dy / length], length, wide };
}

function stripOf({ from, to, u: [ux, uy], wide }: Way): Outline {
  const [x, y] = [uy * wide, -ux * wide];
  return [from, [from[0] + x, from[1] + y], [to[0] + x, to[1] + y], to];
}
