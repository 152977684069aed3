import { expect, test } from 'vitest';
import { LONGEST_NAME } from '../../src/garment/garment.ts';
import {
  type Material,
  MOST_CENTS,
  MOST_SPARE,
  materialsIn,
  WHOLE,
} from '../../src/garment/record/material.ts';
import { readRecord } from '../../src/garment/record/read-record.ts';
import { soundOf } from '../../src/garment/record/sound.ts';
import { LONGEST } from '../../src/lengths/length.ts';
import { garmentOf, typed } from './trial/garments.ts';

const RECORD = garmentOf({
  quantities: { front: { name: 'Front edge', kind: 'length', rank: 1, parts: typed('46.3') } },
});

/** The part that is damaged, or that none is. */
function partOf(read: unknown): string {
  const found = readRecord(read);
  if (found.ok) return 'none';
  return found.damage.kind === 'damaged' ? found.damage.part : found.damage.kind;
}

test.each([
  ['id', ['', '  ', 5, undefined, ['g'], 'n'.repeat(LONGEST_NAME + 1)]],
  ['name', ['', ' ', null, 7, 'n'.repeat(LONGEST_NAME + 1)]],
  ['invented', ['no', 0, undefined]],
  ['changed', ['1', Number.NaN, Number.POSITIVE_INFINITY, undefined, null]],
  ['edits', [-1, '3', undefined, Number.NaN]],
  ['quantities', [[], 7, 'x']],
  ['works', [[], 7]],
  ['facts', [[], JSON.parse('{"__proto__": {}}')]],
  ['begun', [[]]],
  ['decisions', [[]]],
  ['passed', [[], 7, JSON.parse('{"__proto__": true}')]],
  ['notes', [[]]],
  ['materials', [[]]],
  ['lays', [[]]],
])('a record of this version whose %s is of another kind is damaged in that part', (part, bad) => {
  for (const value of bad) expect(partOf({ ...RECORD, [part]: value }), `${value}`).toBe(part);
});

test('what is no record at all is none, and one of a newer version says so', () => {
  for (const none of [null, undefined, [], 7, 'x', {}]) expect(partOf(none)).toBe('not-a-garment');
  expect(partOf({ version: 4 })).toBe('newer');
});

test('as long a name as can be, no edits yet, and parts that are missing are read', () => {
  const name = 'n'.repeat(LONGEST_NAME);
  const { quantities: _, works: __, ...bare } = { ...RECORD, name, edits: 0, changed: -5 };
  expect(readRecord(bare)).toEqual({
    ok: true,
    value: { ...bare, quantities: {}, works: {} },
  });
});

/** All that can be said of a material at once. */
const LINEN: Material = {
  ...{ name: 'Linen', kind: 'cloth', rank: 2, width: 1, folded: true, repeat: 1, unit: 1 },
  ...{ spare: 0, shrinksAlong: 0, shrinksAcross: WHOLE - 1, there: 0, more: 1 },
  price: { cents: 0, per: 1 },
  serves: { front: true, back: false },
  long: { tie: 1 },
};
const isRead = (material: unknown) => {
  const { said, unsound } = materialsIn({ ...RECORD, materials: { linen: material } });
  expect(unsound).toEqual(said.has('linen') ? [] : ['linen']);
  return said.get('linen') === material;
};
const AMOUNT = [
  [1, LONGEST],
  [0, LONGEST + 1, 1.5, '8', null],
] as const;

test.each([
  ['name', ['', 'n'.repeat(LONGEST_NAME)], [7, [], 'n'.repeat(LONGEST_NAME + 1)]],
  ['kind', ['thread'], ['toString', 7, ['cloth']]],
  ['rank', [-1, 0.5], ['1', Number.NaN]],
  ['width', ...AMOUNT],
  ['folded', [true], [false, 1]],
  ['repeat', ...AMOUNT],
  ['unit', ...AMOUNT],
  ['spare', [0, MOST_SPARE], [-1, MOST_SPARE + 1, 0.5]],
  ['shrinksAlong', [0, WHOLE - 1], [-1, WHOLE, 0.5]],
  ['shrinksAcross', [0, WHOLE - 1], [-1, WHOLE, 0.5]],
  ['there', [0, LONGEST], [-1, LONGEST + 1, '8']],
  ['more', ...AMOUNT],
  ['price', [{ cents: MOST_CENTS, per: LONGEST }], [null, [], 7, { cents: 1 }, { per: 1 }]],
  [
    'price',
    [],
    [
      { cents: MOST_CENTS + 1, per: 1 },
      { cents: -1, per: 1 },
      { cents: 1, per: 0 },
    ],
  ],
  ['serves', [{}], [[], 7, { front: 1, back: true }]],
  ['long', [{}, { tie: LONGEST }], [[], 7, { tie: 0, band: 1 }]],
])('the %s of a material: what can be, and what can’t be worked with', (key, good, bad) => {
  expect(isRead(LINEN)).toBe(true);
  for (const value of [...good, undefined]) {
    expect(isRead({ ...LINEN, [key]: value }), `${value}`).toBe(true);
  }
  for (const value of bad) expect(isRead({ ...LINEN, [key]: value }), `${value}`).toBe(false);
  for (const none of [null, [], 7, 'linen']) expect(isRead(none)).toBe(false);
});

test.each([
  [{ text: 'press from the left' }, true],
  [{ photo: 'p1' }, true],
  [{ text: 'press', photo: 'p1' }, true],
  [{}, false],
  [{ text: '' }, false],
  [{ text: 7 }, false],
  [{ text: 'press', photo: '' }, false],
  [{ text: 'press', photo: 7 }, false],
  [null, false],
  [['press'], false],
  ['press', false],
])('a note %j can be shown: %s', (note, is) => {
  const { notes } = soundOf({ ...RECORD, notes: { 'hem||': note } });
  expect(notes.has('hem||')).toBe(is);
});

test('quantities and works stand by rank, and where two have the same by id', () => {
  const quantity = (rank: number) => ({ name: 'n', kind: 'length', rank, parts: [] });
  const work = (rank: number) => ({ name: 'n', calculation: 'hem', rank, fields: {} });
  const { quantities, works } = soundOf(
    garmentOf({
      quantities: { c: quantity(2), b: quantity(1), a: quantity(2) },
      works: { z: work(2), y: work(2), x: work(1) },
    }),
  );
  expect([...quantities.keys()]).toEqual(['b', 'a', 'c']);
  expect([...works.keys()]).toEqual(['x', 'y', 'z']);
});
