import type { FunctionComponent } from 'preact';
import type { Bench } from '../../../calculation/bench.ts';
import type { State } from '../../../garment/actions/state.ts';

interface StaleProps {
  state: State;
  bench: Bench;
  /** The material whose lay it is. */
  lay: string;
  /** The field that takes its length, where it isn't said in the field itself. */
  field?: string;
}

/** What says that a lay doesn't hold any more; nothing while it does. Fetched where a field takes one's length. */
export type SaysStale = FunctionComponent<StaleProps>;
