import { edgingWords as words } from '#words/calculations/edging-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Line } from '../../calculation/calculation.ts';
import { onTape } from '../../calculation/tape-text.ts';
import type { StripHoles } from '../../sewing/edging/strip.ts';
import { stripJoins } from '../../sewing/edging/strip-joined.ts';
import type { EdgingInput } from './strip.ts';

/** Where a strip is joined, said; nothing where no pieces are given. */
export function joinLine(
  { strip, stock, crossings }: EdgingInput,
  { rows }: StripHoles,
  bench: Bench,
): { lines: Line[]; warnings: string[] } {
  if (stock === undefined) return { lines: [], warnings: [] };
  const found = stripJoins(strip, rows, stock, crossings);
  if (!found) return { lines: [], warnings: [words.noJoins] };
  const at = found.at.map((place) => onTape(place, bench)).join('; ');
  const value = found.pieces === 1 ? words.onePiece : words.pieces(found.pieces, at);
  return { lines: [{ label: words.joins, value }], warnings: found.thin ? [words.thinJoin] : [] };
}
