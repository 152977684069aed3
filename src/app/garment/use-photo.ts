import { useEffect, useState } from 'preact/hooks';
import { loadPhoto } from '../../storage/garment-photos.ts';
import type { Store } from '../../storage/store.ts';

/** A photo as it can be shown: null where it isn't on this phone, false where storage doesn't give it. */
type ShownPhoto = string | null | false;

/** A photo of a note; undefined while it is read. */
export function usePhoto(store: Store, id: string | undefined): ShownPhoto | undefined {
  const [read, setRead] = useState<{ id: string; jpeg: ShownPhoto }>();
  useEffect(() => {
    if (id === undefined) return;
    const here = (jpeg: ShownPhoto) => setRead({ id, jpeg });
    loadPhoto(store, id).then(
      (jpeg) => here(jpeg ?? null),
      () => here(false),
    );
  }, [store, id]);
  return read && read.id === id ? read.jpeg : undefined;
}
