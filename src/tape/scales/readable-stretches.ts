import type { Claim } from '../claims/claim.ts';
import { type LinesSeen, unbroken } from '../graduations/detected-lines.ts';
import { LAST_LINE, MOST_BEND, SAFE_GAP, VOUCHED_NUMBERS, VOUCHES } from './limits.ts';
import type { Stretch } from './scale.ts';

/**
 * The stretches of a claimed row that may be read: lines seen without a gap that could hide a
 * slip, with numbers that agree on them or at both their sides, and none that contradict.
 */
export function readableStretches(claim: Claim, { first, there }: LinesSeen): Stretch[] {
  const agreeing = claim.agreeing.map(({ tick }) => tick);
  const contrary = claim.contrary.map(({ tick }) => tick);
  const reach = VOUCHED_NUMBERS * claim.ticksPerNumber;
  return unbroken(there, first, SAFE_GAP).flatMap(([from, to]) => {
    const margin = claim.ticksPerNumber * VOUCHES;
    const inside = agreeing.filter((tick) => tick >= from - margin && tick <= to + margin);
    if (inside.length === 0) return [];
    const low = Math.max(
      from,
      Math.min(...inside) - reach,
      ...wall(contrary, Math.min(...inside), -1),
    );
    const high = Math.min(
      to,
      Math.max(...inside) + reach,
      ...wall(contrary, Math.max(...inside), 1),
    );
    return high > low ? [{ from: low - LAST_LINE, to: high + LAST_LINE }] : [];
  });
}

/** A number beyond the agreeing ones that says something else: another scale may begin right after them. */
function wall(contrary: readonly number[], edge: number, direction: 1 | -1): number[] {
  return contrary.some((tick) => direction * (tick - edge) > 0) ? [edge] : [];
}

/**
 * The stretches of which none can be a line off: from the longest outwards, those over whose gap
 * the followed lines went on as smoothly as the model. `bendAt` is how far they were off it.
 */
export function withoutSlips(
  stretches: readonly Stretch[],
  bendAt: (tick: number) => number,
): Stretch[] {
  const length = ({ from, to }: Stretch) => to - from;
  const longest = stretches.reduce((most, one) => Math.max(most, length(one)), 0);
  const main = stretches.findIndex((one) => length(one) === longest);
  const kept = stretches.slice(main, main + 1);
  const goOn = (index: number, step: 1 | -1): void => {
    const [before, next] = [stretches[index], stretches[index + step]];
    if (!before || !next) return;
    const [left, right] = step > 0 ? [before.to, next.from] : [before.from, next.to];
    if (Math.abs(bendAt(left) - bendAt(right)) > MOST_BEND) return;
    kept.push(next);
    goOn(index + step, step);
  };
  goOn(main, 1);
  goOn(main, -1);
  return kept.sort((one, other) => one.from - other.from);
}
