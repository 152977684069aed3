import type { Paged } from '../../calculation/page.ts';
import { convertAtOnce } from '../../calculations/convert/at-once.ts';

type Load = () => Paged | Promise<Paged | undefined>;

/** The first page's calculation, as far as its first answer needs it. */
const atOnce: Load = () => convertAtOnce;
const loads = new Map([['convert', atOnce]]);

const convertWhole = fetched('convert');
const nothing = () => undefined;

/** How to get the rest of a calculation that was opened at once; of others there is nothing. */
export function wholeOf(load: Load): () => undefined | Promise<Paged | undefined> {
  return load === atOnce ? convertWhole : nothing;
}

/**
 * How to get the calculation at an address: the first page's is at hand, the list
 * of the others is fetched with the first of them. The same function every time.
 * It gives undefined where there is no such calculation.
 */
export function loaderOf(id: string): Load {
  const known = loads.get(id);
  if (known) return known;
  const load = fetched(id);
  loads.set(id, load);
  return load;
}

function fetched(id: string): () => Promise<Paged | undefined> {
  return () => import('../../calculations/list.ts').then((list) => list.calculationAt(id));
}
