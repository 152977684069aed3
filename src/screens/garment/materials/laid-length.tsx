import { layStaleWords as words } from '#words/garment/garment-lay-stale-words.ts';
import { materialsOf } from '../../../garment/materials/materials.ts';
import type { LaidProps } from '../measures/measures-props.ts';
import { laySaid } from './lay-stale.ts';

/** Whether the lay that a number is as long as still holds: found for these sizes, or for others. */
export function LaidLength({ state: { record, answer }, bench, lay: id }: LaidProps) {
  const lay = materialsOf(record, answer).all.find((one) => one.id === id)?.lay;
  if (!lay?.found) return <> · {words.gone}</>;
  return <> · {lay.stale ? laySaid({ answer, bench }, lay) : words.holds}</>;
}
