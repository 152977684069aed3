import type { Bench } from '../calculation/bench.ts';
import type { Calculation, NamedRun } from '../calculation/calculation.ts';
import { inUnitOf } from '../calculation/other-unit.ts';
import type { PageState } from '../calculation/page.ts';
import { stateOf } from '../calculation/parted.ts';
import { benchUnit } from '../lengths/unit.ts';
import type { MarkKind } from '../sewing/run.ts';
import type { Kept } from './garment.ts';
import type { PlannedMark } from './which-mark.ts';

/** Marks that may stand for each other; lines of a hem or a mitre are each for itself. */
const ALIKE: ReadonlySet<MarkKind> = new Set([
  'closure',
  'level',
  'sewn',
  'hole',
  'corner',
  'centre',
]);

/** Where the marks of a run are planned. One without a label is nothing to make. */
export function marksOf({ run }: NamedRun): PlannedMark[] {
  const alike = run.marks.every(({ kind, across }) => ALIKE.has(kind) && across === undefined);
  return run.marks
    .filter(({ label }) => label !== '')
    .map(({ label, at, kind }) => ({ label, at, sewn: kind === 'sewn', alike }));
}

/** What was typed, for this bench, with every field that was left as the calculation starts. */
export function draftFor(calculation: Calculation, kept: Kept, bench: Bench): PageState {
  const unit = benchUnit(kept.draft.u) ?? bench.unit;
  const { draft, page } = stateOf(kept.draft);
  const state = {
    draft: { ...calculation.start({ ...bench, unit }), ...draft },
    page: { u: unit, ...page },
  };
  return unit === bench.unit ? state : inUnitOf(bench, calculation, state);
}
