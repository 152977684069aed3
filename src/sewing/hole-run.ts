import { exactLength, type Length, length } from '../lengths/length.ts';
import type { Run } from './run.ts';

/** A row of holes, hole to hole, from the first; of an odd count the middle one is the centre. */
export function holeRun(count: number, pitch: Length): Run {
  const middle = (count - 1) / 2;
  const marks = Array.from({ length: count }, (_, i) => ({
    at: exactLength(i * pitch),
    label: String(i + 1),
    kind: i === middle ? ('centre' as const) : ('hole' as const),
  }));
  return { datum: 'first-hole', length: length((count - 1) * pitch), marks };
}
