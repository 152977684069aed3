import { type ExactLength, exactLength } from '../../lengths/length.ts';
import type { Crossing, CrossingPlan } from './strip-crossing.ts';

/** A shift of less that clears nothing is none: 0.05 mm. */
const NO_SHIFT = exactLength(400);

/** The crossing that is made, and whether the upper strip is moved for it: only for a shift that betters what lies there. */
export function chosenOf({ asLaid, best }: Pick<CrossingPlan, 'asLaid' | 'best'>): {
  chosen: Crossing;
  moved: boolean;
} {
  const moved = isBetterMoved(best, asLaid);
  return { chosen: moved ? best : asLaid, moved };
}

function isBetterMoved(best: Crossing, asLaid: Crossing): boolean {
  const room = (one: Crossing) => one.room ?? Number.POSITIVE_INFINITY;
  if (best.clashes !== asLaid.clashes) return best.clashes < asLaid.clashes;
  return best.shift >= NO_SHIFT && room(best) > room(asLaid) + NO_SHIFT;
}

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
