import type { Claim, PlacedNumber } from '../claims/claim.ts';
import { type LinesSeen, unbroken } from '../graduations/detected-lines.ts';
import { LAST_LINE, LIE_ALIKE, MOST_BEND, SAFE_GAP, VOUCHED_NUMBERS, VOUCHES } from './limits.ts';
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
 * How differently the numbers of two stretches lie to the lines they label, in graduations: of those
 * nearest to each other that have as many digits. 0 where one of them has no such number.
 */
export function numbersApart(claim: Claim, one: Stretch, next: Stretch): number {
  const away = (tick: number, { from, to }: Stretch) => Math.max(0, from - tick, tick - to);
  const of = (here: Stretch, there: Stretch) =>
    claim.agreeing.filter(({ tick }) => away(tick, here) < away(tick, there));
  const { anchorTick, anchorValue, direction, step, ticksPerNumber } = claim;
  const lies = ({ value, tick }: PlacedNumber) =>
    tick - anchorTick - (direction * (value - anchorValue) * ticksPerNumber) / step;
  let nearest = { ticks: Number.POSITIVE_INFINITY, apart: 0 };
  for (const a of of(one, next)) {
    for (const b of of(next, one)) {
      const ticks = Math.abs(a.tick - b.tick);
      if (a.read.text.length !== b.read.text.length || ticks >= nearest.ticks) continue;
      nearest = { ticks, apart: Math.abs(lies(a) - lies(b)) };
    }
  }
  return nearest.apart;
}

/**
 * The stretches of which none can be a line off: from the longest outwards, those over whose gap
 * the followed lines went on as smoothly as the model, and whose numbers lie to their lines as those
 * before the gap do. `bendAt` is how far the lines were off the model, `apart` how differently the
 * numbers of two stretches lie, in graduations: the model can take up a line missed as a finer pitch.
 */
export function withoutSlips(
  stretches: readonly Stretch[],
  bendAt: (tick: number) => number,
  apart: (one: Stretch, next: Stretch) => number,
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
    if (apart(before, next) > LIE_ALIKE) return;
    kept.push(next);
    goOn(index + step, step);
  };
  goOn(main, 1);
  goOn(main, -1);
  return kept.sort((one, other) => one.from - other.from);
}
