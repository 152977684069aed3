import type { Bench } from '../controls/bench.ts';
import type { Calculation, Draft, NamedRun } from '../controls/calculation.ts';
import type { Kept } from '../garment/garment.ts';
import type { PlannedMark } from '../garment/planned-anew.ts';
import { inUnitOf } from './other-unit.ts';
import { CHOICES } from './settings.ts';

/** Where the marks of a run are planned. One without a label is nothing to make. */
export function marksOf({ run }: NamedRun): PlannedMark[] {
  return run.marks
    .filter(({ label }) => label !== '')
    .map(({ label, at, kind }) => ({ label, at, sewn: kind === 'sewn' }));
}

/** What was typed, for this bench, with every field that was left as the calculation starts. */
export function draftFor(calculation: Calculation, kept: Kept, bench: Bench): Draft {
  const unit = CHOICES.unit.find((known) => known === kept.draft.u) ?? bench.unit;
  const draft = { ...calculation.start({ ...bench, unit }), u: unit, ...kept.draft };
  return unit === bench.unit ? draft : inUnitOf(bench, calculation, draft);
}
