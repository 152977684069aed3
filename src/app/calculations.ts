import type { Calculation } from '../controls/calculation.ts';
import { doubted } from '../controls/doubted.ts';
import { USUAL_FIELDS } from '../screens/usual-fields.ts';

/** Every calculation, by its address; of the first page's there is a beginning in the registry. Each is fetched when first opened. */
export const CALCULATIONS: Readonly<Record<string, () => Promise<Calculation>>> = {
  convert: () => import('../screens/convert/convert.ts').then(({ convert }) => convert),
  hem: () => import('../screens/hem/hem.ts').then(({ hem }) => asked(hem)),
  seam: () => import('../screens/seam/seam.ts').then(({ seam }) => asked(seam)),
  sizes: () => import('../screens/sizes/sizes.ts').then(({ sizes }) => asked(sizes)),
  closures: () => import('../screens/closures/closures.ts').then(({ closures }) => asked(closures)),
  corner: () => import('../screens/corner/corner.ts').then(({ corner }) => asked(corner)),
  centre: () => import('../screens/centre/centre.ts').then(({ centre }) => asked(centre)),
  buttonhole: () =>
    import('../screens/buttonhole/buttonhole.ts').then(({ buttonhole }) => asked(buttonhole)),
  edging: () => import('../screens/edging/edging.ts').then(({ edging }) => asked(edging)),
  lacing: () => import('../screens/lacing/lacing.ts').then(({ lacing }) => asked(lacing)),
  crossing: () => import('../screens/crossing/crossing.ts').then(({ crossing }) => asked(crossing)),
  parts: () => import('../screens/parts/parts.ts').then(({ parts }) => asked(parts)),
  facing: () => import('../screens/facing/facing.ts').then(({ facing }) => asked(facing)),
};

/** With its questions about what is unusual. */
function asked(calculation: Calculation): Calculation {
  return doubted(calculation, USUAL_FIELDS[calculation.id] ?? {});
}
