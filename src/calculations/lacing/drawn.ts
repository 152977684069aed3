import type { DrawnLacing } from '../../drawing/lacing-figure.ts';
import { toMm } from '../../lengths/length.ts';
import type { Laced } from '../../sewing/lacing/lacing.ts';
import { middleStart } from '../../sewing/lacing/lacing-halves.ts';
import type { LacingInput } from '../../sewing/lacing/lacing-input.ts';

/** A lacing as it is drawn. */
export function drawnOf(
  input: LacingInput,
  strands: Laced['strands'],
  steps: number | undefined,
): DrawnLacing {
  const { holes, pitch, margin, lace = margin } = input;
  return {
    strands,
    holes,
    start: middleStart(input),
    steps,
    pitch: toMm(pitch),
    margin: toMm(margin),
    // A hole is a little smaller than its lace (Texas 4-H L-382); neighbours stay apart.
    hole: Math.min(0.8 * toMm(lace), 0.44 * toMm(pitch)),
  };
}
