import type { Bench } from '../../../calculation/bench.ts';
import type { Action } from '../../../garment/actions/act.ts';
import type { State } from '../../../garment/actions/state.ts';

export interface OrderProps {
  state: State;
  bench: Bench;
  /** What went wrong, in words. */
  said: string | undefined;
  /** Where the disk did not take it: tries again now. */
  onAgain?: (() => void) | undefined;
  onAct: (action: Action) => void;
  /** Takes a step in hand, and goes to it. */
  onInHand: (home: string) => void;
  /** Notes something at a step, or at a work. */
  onNote: (home: string) => void;
  onDone: () => void;
}
