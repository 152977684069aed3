import { benchUnit } from '../lengths/unit.ts';
import type { Bench } from './bench.ts';
import type { Calculation, Draft } from './calculation.ts';
import { fieldsEver } from './fields-ever.ts';
import { readMade } from './made.ts';
import { withUnits } from './with-units.ts';

/**
 * A draft typed on a bench of another unit, for this one: its bare lengths get
 * their unit written out, so that they go on meaning the same; also those that
 * show only once something else is chosen.
 */
export function inUnitOf(bench: Bench, calculation: Calculation, draft: Draft): Draft {
  const unit = benchUnit(draft.u) ?? bench.unit;
  const lengths = fieldsEver(calculation, draft).filter(
    ({ kind, key }) => (kind === 'length' || kind === 'lengths') && draft[key] !== undefined,
  );
  const pairs = lengths.map(({ key }) => [key, withUnits(draft[key] ?? '', unit)] as const);
  return { ...draft, ...Object.fromEntries(pairs), ...measuresIn(draft, unit), u: bench.unit };
}

/** What was measured of the marks: in an old address it may be without its unit. */
function measuresIn(draft: Draft, unit: Bench['unit']): Draft {
  const pairs = Object.entries(draft)
    .filter(([key]) => /^(made|was)(-\d+)?$/.test(key))
    .map(([key, text]) => {
      const measures = [...readMade(text)];
      return [
        key,
        measures.map(([label, typed]) => `${label}=${withUnits(typed, unit)}`).join('; '),
      ];
    });
  return Object.fromEntries(pairs);
}
