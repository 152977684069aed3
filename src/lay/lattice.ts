import type { Problem } from './problem.ts';
import type { Shape } from './shapes.ts';

/** Where the middle of a shape may lie in a strip of a length, in mm. */
export interface Range {
  x0: number;
  y0: number;
  x1: number;
  y1: number;
}

/** Puts into `range` where a shape's middle may lie; false where it doesn't fit. */
export function rangeOf(problem: Problem, shape: Shape, length: number, range: Range): boolean {
  const { box } = shape;
  range.x0 = -box.x0;
  range.y0 = -box.y0;
  range.x1 = length - box.x1;
  const onFold = problem.kinds[shape.kind]!.onFold;
  range.y1 = onFold ? range.y0 : Math.max(range.y0, problem.width - box.y1);
  return range.x1 >= range.x0;
}

/** A distance this small is taken for none, as a share of the repeat. */
const SAME = 1e-9;

/**
 * The place in [from, to] that is on the lattice `start + k × step`, next below the wanted place
 * (`up` 0) or next above it (`up` 1). Without a step, the wanted place itself, held in the range.
 * NaN where the lattice has no place in the range.
 */
export function onLattice(
  wanted: number,
  step: number,
  start: number,
  from: number,
  to: number,
  up: 0 | 1,
): number {
  if (!(step > 0)) return Math.max(from, Math.min(to, wanted));
  const least = Math.ceil((from - start) / step - SAME);
  const most = Math.floor((to - start) / step + SAME);
  if (most < least) return Number.NaN;
  const k = Math.floor((wanted - start) / step + SAME) + up;
  return start + Math.min(most, Math.max(least, k)) * step;
}

/** The steps and starts of the places a shape's middle may take on a repeating cloth. */
export function latticeOf({ repeat }: Problem, shape: Shape) {
  const { match } = shape;
  if (!match) return { stepX: 0, stepY: 0, startX: 0, startY: 0 };
  return { stepX: repeat.along, stepY: repeat.across, startX: -match[0], startY: -match[1] };
}
