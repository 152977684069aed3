import { useEffect, useRef, useState } from 'preact/hooks';
import { type GarmentList, loadList } from '../../storage/garment-list.ts';
import type { Store } from '../../storage/store.ts';
import { BACKUP_KEY, loadOpen, PUT_OFF_KEY } from './deeds.ts';
import { whenTold } from './tabs.ts';

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
  const latest = useRef<Promise<void>>(undefined);
  const show = () => {
    const look: Promise<void> = loadShown(store).then(async (now) => {
      // A later look has seen more, and may have come first: what was wanted is shown with it.
      if (latest.current !== look) return await latest.current;
      lacking.current = now.lacking;
      setShown(now);
    });
    latest.current = look;
    return look;
  };
  /** Once the list is shown: what it was read from is compared with the records. */
  const compare = async () => {
    if (await mend(store, lacking.current)) await show();
  };
  useEffect(() => whenTold(() => void show().catch(() => undefined)), []);
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
