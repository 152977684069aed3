import { type Component, componentOf } from './components.ts';
import { LEAST_STROKE, LOST_BESIDE_ONE, LOST_DIGIT, ONE } from './limits.ts';

/** The ink of a sheet before lines were wiped, and whose it is now. */
export interface WipedInk {
  readonly width: number;
  readonly before: Uint8Array;
  /** Taken over for what is put back. */
  readonly labels: Int32Array;
}

/**
 * A line that runs into the middle digit of a number wipes it. Puts back what was wiped in wide
 * gaps between the patches of a number (sorted from left to right), as patches with ids from
 * `nextId` on; `gap` if a wide gap stays.
 */
export function putBack(
  parts: readonly Component[],
  digitHeight: number,
  ink: WipedInk,
  nextId: () => number,
): { parts: Component[]; gap: boolean } {
  const whole: Component[] = [];
  let gap = false;
  parts.forEach((part, index) => {
    const last = parts[index - 1];
    if (last && part.x0 - last.x1 - 2 >= leastLoss(last, part) * digitHeight) {
      const found = wipedBetween(last, part, ink, nextId());
      if (found) whole.push(found);
      else gap = true;
    }
    whole.push(part);
  });
  return { parts: whole, gap };
}

function leastLoss(left: Component, right: Component): number {
  const besideOne = [left, right].some(({ width, height }) => width < ONE * height);
  return besideOne ? LOST_BESIDE_ONE : LOST_DIGIT;
}

function wipedBetween(
  left: Component,
  right: Component,
  { width, before, labels }: WipedInk,
  id: number,
): Component | null {
  const y0 = Math.min(left.y0, right.y0);
  const y1 = Math.max(left.y1, right.y1);
  let x0 = right.x0 - 1;
  let x1 = left.x1 + 1;
  const found: number[] = [];
  for (let y = y0; y <= y1; y++) {
    for (let x = left.x1 + 1; x < right.x0; x++) {
      const at = y * width + x;
      if (!before[at] || labels[at]) continue;
      found.push(at);
      x0 = Math.min(x0, x);
      x1 = Math.max(x1, x);
    }
  }
  // Less ink than a stroke as tall as the number isn't a digit.
  if (found.length <= LEAST_STROKE * (y1 - y0)) return null;
  for (const at of found) labels[at] = id;
  return componentOf(id, { x0, x1, y0, y1, area: found.length });
}
