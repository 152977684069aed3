import { tiersWords as words } from '#words/calculations/tiers-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { needed } from '../../calculation/needed.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import type { Tiers } from '../../sewing/fullness/tiers.ts';
import type { TiersAsked } from './fields.ts';

const { formula } = words;

/** How tiers were got, with their numbers in it. */
export function tiersWorkings(asked: TiersAsked, plan: Tiers, bench: Bench): Working[] {
  return [
    { formula: rows(asked, plan, bench), source: words.source },
    { formula: depths(asked, plan, bench), source: words.depthsSource(asked.by) },
    { formula: strips(asked, plan, bench), source: words.stripsSource },
  ];
}

/** Finer than it is said elsewhere: it stands in a formula. */
function number(x: number, bench: Bench): string {
  return shownNumber(x, 4, bench.decimalMark);
}

function rows({ edge, ratios }: TiersAsked, { tiers }: Tiers, bench: Bench): string {
  return tiers
    .map(({ strip }, i) => {
      const ratio = ratios[ratios.length === 1 ? 0 : i] ?? 1;
      const above = tiers[i - 1]?.strip ?? edge;
      return formula.row(number(ratio, bench), exactly(above, bench), exactly(strip, bench));
    })
    .join('');
}

function depths(asked: TiersAsked, { tiers, long }: Tiers, bench: Bench): string {
  const show = (x: ExactLength) => exactly(x, bench);
  if (asked.by === 'own')
    return formula.sum(
      tiers.map(({ deep }) => show(deep)),
      show(long),
    );
  const { count, growth } = needed({ count: asked.count, growth: asked.growth });
  const first = show(tiers[0]?.deep ?? long);
  if (growth === 1) return formula.equal(show(long), count, first);
  return formula.growing(show(long), number(growth, bench), count, first);
}

function strips({ cloth, seam }: TiersAsked, { tiers, cloth: all }: Tiers, bench: Bench): string {
  const show = (x: ExactLength) => exactly(x, bench);
  const each = formula.each(show(cloth), seam === 0 ? '' : show(seam));
  const counted = tiers.map(({ strip, strips: { count } }) =>
    formula.strips(
      show(strip),
      each,
      shownNumber(strip / exactLength(cloth - 2 * seam), 2, bench.decimalMark),
      count,
    ),
  );
  const terms = tiers.map(({ strips: { count }, cutDeep }) => formula.term(count, show(cutDeep)));
  return counted.join('') + formula.cloth(terms, show(all));
}
