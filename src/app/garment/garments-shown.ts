import { useEffect, useRef, useState } from 'preact/hooks';

import type { Garment } from '../../garment/garment.ts';
import { type GarmentList, loadList } from '../../storage/garment-list.ts';
import { findGarment } from '../../storage/garments.ts';
import type { Store } from '../../storage/store.ts';
import { BACKUP_KEY, loadOpen, PUT_OFF_KEY, rememberOpen } from './deeds.ts';

/** The list of garments, and the one that is open. */
export interface Shown extends GarmentList {
  /** The id of the garment that is open; undefined until it is known. */
  open: string | undefined;
  /** That garment, once it has been read. */
  opened: Garment | undefined;
  lastBackup: unknown;
  putOff: unknown;
}

const NOTHING: Shown = {
  garments: [],
  deleted: [],
  setAside: [],
  cleared: [],
  lacking: false,
  open: undefined,
  opened: undefined,
  lastBackup: undefined,
  putOff: undefined,
};

const mend = (store: Store, lacking: boolean) =>
  import('../../storage/garment-mend.ts').then(({ mendList }) => mendList(store, lacking));

/** What is shown of the store, and how it is read anew. */
export function useShown(store: Store) {
  const [shown, setShown] = useState(NOTHING);
  const open = useRef<string | undefined>(undefined);
  const lacking = useRef(false);
  /**
   * Shows what is in the store. The garment that is open stays open, whatever another tab opens.
   * @param made a garment that is open from now on
   */
  const show = async (made?: string) => {
    open.current = made ?? open.current;
    const now = await loadShown(store, open.current);
    open.current ??= now.open;
    lacking.current = now.lacking;
    // One may have been opened while the others were read.
    setShown((old) =>
      open.current === now.open ? now : { ...now, open: old.open, opened: old.opened },
    );
  };
  /** Opens a garment, or none; seen at once, remembered after. */
  const openOne = async (id = '') => {
    open.current = id;
    setShown((old) => ({ ...old, open: id, opened: undefined }));
    void rememberOpen(store, id);
    const opened = await findGarment(store, id);
    // One that is gone by now, or can't be read any more, is no longer on the list either.
    if (!opened && id !== '') return show();
    setShown((old) => (old.open === id ? { ...old, opened } : old));
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
  return { shown, show, openOne, compare };
}

/** @param open the id of the garment that is open; undefined when it is to be looked up */
async function loadShown(store: Store, open: string | undefined): Promise<Shown> {
  const list = await loadList(store);
  const id = open ?? (await loadOpen(store, list.garments));
  const [opened, lastBackup, putOff] = await Promise.all([
    findGarment(store, id),
    store.load(BACKUP_KEY),
    store.load(PUT_OFF_KEY),
  ]);
  return { ...list, open: id, opened, lastBackup, putOff };
}
