import { readLength } from '../lengths/read-length.ts';
import { withItsUnit } from './as-made.ts';
import type { KeptRun } from './garment.ts';

type Unit = 'mm' | 'cm' | 'in';

const UNITS: readonly Unit[] = ['mm', 'cm', 'in'];

/**
 * The runs of a calculation kept by the first version of the record, which had one
 * run at most and what was measured among what was typed: `3=15.6; 5=30 1/8 in`.
 *
 * A bare measure is in the unit of everything bare beside it, which the draft
 * names; where it doesn't, in the one that comes nearest to the mark's plan.
 */
export function runsOfFirst(
  draft: Readonly<Record<string, string>>,
  planned: Readonly<Record<string, number>>,
): readonly KeptRun[] {
  const named = UNITS.find((unit) => unit === draft.u);
  const made = (draft.made ?? '').split(';').flatMap((pair) => {
    const cut = pair.indexOf('=');
    const label = pair.slice(0, cut).trim();
    const typed = pair.slice(cut + 1).trim();
    if (cut < 1 || label === '' || typed === '') return [];
    const plan = Object.hasOwn(planned, label) ? planned[label] : undefined;
    return [[label, withItsUnit(typed, named ?? nearest(typed, plan))] as const];
  });
  const runs = Object.keys(planned).length > 0 || made.length > 0;
  return runs ? [{ planned, made: Object.fromEntries(made) }] : [];
}

/** The unit in which a bare measure comes nearest to a plan, in 1/8000 mm. */
function nearest(typed: string, plan: number | undefined): Unit | undefined {
  if (plan === undefined) return undefined;
  const offs = UNITS.flatMap((unit) => {
    const reading = readLength(typed, unit);
    return reading.ok ? [{ unit, off: Math.abs(reading.value - plan) }] : [];
  });
  return offs.sort((a, b) => a.off - b.off)[0]?.unit;
}
