import { isBodyMeasure } from '../../sewing/sources/body-measures.ts';
import { type OddMeasure, oddMeasure } from '../../sewing/wearer/odd-measure.ts';
import { homeOf } from '../record/home.ts';
import type { Answer } from './work-out.ts';

/**
 * What is to be asked about a measure of a body, by itself and beside the others of this garment; nothing
 * of one that is said to be final. It is worked with all the same.
 */
export function oddQuantity(answer: Answer, id: string): OddMeasure | undefined {
  const quantity = answer.sound.quantities.get(id);
  const value = lengthOf(answer, id);
  if (quantity?.measure === undefined || quantity.final || value === undefined) return undefined;
  return oddMeasure(quantity.measure, value, bodyMeasured(answer));
}

/** Every measure of a body that has a number, several where left and right were taken. */
function bodyMeasured(answer: Answer): Map<string, number[]> {
  const taken = new Map<string, number[]>();
  for (const [id, { measure }] of answer.sound.quantities) {
    const value = lengthOf(answer, id);
    if (!isBodyMeasure(measure) || value === undefined) continue;
    taken.set(measure, [...(taken.get(measure) ?? []), value]);
  }
  return taken;
}

function lengthOf({ sound, values }: Answer, id: string): number | undefined {
  const result = values.get(homeOf(id));
  const isLength = sound.quantities.get(id)?.kind === 'length';
  return isLength && result?.ok && typeof result.value === 'number' ? result.value : undefined;
}
