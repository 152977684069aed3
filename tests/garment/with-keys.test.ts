import { expect, test } from 'vitest';
import { withKeys } from '../../src/garment/actions/with-keys.ts';
import type { Garment, Parts, Work } from '../../src/garment/record/record.ts';
import { garmentOf, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

/** As a garment of the second version is read: a strip of holes, made of rows known by their place alone. */
const strip = (fields: object) => ({
  ...{ name: 'Strip', calculation: 'toy-strip', rank: 1, older: 2 },
  fields: { length: typed('62.4'), pitch: typed('8', 'mm'), end: typed('0.4'), ...fields },
});
const fact = (home: string) => ({
  ...{ home, shown: 8, plan: 8, tape: 8, rule: 1, read: '', when: 1 },
});
const made = (fields: object, facts: object): Garment =>
  withKeys(garmentOf({ works: { s: strip(fields) }, facts } as never), KNOWN);

test('what is made of a row gets the row’s name; what is of no row there stays as it is', () => {
  const facts = {
    first: fact('s||#0'),
    second: fact('s||#1'),
    third: fact('s||#2'),
    other: fact('other||#0'),
    damaged: null,
    odd: 7,
  };
  const homes = (garment: Garment) =>
    Object.values(garment.facts).map((one) => (one as { home?: unknown } | null)?.home);
  // The length it is cut to, and how many holes there are, are no rows.
  const two = made({ rows: typed('two'), fit: typed('keep') }, facts);
  expect(homes(two)).toEqual([
    ...['s||holes', 's||holes-2', 's||#2', 'other||#0', undefined, undefined],
  ]);
  const one = made({ rows: typed('one'), fit: typed('keep') }, facts);
  expect(homes(one)).toEqual(['s||holes', 's||#1', 's||#2', 'other||#0', undefined, undefined]);
  expect(one.facts.other).toBe(facts.other);
  expect(one.facts).toMatchObject({ damaged: null, odd: 7 });
});

test('a work with an option that isn’t known here waits as it is for a build that knows it', () => {
  const works = { s: strip({ rows: typed('three') }), t: strip({ rows: typed('one') }) };
  const facts = { first: fact('s||#0'), other: fact('t||#0') };
  const garment = withKeys(garmentOf({ works, facts } as never), KNOWN);
  expect(garment.works.s).toBe(works.s);
  expect(garment.works.t).not.toHaveProperty('older');
  expect(garment.facts).toMatchObject({ first: { home: 's||#0' }, other: { home: 't||holes' } });
  // Alone it changes nothing, however often it is looked at.
  const alone = garmentOf({ works: { s: works.s }, facts } as never);
  expect(withKeys(alone, KNOWN)).toBe(alone);
});

test('a row that is begun is begun under its name', () => {
  const begun = { 's||#0': { count: 1, points: [[0, 8]], by: {} }, 'x||y': 7 };
  const garment = withKeys(garmentOf({ works: { s: strip({}) }, begun } as never), KNOWN);
  expect(garment.begun).toEqual({ 's||holes': begun['s||#0'], 'x||y': 7 });
});

test('fields that were left begin in the unit of what is typed beside them, with round numbers of it', () => {
  const fields = (girth: Parts) => {
    const band = { name: 'Band', calculation: 'band', rank: 1, older: 2, fields: { girth } };
    const { works } = withKeys(garmentOf({ works: { band } } as never), KNOWN);
    return (works.band as Work).fields as Record<string, Parts>;
  };
  expect(fields(typed('30', 'in')).wide).toEqual(typed('1 1/2', 'in'));
  expect(fields(typed('700', 'mm')).wide).toEqual(typed('40', 'mm'));
  // What is taken has no unit: that of what is typed behind it counts, else that of a new bench.
  const inches = [quantity('waist'), ...typed(' + 1', 'in')];
  expect(fields(inches).wide).toEqual(typed('1 1/2', 'in'));
  expect(fields(inches).girth).toBe(inches);
  expect(fields([quantity('waist')]).wide).toEqual(typed('4', 'cm'));
});
