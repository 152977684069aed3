import { useEffect, useState } from 'preact/hooks';
import { loadPhoto } from '../../storage/garment-photos.ts';
import type { Store } from '../../storage/store.ts';

/** A photo as it can be shown: undefined while it is read, null where it isn't on this phone. */
export function usePhoto(store: Store, id: string | undefined): string | null | undefined {
  const [read, setRead] = useState<{ id: string; jpeg: string | null }>();
  useEffect(() => {
    if (id === undefined) return;
    const here = (jpeg: string | null) => setRead({ id, jpeg });
    loadPhoto(store, id).then(
      (jpeg) => here(jpeg ?? null),
      () => here(null),
    );
  }, [store, id]);
  return read && read.id === id ? read.jpeg : undefined;
}
