import fc from 'fast-check';
import type { Calculation, Draft } from '../../src/calculation/calculation.ts';
import { buttonhole } from '../../src/calculations/buttonhole/buttonhole.ts';
import { centre } from '../../src/calculations/centre/centre.ts';
import { closures } from '../../src/calculations/closures/closures.ts';
import { convert } from '../../src/calculations/convert/convert.ts';
import { corner } from '../../src/calculations/corner/corner.ts';
import { crossing } from '../../src/calculations/crossing/crossing.ts';
import { edging } from '../../src/calculations/edging/edging.ts';
import { facing } from '../../src/calculations/facing/facing.ts';
import { hem } from '../../src/calculations/hem/hem.ts';
import { lacing } from '../../src/calculations/lacing/lacing.ts';
import { parts } from '../../src/calculations/parts/parts.ts';
import { seam } from '../../src/calculations/seam/seam.ts';
import { sizes } from '../../src/calculations/sizes/sizes.ts';
import { benchOf } from '../controls/helpers.ts';

/** Every choice there is, also those that only another choice brings. */
export function choicesOf(calculation: Calculation): Map<string, readonly string[]> {
  const found = new Map<string, readonly string[]>();
  const look = (draft: Draft) => {
    for (const field of calculation.fields(draft)) {
      if (field.kind !== 'choice' || found.has(field.key)) continue;
      const values = field.options.map(({ value }) => value);
      found.set(field.key, values);
      for (const value of values) look({ ...draft, [field.key]: value });
    }
  };
  look(calculation.start(benchOf()));
  return found;
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

/** Every calculation there is. */
export const EVERY: readonly Calculation[] = [
  convert,
  sizes,
  closures,
  buttonhole,
  hem,
  facing,
  corner,
  seam,
  parts,
  centre,
  edging,
  crossing,
  lacing,
];
