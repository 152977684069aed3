import { benchUnit } from '../lengths/unit.ts';
import type { Bench } from './bench.ts';
import type { Calculation } from './calculation.ts';
import { fieldsEver } from './fields-ever.ts';
import { readMade } from './made.ts';
import type { Page, PageState } from './page.ts';
import { withUnits } from './with-units.ts';

/**
 * What was typed on a bench of another unit, for this one: its bare lengths get
 * their unit written out, so that they go on meaning the same; also those that
 * show only once something else is chosen.
 */
export function inUnitOf(
  bench: Bench,
  calculation: Calculation,
  { draft, page }: PageState,
): PageState {
  const unit = benchUnit(page.u) ?? bench.unit;
  const lengths = fieldsEver(calculation, draft).filter(
    ({ kind, key }) => (kind === 'length' || kind === 'lengths') && draft[key] !== undefined,
  );
  const pairs = lengths.map(({ key }) => [key, withUnits(draft[key] ?? '', unit)] as const);
  return {
    draft: { ...draft, ...Object.fromEntries(pairs) },
    page: { ...page, ...measuresIn(page, unit), u: bench.unit },
  };
}

/** What was measured of the marks: in an old address it may be without its unit. */
function measuresIn(page: Page, unit: Bench['unit']): Page {
  const pairs = Object.entries(page)
    .filter(([key]) => /^(made|was)(-\d+)?$/.test(key))
    .map(([key, text]) => {
      const measures = [...readMade(text ?? '')];
      return [
        key,
        measures.map(([label, typed]) => `${label}=${withUnits(typed, unit)}`).join('; '),
      ];
    });
  return Object.fromEntries(pairs);
}
