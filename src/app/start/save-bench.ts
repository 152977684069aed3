import type { Bench } from '../../calculation/bench.ts';
import type { Store } from '../../storage/store.ts';
import { checkBench, SETTINGS } from './settings.ts';

/**
 * Keeps what was set otherwise, and nothing else: another tab may have set something too, and a store
 * that was slow to wake may hold a bench that was not seen here yet.
 */
export function saveBench(store: Store, before: Bench, next: Bench): Promise<void> {
  const all = Object.keys(next) as (keyof Bench)[];
  const changed = all.filter((key) => next[key] !== before[key]);
  return store.change(SETTINGS, (kept) => ({
    ...checkBench(kept),
    ...Object.fromEntries(changed.map((key) => [key, next[key]])),
  }));
}
