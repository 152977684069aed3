import type { Bench } from '../controls/bench.ts';
import type { Calculation, Draft } from '../controls/calculation.ts';
import { readMade } from '../controls/made.ts';
import { withUnits } from '../controls/with-units.ts';
import { CHOICES } from './settings.ts';

/**
 * A draft typed on a bench of another unit, for this one: its bare lengths get
 * their unit written out, so that they go on meaning the same.
 */
export function inUnitOf(bench: Bench, calculation: Calculation, draft: Draft): Draft {
  const unit = CHOICES.unit.find((known) => known === draft.u) ?? bench.unit;
  const lengths = calculation
    .fields(draft)
    .filter((field) => field.kind === 'length' || field.kind === 'lengths');
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
