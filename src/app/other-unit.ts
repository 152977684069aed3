import type { Bench } from '../controls/bench.ts';
import type { Calculation, Draft } from '../controls/calculation.ts';
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
  return { ...draft, ...Object.fromEntries(pairs), u: bench.unit };
}
