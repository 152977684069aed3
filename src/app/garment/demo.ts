import { demoWords } from '#words/demo-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { CALCULATIONS } from '../../calculations/list.ts';
import { demoGarment } from '../../garment/demo.ts';
import type { Garment, Kept } from '../../garment/garment.ts';
import { keptOf } from '../../garment/kept.ts';
import { draftFor } from '../../garment/plan.ts';
import { part } from './deeds.ts';

/** The demo's unit: what is typed in it is in centimetres, whatever the bench is set to. */
const UNIT = 'cm';

/** The invented garment, worked out as a maker's own would be. */
export async function workedDemo(bench: Bench): Promise<Garment> {
  const demo = demoGarment(demoWords, crypto.randomUUID(), Date.now());
  const itsBench = { ...bench, unit: UNIT } as const;
  const worked = async (kept: Kept): Promise<Kept> => {
    const load = CALCULATIONS[kept.calculation];
    if (!load) throw new RangeError(`the demo asks for ${kept.calculation}`);
    const calculation = await part(load());
    const state = draftFor(calculation, kept, itsBench);
    return { ...kept, ...keptOf(calculation, state, itsBench, undefined) };
  };
  return { ...demo, kept: await Promise.all(demo.kept.map(worked)) };
}
