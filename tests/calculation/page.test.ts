import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { heldOf } from '../../src/calculation/page.ts';
import { stateOf } from '../../src/calculation/parted.ts';
import { CALCULATIONS } from '../../src/calculations/list.ts';
import { benchOf } from '../controls/helpers.ts';

const PAGE = {
  ...{ u: 'cm', kept: 'coat.k', seen: '1a2b', taped: 'top', asked: '2=9', run: '1', stretch: '3' },
  ...{ counting: 'count', 'counting-from': 'other', 'count-dropped': '5', 'other-dropped': '' },
  ...{ paper: 'a4', 'paper-margin': '5', 'paper-name': 'Coat', 'paper-what': 'run-1' },
  ...{ at: '2', made: '1=3 cm', was: '', plan: 'q', earlier: 'r 1=2 cm', 'made-2': '1=4 cm' },
};

test('what was held is parted into the fields and what the page keeps, and is the same together', () => {
  const fields = { depth: '2', count: '5', into: 'halves', papers: '1', 'made-of': 'wool' };
  const state = stateOf({ ...PAGE, ...fields });
  expect(state).toEqual({ draft: fields, page: PAGE });
  expect(heldOf(state)).toEqual({ ...fields, ...PAGE });
});

test('law: nothing held is lost, and no key is in both', () => {
  const key = fc.oneof(fc.constantFrom(...Object.keys(PAGE), 'depth'), fc.string({ minLength: 1 }));
  fc.assert(
    fc.property(fc.dictionary(key, fc.string(), { noNullPrototype: true }), (held) => {
      const { draft, page } = stateOf(held);
      expect(heldOf({ draft, page })).toEqual(held);
      expect(Object.keys(draft).filter((one) => Object.hasOwn(page, one))).toEqual([]);
      expect(Object.keys(page).every((one) => !stateOf({ [one]: '' }).draft[one])).toBe(true);
    }),
    { seed: 1313 },
  );
});

test.each(Object.entries(CALCULATIONS))(
  '%s has no field that a page keeps for itself, and none it says itself is left in its page',
  async (_, load) => {
    const calculation = await load();
    const start = calculation.start(benchOf());
    expect(calculation.part({ ...start, ...PAGE })).toEqual({ draft: start, page: PAGE });
  },
);

test('no calculation reads what a page keeps: only the list parts it, and the first page', () => {
  const folder = join(import.meta.dirname, '../../src/calculations');
  const reads = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    (path) =>
      path.endsWith('.ts') &&
      /calculation\/(page|page-keys|parted|made|as-made)\.ts'/.test(
        readFileSync(join(folder, path), 'utf8'),
      ),
  );
  expect(reads.sort()).toEqual(['convert/at-once.ts', 'convert/convert.ts', 'list.ts']);
});
