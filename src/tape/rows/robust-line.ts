import { leastSquares } from '../numerics/solve.ts';
import { ROBUST_LINE_FEWEST_PLACES, ROBUST_LINE_NEAR_PX, STEEPEST } from './limits.ts';
import type { StrokePlace } from './stroke-places.ts';

/** v = slope·u + start. */
export interface Line {
  readonly slope: number;
  readonly start: number;
}

/** The line through most of the places, whatever the rest do; null when there is none. */
export function robustLine(places: readonly StrokePlace[]): Line | null {
  if (places.length < ROBUST_LINE_FEWEST_PLACES) return null;
  const best = bestPair(places);
  if (!best) return null;
  const near = places.filter((place) => Math.abs(away(best, place)) < ROBUST_LINE_NEAR_PX);
  const rows = near.map(({ u, v, weight }) => [u / 1000, 1, v, weight]);
  const fit = leastSquares(rows, 2);
  return fit ? { slope: (fit[0] as number) / 1000, start: fit[1] as number } : best;
}

function away({ slope, start }: Line, { u, v }: StrokePlace): number {
  return v - slope * u - start;
}

/** Of the lines through two places that aren't neighbours, the one most others are near. */
function bestPair(places: readonly StrokePlace[]): Line | null {
  let best: Line | null = null;
  let most = 0;
  for (const [i, first] of places.entries()) {
    for (const second of places.slice(i + 3)) {
      const slope = (second.v - first.v) / (second.u - first.u);
      if (Math.abs(slope) > STEEPEST) continue;
      const line = { slope, start: first.v - slope * first.u };
      const score = support(line, places);
      if (score <= most) continue;
      most = score;
      best = line;
    }
  }
  return best;
}

function support(line: Line, places: readonly StrokePlace[]): number {
  let sum = 0;
  for (const place of places) {
    sum += place.weight * Math.max(0, 1 - Math.abs(away(line, place)) / ROBUST_LINE_NEAR_PX);
  }
  return sum;
}
