import type { Calculation } from '../calculation/calculation.ts';
import { doubted } from '../calculation/doubted.ts';

/** Every calculation, by its address; of the first page's there is a beginning in the registry. Each is fetched when first opened. */
export const CALCULATIONS: Readonly<Record<string, () => Promise<Calculation>>> = {
  convert: () => import('./convert/convert.ts').then(({ convert }) => convert),
  hem: () => import('./hem/hem.ts').then(({ hem }) => asked(hem)),
  seam: () => import('./seam/seam.ts').then(({ seam }) => asked(seam)),
  sizes: () => import('./sizes/sizes.ts').then(({ sizes }) => asked(sizes)),
  closures: () => import('./closures/closures.ts').then(({ closures }) => asked(closures)),
  corner: () => import('./corner/corner.ts').then(({ corner }) => asked(corner)),
  centre: () => import('./centre/centre.ts').then(({ centre }) => asked(centre)),
  buttonhole: () =>
    import('./buttonhole/buttonhole.ts').then(({ buttonhole }) => asked(buttonhole)),
  edging: () => import('./edging/edging.ts').then(({ edging }) => asked(edging)),
  lacing: () => import('./lacing/lacing.ts').then(({ lacing }) => asked(lacing)),
  crossing: () => import('./crossing/crossing.ts').then(({ crossing }) => asked(crossing)),
  parts: () => import('./parts/parts.ts').then(({ parts }) => asked(parts)),
  facing: () => import('./facing/facing.ts').then(({ facing }) => asked(facing)),
};

/** With its questions about what is unusual. */
function asked(calculation: Calculation): Calculation {
  return doubted(calculation);
}
