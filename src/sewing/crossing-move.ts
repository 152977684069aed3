import { type ExactLength, exactLength } from '../lengths/length.ts';
import type { Crossing } from './strip-crossing.ts';

/** A shift as it is made: on from the upper strip’s hole 1, or back towards it. */
export interface Move {
  by: ExactLength;
  back: boolean;
  /** The other way, which comes to the same place. */
  other: ExactLength;
}

/** The shorter way to a shift: a whole pitch on or back every hole lies on the next one’s place. */
export function shorterMove({ shift, pitch }: Pick<Crossing, 'shift' | 'pitch'>): Move {
  const rest = exactLength(pitch - shift);
  const back = rest < shift;
  return back ? { by: rest, back, other: shift } : { by: shift, back, other: rest };
}
