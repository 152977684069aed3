import { expect, test } from 'vitest';
import { newWork } from '../../src/app/garment/new-work.ts';
import type { Bench } from '../../src/calculation/bench.ts';
import type { Outputs } from '../../src/calculation/output.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { newGarment } from '../../src/garment/record/new-garment.ts';
import type { Garment, Work } from '../../src/garment/record/record.ts';
import { isUntouched } from '../../src/garment/work-out/untouched.ts';
import { workOut } from '../../src/garment/work-out/work-out.ts';
import { benchOf } from '../controls/helpers.ts';
import { KNOWN } from './trial/known.ts';

const UNITS = ['cm', 'mm', 'in'] as const;

const bare = newGarment('coat', 'Coat', 1);
const begun = (calculation: string, unit: Bench['unit']) =>
  newWork(calculation, 'It', bare, benchOf({ unit }));
const says = (work: Work, more: Partial<Garment> = {}) =>
  isUntouched(workOut({ ...bare, works: { it: work }, ...more }, KNOWN), 'it');

/** Fields that begin with a number, as typed by a maker. */
function numbered({ calculation, fields }: Work): string[] {
  const { specs } = (KNOWN.get(calculation) as Outputs).fields;
  return Object.keys(specs).filter(
    (key) =>
      !specs[key]?.choices && fields[key]?.some((part) => 'text' in part && part.text !== ''),
  );
}

const CALCULATIONS = [...KNOWN].filter(([, gives]) => typeof gives === 'object');

test.each(CALCULATIONS.map(([id]) => id))(
  '%s: what it begins with is an example on each bench, until one number of it is another',
  async (id) => {
    for (const unit of UNITS) {
      const work = await begun(id, unit);
      const typed = numbered(work);
      expect(says(work)).toBe(typed.length > 0);
      for (const key of typed) {
        const other = { ...work.fields, [key]: [{ text: '7.77', unit }] };
        expect(says({ ...work, fields: other }), key).toBe(false);
        const linked = { ...work.fields, [key]: [{ link: { quantity: 'q' } }] };
        expect(says({ ...work, fields: linked }), key).toBe(false);
      }
    }
  },
);

test('what is chosen makes no number the maker’s own', async () => {
  const work = await begun('closures', 'cm');
  expect(
    says({ ...work, fields: { ...work.fields, item: [{ text: 'button', unit: 'cm' }] } }),
  ).toBe(true);
});

test('a number that was taken out is no example, and one that was never there changes nothing', async () => {
  const work = await begun('closures', 'cm');
  const { opening: _, ...without } = work.fields;
  expect(says({ ...work, fields: without })).toBe(false);
  const given = Object.entries(work.fields).filter(
    ([, [part]]) => part && 'text' in part && part.text !== '',
  );
  expect(given.length).toBeLessThan(Object.keys(work.fields).length);
  expect(says({ ...work, fields: Object.fromEntries(given) })).toBe(true);
});

test('it is the maker’s own once it is said to be final, has a side of its own, or something is made', async () => {
  const work = await begun('closures', 'cm');
  expect(says({ ...work, final: true })).toBe(false);
  expect(says({ ...work, sides: ['left', 'right'] })).toBe(true);
  const own = { right: { opening: [{ text: '44', unit: 'cm' as const }] } };
  expect(says({ ...work, sides: ['left', 'right'], own })).toBe(false);
  const home = homeOf('it', '', 'marks');
  const mark = { rank: 0, of: 7, asked: 96_000 };
  const fact = { home, shown: 96_000, plan: 96_000, tape: 8_000, rule: 1, read: '', when: 1, mark };
  expect(says(work, { facts: { one: fact } })).toBe(false);
  expect(says(work, { facts: { one: { home, before: true, when: 1 } } })).toBe(false);
  const elsewhere = { ...fact, home: homeOf('other', '', 'marks') };
  expect(says(work, { facts: { one: elsewhere } })).toBe(true);
});

test('of what isn’t there, or isn’t known here, nothing is said', async () => {
  const work = await begun('closures', 'cm');
  expect(says({ ...work, calculation: 'of a newer build' })).toBe(false);
  expect(isUntouched(workOut(bare, KNOWN), 'it')).toBe(false);
});

test('a garment that is invented says it of itself, and of none of its works', async () => {
  const work = await begun('closures', 'cm');
  expect(says(work, { invented: true })).toBe(false);
});

test('whatever a damaged record holds there, it is no example, and nothing throws', async () => {
  const work = await begun('closures', 'cm');
  for (const parts of [7, null, 'x', {}, [null], [7], ['x'], [{ text: 7 }]]) {
    const fields = { ...work.fields, opening: parts } as unknown as Work['fields'];
    expect(says({ ...work, fields })).toBe(false);
  }
  for (const own of [7, null, 'x', { right: 7 }] as unknown as Work['own'][]) {
    expect(says({ ...work, sides: ['left', 'right'], own } as Work)).toBe(true);
  }
});
