import type { Calculation } from '../controls/calculation.ts';

/** Every calculation but the first page's, by its address. Each is fetched when first opened. */
export const CALCULATIONS: Readonly<Record<string, () => Promise<Calculation>>> = {
  hem: () => import('../screens/hem/hem.ts').then((part) => part.hem),
  seam: () => import('../screens/seam/seam.ts').then((part) => part.seam),
  sizes: () => import('../screens/sizes/sizes.ts').then((part) => part.sizes),
  closures: () => import('../screens/closures/closures.ts').then((part) => part.closures),
  corner: () => import('../screens/corner/corner.ts').then((part) => part.corner),
  centre: () => import('../screens/centre/centre.ts').then((part) => part.centre),
  buttonhole: () => import('../screens/buttonhole/buttonhole.ts').then((part) => part.buttonhole),
  edging: () => import('../screens/edging/edging.ts').then((part) => part.edging),
  lacing: () => import('../screens/lacing/lacing.ts').then((part) => part.lacing),
  crossing: () => import('../screens/crossing/crossing.ts').then((part) => part.crossing),
  parts: () => import('../screens/parts/parts.ts').then((part) => part.parts),
  facing: () => import('../screens/facing/facing.ts').then((part) => part.facing),
};
