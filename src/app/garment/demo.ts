import { demoWords } from '#words/garment/demo-words.ts';
import type { Outputs } from '../../calculation/output.ts';
import { OUTPUTS } from '../../calculations/list.ts';
import { DEMO_CALCULATIONS, demoGarment } from '../../garment/actions/demo.ts';
import type { Garment } from '../../garment/record/record.ts';
import { part } from './deeds.ts';

/** The invented garment, worked out and partly made as a maker's own would be. */
export async function workedDemo(): Promise<Garment> {
  const known = await Promise.all(
    DEMO_CALCULATIONS.map(async (id): Promise<[string, Outputs]> => {
      const load = OUTPUTS[id];
      if (!load) throw new RangeError(`the demo asks for ${id}`);
      return [id, await part(load())];
    }),
  );
  return demoGarment(demoWords, crypto.randomUUID(), Date.now(), new Map(known));
}
