import fc from 'fast-check';
import type { Calculation, Draft } from '../../src/calculation/calculation.ts';
import { CALCULATIONS } from '../../src/calculations/list.ts';
import { benchOf } from '../controls/helpers.ts';

/** Every choice there is, also those that only another choice brings: what it offers, and a draft that asks for it. */
export function choosing(calculation: Calculation) {
  const found = new Map<string, { values: readonly string[]; draft: Draft }>();
  const look = (draft: Draft) => {
    for (const field of calculation.fields(draft)) {
      if (field.kind !== 'choice' || found.has(field.key)) continue;
      const values = field.options.map(({ value }) => value);
      found.set(field.key, { values, draft });
      for (const value of values) look({ ...draft, [field.key]: value });
    }
  };
  look(calculation.start(benchOf()));
  return found;
}

/** What every choice offers. */
export function choicesOf(calculation: Calculation): Map<string, readonly string[]> {
  return new Map([...choosing(calculation)].map(([key, { values }]) => [key, values]));
}

/**
 * Every draft an address can hold: known choices or nonsense in every field.
 *
 * @param typed what may stand in any field
 * @param sensible what gives an answer often enough in a field to type in
 */
export function draftsOf(
  calculation: Calculation,
  typed: fc.Arbitrary<string>,
  sensible: fc.Arbitrary<string>,
) {
  const known = choicesOf(calculation);
  const keys = new Set([...Object.keys(calculation.start(benchOf())), ...known.keys()]);
  const entries = [...keys].map((key) => {
    const options = known.get(key);
    return [
      key,
      options
        ? fc.oneof({ weight: 9, arbitrary: fc.constantFrom(...options) }, typed)
        : fc.oneof(typed, sensible),
    ] as const;
  });
  return fc.record(Object.fromEntries(entries), { requiredKeys: [] });
}

/** What is typed at a bench, small and large, in every unit. */
const length = fc.oneof(
  fc.integer({ min: 1, max: 400 }).map((n) => String(n / 10)),
  fc.integer({ min: 1, max: 9999 }).map((n) => String(n / 100)),
  fc.integer({ min: 1, max: 160 }).map((n) => `${n}/16 in`),
  fc.integer({ min: 1, max: 60 }).map((n) => `${n} mm`),
  fc.integer({ min: 1, max: 99 }).map((n) => `${n} cm`),
);
const count = fc.integer({ min: 0, max: 30 }).map(String);
const list = fc.array(length, { minLength: 1, maxLength: 3 }).map((all) => all.join('; '));
const typed = fc.oneof(
  { weight: 8, arbitrary: length },
  { weight: 3, arbitrary: count },
  fc.constant(''),
  list,
);

/** Drafts with every choice made anyhow and a few fields typed into: those that give an answer. */
export function draftsNear(calculation: Calculation) {
  const some = fc.tuple(fc.nat(), fc.integer({ min: 0, max: 3 }));
  return fc.tuple(draftsOf(calculation, typed, typed), some).map(([set, [from, many]]): Draft => {
    const start = calculation.start(benchOf());
    const fields = calculation.fields({ ...start, ...(set as Draft) });
    const isChoice = (key: string) =>
      fields.some((one) => one.key === key && one.kind === 'choice');
    const all = Object.entries(set as Draft);
    const other = all.filter(([key]) => !isChoice(key));
    const turned = other.map((_, i) => other[(i + from) % other.length] ?? ['', '']);
    return Object.fromEntries([...all.filter(([key]) => isChoice(key)), ...turned.slice(0, many)]);
  });
}

/** Every calculation there is, as its page shows it. */
export const EVERY: readonly Calculation[] = await Promise.all(
  Object.values(CALCULATIONS).map((load) => load()),
);
