import { useEffect, useState } from 'preact/hooks';
import type { Store } from '../../storage/store.ts';

/** Under what the step a garment was left at is kept, on this phone only. */
const KEY = 'in-hand';

type InHand = Readonly<Record<string, string>>;

/** The home of the step that was in hand last on a garment; kept for the next start. */
export function useInHand(
  store: Store,
  garment: string,
): [string | undefined, (home: string) => void] {
  const [home, setHome] = useState<string>();
  useEffect(() => {
    store.load(KEY).then(
      (kept) => setHome((now) => now ?? (kept as InHand | undefined)?.[garment]),
      () => undefined,
    );
  }, [store, garment]);
  const keep = (next: string) => {
    setHome(next);
    // Each mark of a row is of the same step.
    if (next !== home) keepInHand(store, garment, next);
  };
  return [home, keep];
}

/** Keeps which step of a garment is in hand: where that can't be kept, it begins at the first one. */
export function keepInHand(store: Store, garment: string, home: string): void {
  store.change(KEY, (all) => ({ ...(all as InHand), [garment]: home })).catch(() => undefined);
}
