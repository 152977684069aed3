import fc from 'fast-check';
import { expect, test } from 'vitest';
import { loadLast, openingDraft, saveLast } from '../../../src/app/start/last.ts';
import { saveBench } from '../../../src/app/start/save-bench.ts';
import { CHOICES, checkBench } from '../../../src/app/start/settings.ts';
import { inUnitOf } from '../../../src/calculation/other-unit.ts';
import { closures } from '../../../src/calculations/closures/closures.ts';
import { convert } from '../../../src/calculations/convert/convert.ts';
import { readLength } from '../../../src/lengths/read-length.ts';
import { benchOf } from '../../controls/helpers.ts';

test('whatever was kept, a bench is made of known settings', () => {
  fc.assert(
    fc.property(fc.anything(), (kept) => {
      const bench = checkBench(kept);
      for (const [key, choices] of Object.entries(CHOICES)) {
        expect(choices).toContain(bench[key as keyof typeof bench]);
      }
    }),
  );
});

test('kept settings are taken, unknown ones are as new', () => {
  expect(checkBench({ hand: 'left', unit: 'ell' })).toMatchObject({ hand: 'left', unit: 'cm' });
});

test('a calculation opens with the address, else with what it held last, else with its start', () => {
  const bench = benchOf();
  expect(openingDraft(convert, { length: '3' }, 'length=4', bench).draft.length).toBe('3');
  expect(openingDraft(convert, {}, 'length=4', bench).draft.length).toBe('4');
  expect(openingDraft(convert, {}, undefined, bench).draft.length).toBe('5/8 in');
});

test('a draft typed in inches means the same on a bench of centimetres', () => {
  const typed = { draft: closures.start(benchOf({ unit: 'in' })), page: { u: 'in' } };
  const bench = benchOf();
  const { draft: here, page } = inUnitOf(bench, closures, typed);
  expect(here.opening).toBe('18 1/4 in');
  expect(page.u).toBe('cm');
  expect(readLength(here.opening ?? '', 'cm')).toEqual(readLength('18 1/4', 'in'));
});

test('a setting that is changed leaves what another tab, or a bench not seen yet, has set', async () => {
  let kept: unknown = { unit: 'in', inch: '1/8in' };
  const store = {
    transact: async () => Promise.reject(new Error('not asked')),
    load: async () => kept,
    change: async (_: string, by: (old: unknown) => unknown) => {
      kept = by(kept);
    },
  };
  await saveBench(store, benchOf(), benchOf({ hand: 'left' }));
  expect(kept).toMatchObject({ hand: 'left', unit: 'in', inch: '1/8in' });
  await saveBench(store, benchOf({ unit: 'in' }), benchOf({ unit: 'cm' }));
  expect(kept).toMatchObject({ hand: 'left', unit: 'cm', inch: '1/8in' });
});

test('what a damaged store holds of the last typing is left out', async () => {
  const store = {
    transact: async () => Promise.reject(new Error('not asked')),
    load: async () => ({ convert: 'length=4', closures: 7 }),
    change: async () => {},
  };
  expect(await loadLast(store)).toEqual({ convert: 'length=4' });
});

test('the last typing of one calculation is kept beside what other tabs kept', async () => {
  let kept: unknown = { closures: 'count=7' };
  const store = {
    transact: async () => Promise.reject(new Error('not asked')),
    load: async () => kept,
    change: async (_: string, by: (old: unknown) => unknown) => {
      kept = by(kept);
    },
  };
  await saveLast(store, 'convert', 'length=1+%2B+2');
  expect(kept).toEqual({ closures: 'count=7', convert: 'length=1+%2B+2' });
  expect(openingDraft(convert, {}, (await loadLast(store)).convert, benchOf()).draft.length).toBe(
    '1 + 2',
  );
});

test.each([null, 7, 'x', [], { a: {} }])('a last typing damaged to %j is none', async (kept) => {
  const store = {
    transact: async () => Promise.reject(new Error('not asked')),
    load: async () => kept,
    change: async () => {},
  };
  for (const query of Object.values(await loadLast(store))) expect(typeof query).toBe('string');
});
