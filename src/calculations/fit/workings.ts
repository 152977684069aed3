import { fitAnswerWords as words } from '#words/calculations/fit-answer-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { STRETCH_EASE } from '../../sewing/sources/ease.ts';
import { publishedEase } from '../../sewing/wearer/ease.ts';
import { clearance } from '../../sewing/wearer/fit.ts';
import type { FitAsked } from './fields.ts';
import type { Fit } from './worked.ts';

/** π as it stands in a formula. */
const PI = '3.14159';

/** The formulas of a fit with their numbers, and who publishes which ease. */
export function fitWorkings(read: FitAsked, { wanted, there }: Fit, bench: Bench): Working[] {
  const show = (x: ExactLength) => exactly(exactLength(Math.abs(x)), bench);
  const { body, ease, of, cloth, seams, darts } = read;
  const sum = ease < 0 ? words.minus : words.plus;
  const quotes = cloth === 'stretch' ? [STRETCH_EASE] : publishedEase(of);
  const found: (Working | undefined)[] = [
    { formula: sum(show(body), show(ease), show(wanted)), source: words.practice },
    there && { formula: girthFormula(read, there.girth, show), source: words.derived },
    seams !== undefined && there?.eachEdge !== undefined
      ? {
          formula: words.edgeFormula(show(there.lacks), seams, show(there.eachEdge)),
          source: words.derived,
        }
      : undefined,
    darts !== undefined && there?.eachDart !== undefined
      ? {
          formula: words.dartFormula(show(there.lacks), darts, show(there.eachDart)),
          source: words.derived,
        }
      : undefined,
    offWorking(there?.ease ?? ease, bench),
    ...quotes.map(({ quote }) => ({ formula: words.says(quote), source: words.source(quote) })),
  ];
  return found.flatMap((one) => one ?? []);
}

function girthFormula(
  { pieces, allowances, taken, seams, edge, darts, dart }: FitAsked,
  girth: ExactLength,
  show: (x: ExactLength) => string,
): string {
  const less = [allowances, taken].filter((one) => one > 0).map(show);
  let terms = words.takeAway(show(pieces ?? allowances), ...less);
  if (seams !== undefined && edge) terms = words.change(terms, seams, show(edge), edge < 0);
  if (darts !== undefined && dart) terms = words.dartChange(terms, darts, show(dart), dart < 0);
  return words.girthFormula(terms, show(girth));
}

function offWorking(ease: ExactLength, bench: Bench): Working | undefined {
  if (ease <= 0) return undefined;
  const off = exactly(clearance(ease), bench);
  const formula = words.offFormula(exactly(ease, bench), PI.replace('.', bench.decimalMark), off);
  return { formula, source: words.derived };
}
