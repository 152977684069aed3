import type { CalculationId } from '#words/calculations/calculation-names.ts';
import type { Calculation } from '../calculation/calculation.ts';
import { doubted } from '../calculation/doubted.ts';
import type { Drawing } from '../calculation/drawing.ts';
import type { Outputs } from '../calculation/output.ts';
import type { Paged } from '../calculation/page.ts';
import { stateOf } from '../calculation/parted.ts';

interface Listed {
  /** What its page shows. */
  page(): Promise<Paged>;
  /** What it gives to a garment; nothing where it only says the same length in other units. */
  gives?(): Promise<Outputs>;
  /** How it is drawn with its numbers on it. */
  draws?(): Promise<Drawing>;
}

/** Every calculation, by its address; of the first page's there is a beginning in the registry. Each part is fetched when first wanted. */
const LIST: Readonly<Record<CalculationId, Listed>> = {
  convert: {
    page: () => import('./convert/convert.ts').then(({ convert }) => convert),
  },
  hem: {
    page: () => import('./hem/hem.ts').then(({ hem }) => asked(hem)),
    gives: () => import('./hem/outputs.ts').then(({ hemOutputs }) => hemOutputs),
    draws: () => import('./hem/drawing.ts').then(({ hemDrawing }) => hemDrawing),
  },
  seam: {
    page: () => import('./seam/seam.ts').then(({ seam }) => asked(seam)),
    gives: () => import('./seam/outputs.ts').then(({ seamOutputs }) => seamOutputs),
    draws: () => import('./seam/drawing.ts').then(({ seamDrawing }) => seamDrawing),
  },
  sizes: {
    page: () => import('./sizes/sizes.ts').then(({ sizes }) => asked(sizes)),
    gives: () => import('./sizes/outputs.ts').then(({ sizesOutputs }) => sizesOutputs),
    draws: () => import('./sizes/drawing.ts').then(({ sizesDrawing }) => sizesDrawing),
  },
  closures: {
    page: () => import('./closures/closures.ts').then(({ closures }) => asked(closures)),
    gives: () => import('./closures/outputs.ts').then(({ closuresOutputs }) => closuresOutputs),
    draws: () => import('./closures/drawing.ts').then(({ closuresDrawing }) => closuresDrawing),
  },
  corner: {
    page: () => import('./corner/corner.ts').then(({ corner }) => asked(corner)),
    gives: () => import('./corner/outputs.ts').then(({ cornerOutputs }) => cornerOutputs),
    draws: () => import('./corner/drawing.ts').then(({ cornerDrawing }) => cornerDrawing),
  },
  centre: {
    page: () => import('./centre/centre.ts').then(({ centre }) => asked(centre)),
    gives: () => import('./centre/outputs.ts').then(({ centreOutputs }) => centreOutputs),
    draws: () => import('./centre/drawing.ts').then(({ centreDrawing }) => centreDrawing),
  },
  buttonhole: {
    page: () => import('./buttonhole/buttonhole.ts').then(({ buttonhole }) => asked(buttonhole)),
    gives: () =>
      import('./buttonhole/outputs.ts').then(({ buttonholeOutputs }) => buttonholeOutputs),
    draws: () =>
      import('./buttonhole/drawing.ts').then(({ buttonholeDrawing }) => buttonholeDrawing),
  },
  edging: {
    page: () => import('./edging/edging.ts').then(({ edging }) => asked(edging)),
    gives: () => import('./edging/outputs.ts').then(({ edgingOutputs }) => edgingOutputs),
    draws: () => import('./edging/drawing.ts').then(({ edgingDrawing }) => edgingDrawing),
  },
  grouped: {
    page: () => import('./grouped/grouped.ts').then(({ grouped }) => asked(grouped)),
    gives: () => import('./grouped/outputs.ts').then(({ groupedOutputs }) => groupedOutputs),
    draws: () => import('./grouped/drawing.ts').then(({ groupedDrawing }) => groupedDrawing),
  },
  outline: {
    page: () => import('./outline/outline.ts').then(({ outline }) => asked(outline)),
    gives: () => import('./outline/outputs.ts').then(({ outlineOutputs }) => outlineOutputs),
    draws: () => import('./outline/drawing.ts').then(({ outlineDrawing }) => outlineDrawing),
  },
  lacing: {
    page: () => import('./lacing/lacing.ts').then(({ lacing }) => asked(lacing)),
    gives: () => import('./lacing/outputs.ts').then(({ lacingOutputs }) => lacingOutputs),
    draws: () => import('./lacing/drawing.ts').then(({ lacingDrawing }) => lacingDrawing),
  },
  crossing: {
    page: () => import('./crossing/crossing.ts').then(({ crossing }) => asked(crossing)),
    gives: () => import('./crossing/outputs.ts').then(({ crossingOutputs }) => crossingOutputs),
    draws: () => import('./crossing/drawing.ts').then(({ crossingDrawing }) => crossingDrawing),
  },
  parts: {
    page: () => import('./parts/parts.ts').then(({ parts }) => asked(parts)),
    gives: () => import('./parts/outputs.ts').then(({ partsOutputs }) => partsOutputs),
    draws: () => import('./parts/drawing.ts').then(({ partsDrawing }) => partsDrawing),
  },
  shares: {
    page: () => import('./shares/shares.ts').then(({ shares }) => asked(shares)),
    gives: () => import('./shares/outputs.ts').then(({ sharesOutputs }) => sharesOutputs),
    draws: () => import('./shares/drawing.ts').then(({ sharesDrawing }) => sharesDrawing),
  },
  match: {
    page: () => import('./match/match.ts').then(({ match }) => asked(match)),
    gives: () => import('./match/outputs.ts').then(({ matchOutputs }) => matchOutputs),
    draws: () => import('./match/drawing.ts').then(({ matchDrawing }) => matchDrawing),
  },
  flare: {
    page: () => import('./flare/flare.ts').then(({ flare }) => asked(flare)),
    gives: () => import('./flare/outputs.ts').then(({ flareOutputs }) => flareOutputs),
    draws: () => import('./flare/drawing.ts').then(({ flareDrawing }) => flareDrawing),
  },
  level: {
    page: () => import('./level/level.ts').then(({ level }) => asked(level)),
    gives: () => import('./level/outputs.ts').then(({ levelOutputs }) => levelOutputs),
    draws: () => import('./level/drawing.ts').then(({ levelDrawing }) => levelDrawing),
  },
  slant: {
    page: () => import('./slant/slant.ts').then(({ slant }) => asked(slant)),
    gives: () => import('./slant/outputs.ts').then(({ slantOutputs }) => slantOutputs),
    draws: () => import('./slant/drawing.ts').then(({ slantDrawing }) => slantDrawing),
  },
  collar: {
    page: () => import('./collar/collar.ts').then(({ collar }) => asked(collar)),
    gives: () => import('./collar/outputs.ts').then(({ collarOutputs }) => collarOutputs),
    draws: () => import('./collar/drawing.ts').then(({ collarDrawing }) => collarDrawing),
  },
  band: {
    page: () => import('./band/band.ts').then(({ band }) => asked(band)),
    gives: () => import('./band/outputs.ts').then(({ bandOutputs }) => bandOutputs),
    draws: () => import('./band/drawing.ts').then(({ bandDrawing }) => bandDrawing),
  },
  darts: {
    page: () => import('./darts/darts.ts').then(({ darts }) => asked(darts)),
    gives: () => import('./darts/outputs.ts').then(({ dartsOutputs }) => dartsOutputs),
    draws: () => import('./darts/drawing.ts').then(({ dartsDrawing }) => dartsDrawing),
  },
  dart: {
    page: () => import('./dart/dart.ts').then(({ dart }) => asked(dart)),
    gives: () => import('./dart/outputs.ts').then(({ dartOutputs }) => dartOutputs),
    draws: () => import('./dart/drawing.ts').then(({ dartDrawing }) => dartDrawing),
  },
  repeat: {
    page: () => import('./repeat/repeat.ts').then(({ repeat }) => asked(repeat)),
    gives: () => import('./repeat/outputs.ts').then(({ repeatOutputs }) => repeatOutputs),
    draws: () => import('./repeat/drawing.ts').then(({ repeatDrawing }) => repeatDrawing),
  },
  pleats: {
    page: () => import('./pleats/pleats.ts').then(({ pleats }) => asked(pleats)),
    gives: () => import('./pleats/outputs.ts').then(({ pleatsOutputs }) => pleatsOutputs),
    draws: () => import('./pleats/drawing.ts').then(({ pleatsDrawing }) => pleatsDrawing),
  },
  gathers: {
    page: () => import('./gathers/gathers.ts').then(({ gathers }) => asked(gathers)),
    gives: () => import('./gathers/outputs.ts').then(({ gathersOutputs }) => gathersOutputs),
    draws: () => import('./gathers/drawing.ts').then(({ gathersDrawing }) => gathersDrawing),
  },
  zones: {
    page: () => import('./zones/zones.ts').then(({ zones }) => asked(zones)),
    gives: () => import('./zones/outputs.ts').then(({ zonesOutputs }) => zonesOutputs),
    draws: () => import('./zones/drawing.ts').then(({ zonesDrawing }) => zonesDrawing),
  },
  tiers: {
    page: () => import('./tiers/tiers.ts').then(({ tiers }) => asked(tiers)),
    gives: () => import('./tiers/outputs.ts').then(({ tiersOutputs }) => tiersOutputs),
    draws: () => import('./tiers/drawing.ts').then(({ tiersDrawing }) => tiersDrawing),
  },
  tucks: {
    page: () => import('./tucks/tucks.ts').then(({ tucks }) => asked(tucks)),
    gives: () => import('./tucks/outputs.ts').then(({ tucksOutputs }) => tucksOutputs),
    draws: () => import('./tucks/drawing.ts').then(({ tucksDrawing }) => tucksDrawing),
  },
  cord: {
    page: () => import('./cord/cord.ts').then(({ cord }) => asked(cord)),
    gives: () => import('./cord/outputs.ts').then(({ cordOutputs }) => cordOutputs),
    draws: () => import('./cord/drawing.ts').then(({ cordDrawing }) => cordDrawing),
  },
  circle: {
    page: () => import('./circle/circle.ts').then(({ circle }) => asked(circle)),
    gives: () => import('./circle/outputs.ts').then(({ circleOutputs }) => circleOutputs),
    draws: () => import('./circle/drawing.ts').then(({ circleDrawing }) => circleDrawing),
  },
  elastic: {
    page: () => import('./elastic/elastic.ts').then(({ elastic }) => asked(elastic)),
    gives: () => import('./elastic/outputs.ts').then(({ elasticOutputs }) => elasticOutputs),
    draws: () => import('./elastic/drawing.ts').then(({ elasticDrawing }) => elasticDrawing),
  },
  piece: {
    page: () => import('./piece/piece.ts').then(({ piece }) => asked(piece)),
    gives: () => import('./piece/outputs.ts').then(({ pieceOutputs }) => pieceOutputs),
    draws: () => import('./piece/drawing.ts').then(({ pieceDrawing }) => pieceDrawing),
  },
  fit: {
    page: () => import('./fit/fit.ts').then(({ fit }) => asked(fit)),
    gives: () => import('./fit/outputs.ts').then(({ fitOutputs }) => fitOutputs),
    draws: () => import('./fit/drawing.ts').then(({ fitDrawing }) => fitDrawing),
  },
  opening: {
    page: () => import('./opening/opening.ts').then(({ opening }) => asked(opening)),
    gives: () => import('./opening/outputs.ts').then(({ openingOutputs }) => openingOutputs),
    draws: () => import('./opening/drawing.ts').then(({ openingDrawing }) => openingDrawing),
  },
  vent: {
    page: () => import('./vent/vent.ts').then(({ vent }) => asked(vent)),
    gives: () => import('./vent/outputs.ts').then(({ ventOutputs }) => ventOutputs),
    draws: () => import('./vent/drawing.ts').then(({ ventDrawing }) => ventDrawing),
  },
  facing: {
    page: () => import('./facing/facing.ts').then(({ facing }) => asked(facing)),
    gives: () => import('./facing/outputs.ts').then(({ facingOutputs }) => facingOutputs),
    draws: () => import('./facing/drawing.ts').then(({ facingDrawing }) => facingDrawing),
  },
  thread: {
    page: () => import('./thread/thread.ts').then(({ thread }) => asked(thread)),
    gives: () => import('./thread/outputs.ts').then(({ threadOutputs }) => threadOutputs),
    draws: () => import('./thread/drawing.ts').then(({ threadDrawing }) => threadDrawing),
  },
  shrinkage: {
    page: () => import('./shrinkage/shrinkage.ts').then(({ shrinkage }) => asked(shrinkage)),
    gives: () => import('./shrinkage/outputs.ts').then(({ shrinkageOutputs }) => shrinkageOutputs),
    draws: () => import('./shrinkage/drawing.ts').then(({ shrinkageDrawing }) => shrinkageDrawing),
  },
  placket: {
    page: () => import('./placket/placket.ts').then(({ placket }) => asked(placket)),
    gives: () => import('./placket/outputs.ts').then(({ placketOutputs }) => placketOutputs),
    draws: () => import('./placket/drawing.ts').then(({ placketDrawing }) => placketDrawing),
  },
  pocket: {
    page: () => import('./pocket/pocket.ts').then(({ pocket }) => asked(pocket)),
    gives: () => import('./pocket/outputs.ts').then(({ pocketOutputs }) => pocketOutputs),
    draws: () => import('./pocket/drawing.ts').then(({ pocketDrawing }) => pocketDrawing),
  },
  curve: {
    page: () => import('./curve/curve.ts').then(({ curve }) => asked(curve)),
    gives: () => import('./curve/outputs.ts').then(({ curveOutputs }) => curveOutputs),
    draws: () => import('./curve/drawing.ts').then(({ curveDrawing }) => curveDrawing),
  },
  bias: {
    page: () => import('./bias/bias.ts').then(({ bias }) => asked(bias)),
    gives: () => import('./bias/outputs.ts').then(({ biasOutputs }) => biasOutputs),
    draws: () => import('./bias/drawing.ts').then(({ biasDrawing }) => biasDrawing),
  },
  binding: {
    page: () => import('./binding/binding.ts').then(({ binding }) => asked(binding)),
    gives: () => import('./binding/outputs.ts').then(({ bindingOutputs }) => bindingOutputs),
    draws: () => import('./binding/drawing.ts').then(({ bindingDrawing }) => bindingDrawing),
  },
};

/** What each calculation shows, by its address. */
export const CALCULATIONS = each(({ page }) => page);

/** The calculation at an address; undefined where there is none. */
export function calculationAt(id: string): Promise<Paged> | undefined {
  return Object.hasOwn(CALCULATIONS, id) ? CALCULATIONS[id]?.() : undefined;
}

/** What each calculation gives to a garment, by its address. */
export const OUTPUTS = each(({ gives }) => gives);

/** How each calculation is drawn, by its address. */
export const DRAWINGS = each(({ draws }) => draws);

function each<Part>(partOf: (listed: Listed) => Part | undefined): Readonly<Record<string, Part>> {
  return Object.fromEntries(
    Object.entries(LIST).flatMap(([id, listed]) => {
      const part = partOf(listed);
      return part === undefined ? [] : [[id, part]];
    }),
  );
}

/** With its questions about what is unusual, and what parts its fields from what is its page's. */
function asked(calculation: Calculation): Paged {
  return { ...doubted(calculation), part: stateOf };
}
