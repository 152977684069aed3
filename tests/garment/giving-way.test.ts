import { expect, test } from 'vitest';
import { givingFields } from '../../src/garment/actions/giving-way.ts';
import { begin } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Fact, Kept, Parts } from '../../src/garment/record/record.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const CUT = homeOf('back', '', 'cut-length');
const number = (parts: Parts) => ({ name: 'n', kind: 'length', rank: 1, parts });
const hem = (depth: Parts, rank = 1) => ({
  ...{ name: 'Hem', calculation: 'toy-hem', rank },
  fields: { depth },
});
const back = (fields: object, more: object = {}) => ({
  ...{ name: 'Back', calculation: 'toy-piece', rank: 9, fields },
  ...more,
});

/** Invented: a back that is cut, whatever becomes of what was asked. */
function giving(set: { works: Kept; quantities?: Kept }, home = CUT) {
  const fact: Fact = {
    ...{ home, shown: mm(650), plan: mm(650), tape: 8000, rule: 1, read: '', when: 1 },
  };
  return givingFields(begin(garmentOf({ ...set, facts: { cut: fact } }), KNOWN), home);
}
const names = (set: { works: Kept; quantities?: Kept }) =>
  giving(set).map(({ place }) =>
    'quantity' in place ? place.quantity : `${place.work} ${place.field}`,
  );

test('a number gives that an allowance takes, whatever else takes it, and whichever is met first', () => {
  const quantities = { q: number(typed('3')), r: number([quantity('q')]) };
  const q = [quantity('q')];
  expect(names({ quantities, works: { back: back({ length: q, top: typed('1') }) } })).toEqual([
    'back top',
  ]);
  expect(names({ quantities, works: { back: back({ length: q, top: q }) } })).toEqual(['q']);
  // By way of a hem, before a piece whose length takes it as well.
  const works = {
    hem: hem(q),
    piece: back({ length: q }, { rank: 2 }),
    back: back({
      ...{ length: typed('60'), top: [output('hem', 'allowance')] },
      bottom: [output('piece', 'cut-length')],
    }),
  };
  expect(names({ quantities, works })).toEqual(['q']);
  // A number that is another one gives that one.
  expect(names({ quantities, works: { back: back({ top: [quantity('r')] }) } })).toEqual(['q']);
});

test('what is typed of one side is its own, and the rest is shared', () => {
  const sides = { sides: ['left', 'right'], own: { right: { bottom: typed('2') } } };
  const fields = { length: typed('60'), top: typed('1'), bottom: typed('3') };
  const works = { back: back(fields, sides) };
  const at = (side: string) =>
    giving({ works }, homeOf('back', side, 'cut-length')).map(({ place, value }) => [place, value]);
  const place = (field: string) => ({ work: 'back', field });
  expect(at('right')).toStrictEqual([
    [place('top'), mm(10)],
    [{ ...place('bottom'), side: 'right' }, mm(20)],
  ]);
  expect(at('left')).toStrictEqual([
    [place('top'), mm(10)],
    [place('bottom'), mm(30)],
  ]);
});

test('of a sum of two texts, a reading with its doubt, or what can’t be read, none is the number', () => {
  const top = (parts: Parts) =>
    names({ works: { back: back({ length: typed('60'), top: parts }) } });
  expect(top(typed('1'))).toEqual(['back top']);
  expect(top([...typed('1'), ...typed(' + 2')])).toEqual([]);
  expect(top(typed('1 ± 0.1 cm'))).toEqual([]);
  expect(top(typed('1 yard or so'))).toEqual([]);
});

test('nothing gives behind what isn’t made, and numbers that take each other are met once', () => {
  const state = begin(garmentOf({ works: { back: back({ top: typed('1') }) } }), KNOWN);
  expect(givingFields(state, CUT)).toEqual([]);
  expect(givingFields(state, 'none||none')).toEqual([]);
  const round = { a: hem([output('b', 'allowance')], 1), b: hem([output('a', 'allowance')], 2) };
  const works = { ...round, back: back({ top: [output('a', 'allowance')], bottom: typed('2') }) };
  expect(names({ works })).toEqual(['back bottom']);
  const piece = (of: string) => back({ length: [output(of, 'finished-length')] });
  const long = { a: piece('b'), b: piece('a') };
  const cutTo = back({ length: [output('a', 'finished-length')], top: typed('1') });
  expect(names({ works: { ...long, back: cutTo } })).toEqual(['back top']);
});
