import type { Bench } from '../../controls/bench.ts';
import type { Line } from '../../controls/calculation.ts';
import { onTape } from '../../controls/tape-text.ts';
import { exactLength } from '../../lengths/length.ts';
import type { StripHoles } from '../../sewing/strip-holes.ts';
import { joinsOf } from '../../sewing/strip-joins.ts';
import { edgingWords as words } from '../../words/edging-words.ts';
import type { EdgingInput } from './read.ts';

/** Where a strip is joined, said; nothing where no pieces are given. */
export function joinLine(
  { strip, stock, crossings }: EdgingInput,
  { rows }: StripHoles,
  bench: Bench,
): { lines: Line[]; warnings: string[] } {
  if (stock === undefined) return { lines: [], warnings: [] };
  const sides = [0, ...strip.corners];
  const holes = rows.flatMap(({ runs }) =>
    runs.flatMap(({ marks, length }, side) => {
      // A bent row is told by its own length; a join crosses all rows at one place of the strip.
      const stretch = strip.corners.length > 0 ? 1 : strip.length / length;
      return marks.map(({ at }) => exactLength((sides[side] ?? 0) + at * stretch));
    }),
  );
  const found = joinsOf({
    length: strip.length,
    stock,
    holes,
    hole: strip.hole,
    avoid: [...strip.corners, ...crossings],
    clear: strip.width,
  });
  if (!found) return { lines: [], warnings: [words.noJoins] };
  const at = found.at.map((place) => onTape(place, bench)).join('; ');
  const value = found.pieces === 1 ? words.onePiece : words.pieces(found.pieces, at);
  return { lines: [{ label: words.joins, value }], warnings: found.thin ? [words.thinJoin] : [] };
}
