import { useEffect, useRef, useState } from 'preact/hooks';

import { withChanged } from '../garment/changes.ts';
import type { Garment, Kept } from '../garment/garment.ts';
import { changeGarment, loadGarment } from '../storage/garments.ts';
import type { Store } from '../storage/store.ts';
import { notKept } from './garment-deeds.ts';
import { type Known, loadKnown } from './garment-stops.ts';

export interface Followed {
  garment: Garment | undefined;
  known: Known | undefined;
  /** Why something was not kept, or can't be read. */
  said: string | undefined;
  /** Changes one kept calculation: seen at once, and in the store. */
  change(id: string, by: (kept: Kept) => Kept): void;
  /** Says what went wrong. */
  fail(error: unknown): void;
}

/** A garment whose marks are followed: each mark made is kept as it is made. */
export function useFollowed(store: Store, id: string): Followed {
  const [garment, setGarment] = useState<Garment>();
  const [known, setKnown] = useState<Known>();
  const [said, setSaid] = useState<string>();
  const before = useRef<Promise<void>>(Promise.resolve());

  const fail = (error: unknown) => setSaid(notKept(error));
  const load = async () => {
    const loaded = await loadGarment(store, id);
    setKnown(await loadKnown(loaded));
    setGarment(loaded);
  };
  useEffect(() => {
    load().catch(fail);
  }, []);

  const change = (keptId: string, by: (kept: Kept) => Kept) => {
    const changed = (old: Garment) => withChanged(old, keptId, by, Date.now());
    setGarment((old) => old && changed(old));
    before.current = before.current.then(async () => {
      try {
        await changeGarment(store, id, changed);
        setSaid(undefined);
      } catch (error) {
        fail(error);
        // What is shown as made must be what is kept.
        await load().catch(() => undefined);
      }
    });
  };
  return { garment, known, said, change, fail };
}
