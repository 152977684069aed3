import type { Calculation, Draft, Field } from './calculation.ts';

/** Every field there is, those of the draft first, then those that only other choices bring, however many of them together. */
export function fieldsEver(
  calculation: Pick<Calculation, 'fields' | 'ever'>,
  draft: Draft,
): readonly Field[] {
  return calculation.ever?.(draft) ?? calculation.fields(draft);
}
