import { useEffect, useRef, useState } from 'preact/hooks';
import { type GarmentList, loadList } from '../../storage/garment-list.ts';
import type { Store } from '../../storage/store.ts';
import { BACKUP_KEY, loadOpen, PUT_OFF_KEY } from './deeds.ts';

/** The list of garments, the one that was open last before the others. */
export interface Shown extends GarmentList {
  lastBackup: unknown;
  putOff: unknown;
}

const NOTHING: Shown = {
  garments: [],
  deleted: [],
  setAside: [],
  cleared: [],
  lacking: false,
  lastBackup: undefined,
  putOff: undefined,
};

const mend = (store: Store, lacking: boolean) =>
  import('../../storage/garment-mend.ts').then(({ mendList }) => mendList(store, lacking));

/** What is shown of the store, and how it is read anew. */
export function useShown(store: Store) {
  const [shown, setShown] = useState(NOTHING);
  const lacking = useRef(false);
  const show = async () => {
    const now = await loadShown(store);
    lacking.current = now.lacking;
    setShown(now);
  };
  /** Once the list is shown: what it was read from is compared with the records. */
  const compare = async () => {
    if (await mend(store, lacking.current)) await show();
  };
  useEffect(() => {
    // A page that comes from the browser's memory may be old.
    const back = ({ persisted }: PageTransitionEvent) =>
      persisted && void show().catch(() => undefined);
    addEventListener('pageshow', back);
    return () => removeEventListener('pageshow', back);
  }, []);
  return { shown, show, compare };
}

async function loadShown(store: Store): Promise<Shown> {
  const list = await loadList(store);
  const [open, lastBackup, putOff] = await Promise.all([
    loadOpen(store, list.garments),
    store.load(BACKUP_KEY),
    store.load(PUT_OFF_KEY),
  ]);
  const isOpen = ({ id }: { id: string }) => id === open;
  const garments = [...list.garments].sort((a, b) => Number(isOpen(b)) - Number(isOpen(a)));
  return { ...list, garments, lastBackup, putOff };
}
