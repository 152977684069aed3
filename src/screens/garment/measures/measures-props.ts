import type { FunctionComponent } from 'preact';
import type { Bench } from '../../../calculation/bench.ts';
import type { Action } from '../../../garment/actions/act.ts';
import type { State } from '../../../garment/actions/state.ts';

/** The material whose lay it is of. */
export interface LaidProps {
  state: State;
  bench: Bench;
  lay: string;
}

export interface MeasuresProps {
  state: State;
  bench: Bench;
  onAct: (action: Action) => void;
  onDone: () => void;
  /** Reads a quantity off a tape, where that is possible. */
  onRead?: ((quantity: string) => void) | undefined;
  /** Of one that is as long as a lay: whether that still holds. Fetched where there is one. */
  Laid: FunctionComponent<LaidProps>;
  /** The one that is opened first: what a step lacks. */
  first?: string | undefined;
  /** Why the last thing wasn't done, in words. */
  said?: string | undefined;
  /** Where the disk did not take it: tries again now. */
  onAgain?: (() => void) | undefined;
}

/** What is done with a number just now. */
export type MeasureDeed = 'look' | 'type' | 'sum' | 'measure' | 'rename' | 'which';
