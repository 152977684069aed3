import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Action } from '../../garment/actions/act.ts';
import type { Refused, State } from '../../garment/actions/state.ts';
import type { Store, StoreError } from '../../storage/store.ts';
import { holderOf } from './holder.ts';

/** A garment in hand, as a screen has it. */
export interface Hand {
  /** Undefined until it is read. */
  state: State | undefined;
  /** Does one thing: shown at once, kept in order; two tabs meet in the store. */
  act(action: Action): void;
  /** Why the last thing was not done, until the next. */
  refused: Refused | undefined;
  /** How much is not on the disk yet. */
  waiting: number;
  trouble: StoreError | undefined;
  /** Why it can't be read, or not be kept for good. */
  failed: unknown;
  /** Tries to keep it now. */
  again(): void;
}

/** A garment as it is, with everything done to it. */
export function useHand(store: Store, id: string): Hand {
  const holder = useMemo(() => holderOf(store, id), [store, id]);
  const [, look] = useState({});
  useEffect(() => {
    const deaf = holder.listen(() => look({}));
    // It may have been read between the first look and now; or long ago, and been changed on the list since.
    look({});
    if (holder.state()) holder.look();
    return () => void deaf();
  }, [holder]);
  return {
    state: holder.state(),
    act: holder.act,
    refused: holder.refused(),
    waiting: holder.waiting(),
    trouble: holder.trouble(),
    failed: holder.failed(),
    again: holder.again,
  };
}
