import { modulo } from '../graduations/tick-classes.ts';
import type { Component } from './components.ts';
import { EMPTY_SHARE, NEAR_SHARE } from './limits.ts';

/**
 * Parts patches of ink into numbers, one to an interval of `period` pixels. All intervals are laid
 * over each other, and cut in the middle of the longest stretch that is empty in nearly all.
 *
 * @param phase pixels from a whole interval to the left edge of the sheet.
 * @returns the patches of each number, from left to right.
 */
export function cutApart(
  parts: readonly Component[],
  period: number,
  phase: number,
): Component[][] {
  const cut = emptiestPlace(coverage(parts, period, phase));
  const numbers = new Map<number, Component[]>();
  for (const part of parts) {
    const interval = Math.floor((part.middleX + phase - cut) / period);
    const number = numbers.get(interval);
    if (number) number.push(part);
    else numbers.set(interval, [part]);
  }
  return [...numbers]
    .sort(([a], [b]) => a - b)
    .map(([, number]) => number.sort((a, b) => a.x0 - b.x0));
}

/** How many patches lie over each pixel of the interval, smoothed. */
function coverage(parts: readonly Component[], period: number, phase: number): Float32Array {
  const counts = new Float32Array(period);
  for (const { x0, x1 } of parts) {
    for (let x = x0; x <= x1; x++) {
      const at = modulo(Math.round(x + phase), period);
      counts[at] = (counts[at] as number) + 1;
    }
  }
  const reach = Math.max(2, Math.round(NEAR_SHARE * period));
  return counts.map((_, at) => {
    let sum = 0;
    for (let step = -reach; step <= reach; step++) {
      const weight = 1 - Math.abs(step) / (reach + 1);
      sum += (counts[(at + step + period) % period] as number) * weight;
    }
    return sum;
  });
}

function emptiestPlace(covered: Float32Array): number {
  const period = covered.length;
  const least = Math.min(...covered);
  const limit = least + EMPTY_SHARE * (Math.max(...covered) - least);
  let [run, longest, cut] = [0, -1, 0];
  // Twice around, as the longest stretch may run over the seam.
  for (let at = 0; at < 2 * period; at++) {
    run = (covered[at % period] as number) <= limit ? run + 1 : 0;
    if (run > longest && run > 0 && run <= period) {
      longest = run;
      cut = (at - run / 2 + period) % period;
    }
  }
  return cut;
}
