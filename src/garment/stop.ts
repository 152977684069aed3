import type { Fault, Field, NamedRun } from '../calculation/calculation.ts';
import type { Kept } from './garment.ts';

/** One run that is followed, and which kept calculation it belongs to. */
export interface Stop {
  kept: Kept;
  /** Its place among the runs of its calculation, from 0. */
  run: number;
  /** As it is asked for, and with its marks where they were made. */
  plan: NamedRun;
  named: NamedRun;
  /** That calculation has other runs, too. */
  oneOfSeveral: boolean;
  /** Warnings and cautions of its calculation, said where the run begins. */
  cautions: readonly string[];
  /** The rest can be spaced anew around what is made. */
  canRespace: boolean;
}

/** A kept calculation that gives nothing to follow, and why. */
export type Blocked =
  | { kept: Kept; why: 'faults'; faults: readonly Fault[]; fields: readonly Field[] }
  | { kept: Kept; why: 'unknown' | 'missing' };

/** Why the rest could not be spaced anew. */
export interface SpacingFault {
  faults: readonly Fault[];
  fields: readonly Field[];
}
