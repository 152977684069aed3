import type { Calculation } from '../controls/calculation.ts';
import { convert } from '../screens/convert/convert.ts';

/** A calculation by its address. Home leads to those of `home-words`, others are beside one of these. */
export interface Entry {
  id: string;
  load(): Calculation | Promise<Calculation>;
}

/** Every calculation, in the order of the work. Each further one is fetched when first opened. */
export const CALCULATIONS: readonly Entry[] = [
  { id: 'convert', load: () => convert },
  { id: 'seam', load: () => import('../screens/seam/seam.ts').then((part) => part.seam) },
  { id: 'hem', load: () => import('../screens/hem/hem.ts').then((part) => part.hem) },
  {
    id: 'closures',
    load: () => import('../screens/closures/closures.ts').then((part) => part.closures),
  },
  {
    id: 'buttonhole',
    load: () => import('../screens/buttonhole/buttonhole.ts').then((part) => part.buttonhole),
  },
  { id: 'sizes', load: () => import('../screens/sizes/sizes.ts').then((part) => part.sizes) },
];
