import type { Bench } from '../../../calculation/bench.ts';
import type { Action } from '../../../garment/actions/act.ts';
import type { State } from '../../../garment/actions/state.ts';

export interface DecisionProps {
  state: State;
  /** Of the row, or the number, that is made otherwise than asked. */
  home: string;
  bench: Bench;
  /** Why what was decided is not on the disk yet, in words. */
  unkept?: string | undefined;
  /** Where the disk did not take it: tries again now. */
  onAgain?: (() => void) | undefined;
  onAct: (action: Action) => void;
  /** Opens a work. */
  onOpen: (work: string) => void;
  /** Says what a fact really measures. */
  onMeasure: (fact: string) => void;
  onDone: () => void;
}
