import { useEffect, useState } from 'preact/hooks';
import { openStore, type Store } from '../../storage/store.ts';
import { OPEN_KEY } from './deeds.ts';

/** Which garment is open, as home was first shown: looked up before, so that nothing else is seen first. */
let first: string | undefined;

/** Looks up which garment is open; without storage there is none. */
export async function lookUpOpen(): Promise<void> {
  first = await openIn(openStore());
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
