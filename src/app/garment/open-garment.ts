import { useEffect, useState } from 'preact/hooks';
import type { Bench } from '../../calculation/bench.ts';
import type { LastHome } from '../../screens/garment/home/last-home.tsx';
import { openStore, type Store } from '../../storage/store.ts';
import { lastHomeIn } from './last-homes.ts';
import { LAST_HOME_KEY, OPEN_KEY } from './open-keys.ts';

/** Which garment is open, as home was first shown: looked up before, so that nothing else is seen first. */
let first: string | undefined;
let homes: unknown;

/** Looks up which garment is open, and what homes last said; without storage there is none. */
export async function lookUpOpen(): Promise<void> {
  const store = openStore();
  [first, homes] = await Promise.all([
    openIn(store),
    store.load(LAST_HOME_KEY).catch(() => undefined),
  ]);
}

/** What the home of a garment said when the app was last left. */
export function lastHomeOf(garment: string, bench: Bench): LastHome | undefined {
  return lastHomeIn(homes, garment, bench);
}

/** The garment that is open, if one is; the same that every other screen remembers. */
export function useOpenGarment(store: Store): string | undefined {
  const [open, setOpen] = useState(first);
  useEffect(() => {
    void openIn(store).then((id) => {
      first = id;
      setOpen(id);
    });
  }, [store]);
  return open;
}

async function openIn(store: Store): Promise<string | undefined> {
  const open = await store.load(OPEN_KEY).catch(() => undefined);
  return typeof open === 'string' && open !== '' ? open : undefined;
}
