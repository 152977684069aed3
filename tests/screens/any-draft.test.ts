import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Calculation, Draft } from '../../src/controls/calculation.ts';
import { buttonhole } from '../../src/screens/buttonhole/buttonhole.ts';
import { centre } from '../../src/screens/centre/centre.ts';
import { closures } from '../../src/screens/closures/closures.ts';
import { convert } from '../../src/screens/convert/convert.ts';
import { hem } from '../../src/screens/hem/hem.ts';
import { seam } from '../../src/screens/seam/seam.ts';
import { sizes } from '../../src/screens/sizes/sizes.ts';
import { benchOf } from '../controls/helpers.ts';

const typed = fc.oneof(
  fc.constantFrom(
    '',
    '0',
    '-1',
    '1/0',
    '5/8',
    '46.3',
    '1 − 2',
    '1e9',
    '999999 m',
    '2001',
    '1; 2; 2',
  ),
  fc.string({ maxLength: 12 }),
  fc.integer({ min: -5, max: 4000 }).map(String),
);
const unit = fc.constantFrom('cm' as const, 'mm' as const, 'in' as const);

/** Every draft an address can hold: known choices or nonsense in every field. */
function draftsOf(calculation: Calculation) {
  const keys = Object.keys(calculation.start(benchOf()));
  const choices = calculation
    .fields(calculation.start(benchOf()))
    .flatMap((field) =>
      field.kind === 'choice'
        ? [[field.key, field.options.map(({ value }) => value)] as const]
        : [],
    );
  const known = Object.fromEntries(choices);
  const entries = keys.map((key) => {
    const options = known[key];
    return [key, options ? fc.oneof(fc.constantFrom(...options), typed) : typed] as const;
  });
  return fc.record(Object.fromEntries(entries), { requiredKeys: [] });
}

test.each([convert, sizes, closures, buttonhole, hem, seam, centre])(
  'whatever the address holds, $id answers or says why, in whole sentences',
  (calculation) => {
    fc.assert(
      fc.property(draftsOf(calculation), unit, (set, benchUnit) => {
        const bench = benchOf({ unit: benchUnit });
        const work = calculation.work({ ...calculation.start(bench), ...(set as Draft) }, bench);
        if (!work.ok) {
          expect(work.faults.length).toBeGreaterThan(0);
          return;
        }
        const { runs, ...said } = work.answer;
        expect(JSON.stringify(said)).not.toMatch(/NaN|undefined|Infinity|\[object/);
        for (const { run } of runs) {
          for (const { at } of run.marks) expect(Number.isFinite(at)).toBe(true);
        }
      }),
      { numRuns: 400 },
    );
  },
);
