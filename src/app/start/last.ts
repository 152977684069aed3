import type { Bench } from '../../calculation/bench.ts';
import type { Held, Paged, PageState } from '../../calculation/page.ts';
import { benchUnit } from '../../lengths/unit.ts';
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
  calculation: Paged,
  typed: Held,
  last: string | undefined,
  bench: Bench,
): PageState {
  const given = Object.keys(typed)[0] ? typed : last;
  const { draft, page } = calculation.part({
    u: bench.unit,
    ...Object.fromEntries(new URLSearchParams(given)),
  });
  const unit = benchUnit(page.u) ?? bench.unit;
  return { draft: { ...calculation.start({ ...bench, unit }), ...draft }, page };
}
