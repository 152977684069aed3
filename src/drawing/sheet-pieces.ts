import { workPieces } from './sheet-drawing.ts';
import { columnOf } from './sheet-flow.ts';
import type { Piece, SheetBlock, SheetWords } from './sheet-job.ts';
import { materialPieces, pairPieces } from './sheet-pairs.ts';
import { type SheetRoom, stepPieces } from './sheet-steps.ts';
import { highOf, LETTERING, type Lettering, lettered, linesOf } from './sheet-text.ts';

/** Under what stands together, in mm. */
const AFTER = 1;
/** Over a heading. */
const ABOVE = 1.6;

/** A block of the sheet in parts that aren't broken. */
export function piecesOf(block: SheetBlock, room: SheetRoom, words: SheetWords): Piece[] {
  const { across } = room;
  switch (block.kind) {
    case 'heading':
      return [headingPiece(block.text, room)];
    case 'note':
      return [paragraph(block.text, across, block.loud ? LETTERING.loud : LETTERING.plain)];
    case 'pairs':
      return pairPieces(block.pairs, columnOf(across));
    case 'materials':
      return materialPieces(block.materials, columnOf(across));
    case 'step':
      return stepPieces(block, room, words);
    case 'works':
      return workPieces(block.works, room, words);
  }
}

function headingPiece(said: string, { across, dense }: SheetRoom): Piece {
  const kind = LETTERING.heading;
  const lines = linesOf(said, kind, across);
  const above = dense ? ABOVE / 4 : ABOVE;
  const high = above + highOf(lines.length, kind) + AFTER;
  return {
    high,
    keep: true,
    shapesAt: ({ x, y }) => lettered(lines, { x, y: y + above }, kind),
  };
}

function paragraph(said: string, across: number, kind: Lettering): Piece {
  const lines = linesOf(said, kind, across);
  return {
    high: lines.length * kind.line + AFTER / 2,
    shapesAt: (at) => lettered(lines, at, kind),
  };
}
