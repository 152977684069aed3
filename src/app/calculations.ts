import type { Calculation } from '../controls/calculation.ts';

/** Every calculation but the first page's, by its address. Each is fetched when first opened. */
export const CALCULATIONS: Readonly<Record<string, () => Promise<Calculation>>> = {
  seam: () => import('../screens/seam/seam.ts').then((part) => part.seam),
  hem: () => import('../screens/hem/hem.ts').then((part) => part.hem),
  closures: () => import('../screens/closures/closures.ts').then((part) => part.closures),
  buttonhole: () => import('../screens/buttonhole/buttonhole.ts').then((part) => part.buttonhole),
  centre: () => import('../screens/centre/centre.ts').then((part) => part.centre),
  sizes: () => import('../screens/sizes/sizes.ts').then((part) => part.sizes),
};
