import type { Calculation, Draft, Field } from './calculation.ts';

/** Every field there is, those of the draft first, then those that a choice or a given field brings. */
export function fieldsEver(calculation: Pick<Calculation, 'fields'>, draft: Draft): Field[] {
  const found = new Map<string, Field>();
  const drafts = [draft];
  for (const one of drafts) {
    for (const field of calculation.fields(one)) {
      if (found.has(field.key)) continue;
      found.set(field.key, field);
      const values = field.kind === 'choice' ? field.options.map(({ value }) => value) : ['', '1'];
      drafts.push(...values.map((value) => ({ ...one, [field.key]: value })));
    }
  }
  return [...found.values()];
}
