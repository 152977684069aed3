import type { Bench } from '../../calculation/bench.ts';
import type { Calculation, Draft } from '../../calculation/calculation.ts';
import type { Store } from '../../storage/store.ts';

/** What each calculation held last, as the query of its address. */
export type Last = Readonly<Record<string, string>>;

const KEY = 'last';

/** Reads what was kept; anything that is not text is left out. */
export async function loadLast(store: Store): Promise<Last> {
  const kept = await store.load(KEY);
  return Object.fromEntries(
    Object.entries(kept ?? {}).filter(([, query]) => typeof query === 'string'),
  );
}

/** Keeps one calculation's last typing beside what other tabs have kept. */
export function saveLast(store: Store, id: string, query: string): Promise<void> {
  return store.change(KEY, (old) => ({ ...(old as Last | undefined), [id]: query }));
}

/**
 * What a calculation opens with: the address, else what it held last, else its
 * own start. `u` is the unit its bare numbers are in.
 */
export function openingDraft(
  calculation: Calculation,
  typed: Draft,
  last: string | undefined,
  bench: Bench,
): Draft {
  const given = Object.keys(typed).length > 0 ? typed : last;
  const known = { u: bench.unit, ...Object.fromEntries(new URLSearchParams(given)) };
  const unit = /^(cm|mm|in)$/.test(known.u) ? known.u : bench.unit;
  return { ...calculation.start({ ...bench, unit }), ...known };
}
