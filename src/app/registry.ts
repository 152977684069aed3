import type { Calculation } from '../controls/calculation.ts';
import { convert } from '../screens/convert/convert.ts';

type Load = () => Calculation | Promise<Calculation | undefined>;

const loads = new Map<string, Load>([['convert', () => convert]]);

/**
 * How to get the calculation at an address: the first page's is at hand, the list
 * of the others is fetched with the first of them. The same function every time.
 * It gives undefined where there is no such calculation.
 */
export function loaderOf(id: string): Load {
  const known = loads.get(id);
  if (known) return known;
  const load = () =>
    import('./calculations.ts').then(({ CALCULATIONS }) =>
      Object.hasOwn(CALCULATIONS, id) ? CALCULATIONS[id]?.() : undefined,
    );
  loads.set(id, load);
  return load;
}
