import { mustBeCount } from '../../sewing/length-checks.ts';
import { type Piece, piece } from '../../sewing/pieces/piece.ts';
import type { PieceInput } from '../../sewing/pieces/piece-input.ts';
import { answerUnless, mapped, type Outcome } from '../../sewing/problem.ts';
import { type PieceAsked, pieceInput } from './fields.ts';

/** More of a kind are not cut for one garment. Ours. */
export const MOST_PIECES = 500;

/** Everything worked out about a piece. */
export interface PieceFound {
  asked: PieceAsked;
  input: PieceInput;
  plan: Piece;
}

/** The piece that is asked for, and how many. */
export function pieceOf(asked: PieceAsked): Outcome<PieceFound> {
  const input = pieceInput(asked);
  return answerUnless(mustBeCount('count', asked.count, 1, MOST_PIECES), () =>
    mapped(piece(input), (plan) => ({ asked, input, plan })),
  );
}
