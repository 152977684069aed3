import { toGraduation } from '../../lengths/graduation.ts';
import { insideGraduation } from '../../lengths/inside-graduation.ts';
import { exactLength, type Length, ZERO } from '../../lengths/length.ts';
import type { Hem } from './hem.ts';

/**
 * How far above the finished edge a hem is stitched, on a tape: strictly below its inner
 * edge, both where that comes to lie exactly and where it comes to lie with the lines
 * pressed on the graduations nearest to them. Undefined where the tape has no line there.
 *
 * @param depth of the hem, finished
 * @param step the tape's graduation, more than nothing
 */
export function stitchUpOnTape(hem: Hem, depth: Length, step: Length): Length | undefined {
  const line = toGraduation(hem.hemLine, step);
  const first = hem.firstPress === undefined ? ZERO : toGraduation(hem.firstPress, step);
  // From fold to fold flat, less what half of each fold adds.
  const pressed = line - first - (hem.folds.first + hem.folds.last) / 2;
  const under = exactLength(Math.min(depth, pressed));
  return insideGraduation(hem.stitchUp, step, { over: ZERO, under });
}
