import { type ExactLength, exactLength, length, settled } from '../../lengths/length.ts';
import type { Run } from '../run.ts';
import type { StripAcross } from './crossing-holes.ts';
import type { Crossing } from './strip-crossing.ts';

/** The holes to punch through the lower strip, as a run along it. */
export interface NewHoles {
  run: Run;
  /** The hole it is measured from: along the strip from the crossing of the middle lines. */
  from: ExactLength;
}

/** What dividing may leave over in a whole number of pitches. */
const NOISE = 1e-9;

/**
 * The new holes of a crossing, in order along the lower strip from the last hole of its
 * first row that is not past any of them; across from the edge of that row. Undefined
 * where every hole is shared.
 */
export function newHoles(
  { phase, pitch, width }: StripAcross,
  { holes }: Crossing,
): NewHoles | undefined {
  const fresh = holes
    .filter(({ meets }) => meets !== 'shared')
    .sort((one, other) => nearly(one.along, other.along) || one.across - other.across);
  const [first] = fresh;
  if (!first) return undefined;
  const from = exactLength(phase + Math.floor((first.along - phase) / pitch + NOISE) * pitch);
  // Without the last places of sums: on a line of the tape there is nothing left over.
  const at = (along: number) => settled(exactLength(Math.max(0, along - from)));
  const marks = fresh.map(({ along, across }, i) => ({
    at: at(along),
    across: settled(exactLength(width / 2 + across)),
    label: String(i + 1),
    kind: 'hole' as const,
  }));
  const last = Math.max(...marks.map((mark) => mark.at));
  return {
    run: { datum: 'hole-before', length: length(Math.ceil(last)), marks },
    from,
  };
}

/** Holes level with each other are told apart by the last places of a sum alone. */
function nearly(one: number, other: number): number {
  return Math.abs(one - other) < 0.5 ? 0 : one - other;
}
