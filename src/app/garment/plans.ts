import type { Bench } from '../../calculation/bench.ts';
import { planOf } from '../../calculation/made.ts';
import { CALCULATIONS } from '../../calculations/list.ts';
import { addressOf } from '../../garment/address.ts';
import type { Garment, Kept } from '../../garment/garment.ts';
import { draftFor } from '../../garment/plan.ts';

/** The plans of what is kept, run by run, for its measures to belong to; none where there is no answer. */
async function plansOf(kept: Kept, bench: Bench): Promise<string[]> {
  const { [kept.calculation]: load } = CALCULATIONS;
  // What can't be fetched says so where it is opened.
  const calculation = await load?.().catch(() => undefined);
  if (!calculation) return [];
  const work = calculation.work(draftFor(calculation, kept, bench).draft, bench);
  return work.ok ? work.answer.runs.map(({ run }) => planOf(run)) : [];
}

/** The address of something kept, with the plans its measures belong to. */
export async function openingOf(garment: Garment, kept: Kept, bench: Bench) {
  return addressOf(garment, kept, await plansOf(kept, bench));
}
