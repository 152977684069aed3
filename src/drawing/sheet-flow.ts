import type { Piece } from './sheet-job.ts';

/** Room between the two columns, in mm. */
const BETWEEN = 6;

/** How wide one of two columns is. @param across both and what is between, in mm */
export function columnOf(across: number): number {
  return (across - BETWEEN) / 2;
}

/** A piece on its page: from the left edge or in the right column, and how far under the head; in mm. */
export interface PlacedPiece {
  piece: Piece;
  column: 0 | 1;
  down: number;
}

/**
 * Pieces on pages, in order: what is kept with the next comes on its page, where there is room on
 * any; narrow ones after each other fill one column and then the other, both as high as each other
 * where that can be.
 */
export function onPages(
  pieces: readonly Piece[],
  roomOn: (page: number) => number,
): PlacedPiece[][] {
  const kept = laid(pieces, roomOn);
  const parted = laid(
    pieces.map(({ keep, ...piece }) => (keep === true ? { ...piece, keep } : piece)),
    roomOn,
  );
  return parted.length < kept.length ? parted : kept;
}

function laid(pieces: readonly Piece[], roomOn: (page: number) => number): PlacedPiece[][] {
  const pages: PlacedPiece[][] = [[]];
  let down = 0;
  for (let at = 0; at < pieces.length; ) {
    if (down > 0 && down + highOf(pieces, at) > roomOn(pages.length - 1)) {
      pages.push([]);
      down = 0;
    }
    const columns = nextColumns(pieces, at, roomOn(pages.length - 1) - down);
    for (const [column, all] of columns.entries()) {
      let under = down;
      for (const piece of all) {
        pages.at(-1)?.push({ piece, column: column === 0 ? 0 : 1, down: under });
        under += piece.high;
      }
    }
    down += Math.max(...columns.map(heightOf));
    at += columns.flat().length;
  }
  return pages;
}

/** What is set next: one wide piece, or as many narrow ones as there is room for; at least one. */
function nextColumns(pieces: readonly Piece[], at: number, room: number): readonly Piece[][] {
  const end = pieces.findIndex(({ narrow }, i) => i >= at && !narrow);
  const run = pieces.slice(at, end < 0 ? pieces.length : end);
  if (run.length === 0) return [pieces.slice(at, at + 1)];
  const even = evenly(run);
  if (Math.max(...even.map(heightOf)) <= room) return even;
  const first = Math.max(1, manyIn(run, room));
  const rest = run.slice(first);
  return [run.slice(0, first), rest.slice(0, manyIn(rest, room))];
}

/** In two columns, the higher of which is as low as can be. */
function evenly(run: readonly Piece[]): readonly Piece[][] {
  const ways = run.map((_, i) => [run.slice(0, i + 1), run.slice(i + 1)]);
  const high = (way: readonly Piece[][]) => Math.max(...way.map(heightOf));
  return ways.reduce((best, way) => (high(way) < high(best) ? way : best));
}

function manyIn(run: readonly Piece[], room: number): number {
  let high = 0;
  const over = run.findIndex((piece) => {
    high += piece.high;
    return high > room;
  });
  return over < 0 ? run.length : over;
}

function heightOf(pieces: readonly Piece[]): number {
  return pieces.reduce((high, piece) => high + piece.high, 0);
}

/** How high a piece is with all that it is kept with. */
function highOf(pieces: readonly Piece[], i: number): number {
  let high = 0;
  let last = i;
  while (pieces[last]?.keep) high += pieces[last++]?.high ?? 0;
  return high + (pieces[last]?.high ?? 0);
}
