import type { Bench } from '../../../calculation/bench.ts';
import type { Quantity } from '../../../garment/record/record.ts';
import { isObject } from '../../../garment/record/sound-values.ts';
import { fieldText } from '../../../garment/work-out/field-text.ts';
import { foundText, valueText } from './value-text.ts';

/** A number of a quantity that nothing is in doubt of: in the unit it was typed in as it was typed. */
export function sureQuantity(
  { kind, parts }: Pick<Quantity, 'kind' | 'parts'>,
  value: number,
  bench: Bench,
): string {
  const asTyped = !isTaken(parts) && fieldText(parts).how.unit === bench.unit;
  return (asTyped ? valueText : foundText)(kind, value, bench);
}

/** Whether something is taken in it, so that it follows from others and isn't measured. */
export function isTaken(parts: unknown): boolean {
  return (
    Array.isArray(parts) &&
    parts.some((part) => isObject(part) && ('link' in part || 'put' in part))
  );
}
