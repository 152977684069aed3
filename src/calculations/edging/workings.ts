import { edgingWords as words } from '#words/calculations/edging-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { asTyped } from '../../calculation/draft-text.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import type { StripHoles, StripInput } from '../../sewing/edging/strip.ts';
import { usualEnd } from '../../sewing/edging/strip-holes.ts';
import { stretchOf } from '../../sewing/edging/strip-room.ts';

/** How the holes of the first row were got; of a bent strip along its middle line. */
export function workingsOf(strip: StripInput, holes: StripHoles, bench: Bench): Working[] {
  const formula = formulaOf(strip, holes, bench);
  return [
    ...(formula === undefined ? [] : [{ formula, source: words.derived }]),
    { formula: words.usual, source: words.usualSource },
  ];
}

function formulaOf(strip: StripInput, { rows }: StripHoles, bench: Bench): string | undefined {
  if (strip.follow) return undefined;
  const [row] = rows;
  const [run] = row?.runs ?? [];
  if (!row || !run || run.marks.length < 2) return undefined;
  const { filled, kept } = words.formula;
  const show = (x: ExactLength) => exactly(x, bench);
  const typed = (x: ExactLength) => asTyped(x, bench);
  const pitch = exactLength((row.pitches[0] ?? 0) / stretchOf(strip, row.across));
  const turned = strip.corners.length > 0;
  const loop = strip.fit === 'loop' && !turned;
  const spaces = loop ? row.count : run.marks.length - 1;
  if (turned || loop || strip.fit === 'fill') {
    return filled(show(exactLength(spaces * pitch)), spaces, show(pitch), turned);
  }
  const room = exactLength(strip.length - 2 * usualEnd(strip));
  const left = exactLength(room - spaces * pitch);
  return kept(typed(room), spaces, typed(pitch), typed(left));
}
