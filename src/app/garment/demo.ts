import { demoWords } from '#words/garment/demo-words.ts';
import type { Outputs } from '../../calculation/output.ts';
import { OUTPUTS } from '../../calculations/list.ts';
import { calculationsOf, type Demo, demoGarment } from '../../garment/actions/demo.ts';
import { SHIRT } from '../../garment/actions/demo-shirt.ts';
import { SKIRT } from '../../garment/actions/demo-skirt.ts';
import { WAISTCOAT } from '../../garment/actions/demo-waistcoat.ts';
import type { Garment } from '../../garment/record/record.ts';
import type { InventedGarment } from '../../screens/garments/deeds.ts';
import { part } from './deeds.ts';

const DEMOS: Readonly<Record<InventedGarment, Demo>> = {
  waistcoat: WAISTCOAT,
  skirt: SKIRT,
  shirt: SHIRT,
};

/** An invented garment, worked out and partly made as a maker's own would be. */
export async function workedDemo(which: InventedGarment): Promise<Garment> {
  const demo = DEMOS[which];
  const known = await Promise.all(
    calculationsOf(demo).map(async (id): Promise<[string, Outputs]> => {
      const load = OUTPUTS[id];
      if (!load) throw new RangeError(`the demo asks for ${id}`);
      return [id, await part(load())];
    }),
  );
  return demoGarment(demo, demoWords[which], crypto.randomUUID(), Date.now(), new Map(known));
}
