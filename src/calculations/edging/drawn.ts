import type { DrawnStrip } from '../../drawing/strip-places.ts';
import { toMm } from '../../lengths/length.ts';
import type { StripHoles, StripInput } from '../../sewing/edging/strip.ts';
import type { Run } from '../../sewing/run.ts';

/**
 * A strip as it is drawn.
 *
 * @param runs every side of every row, in order
 */
export function drawnOf(
  strip: StripInput,
  rows: StripHoles['rows'],
  runs: readonly Run[],
): DrawnStrip {
  const sides = runs.map(({ marks }) => marks.map(({ at }) => toMm(at)));
  return {
    length: toMm(strip.length),
    width: toMm(strip.width),
    pitch: toMm(strip.pitch),
    hole: toMm(strip.hole),
    radius: strip.radius === undefined ? undefined : toMm(strip.radius),
    rows: rows.map(({ across, runs: own }) => ({
      across: toMm(across),
      sides: sides.splice(0, own.length),
    })),
  };
}
