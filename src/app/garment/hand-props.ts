import type { ComponentChildren } from 'preact';
import type { Bench } from '../../calculation/bench.ts';
import type { State } from '../../garment/actions/state.ts';
import type { Store } from '../../storage/store.ts';
import type { Address } from '../start/use-address.ts';
import type { Hand } from './hand.ts';

/** What every place of a garment in hand is given. */
export interface HandProps {
  store: Store;
  address: Address;
  bench: Bench;
  id: string;
  hand: Hand;
  state: State;
  /** Why something is not on the disk. */
  said: string | undefined;
  /** Where the disk did not take it: tries again now. */
  onAgain?: (() => void) | undefined;
  news?: ComponentChildren;
  onLeave: () => void;
}
