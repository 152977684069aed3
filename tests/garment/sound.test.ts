import { expect, test } from 'vitest';
import { byId } from '../../src/garment/record/home.ts';
import {
  MOST_FACTS,
  MOST_ROW,
  MOST_WORKS,
  overLimit,
  sizeOf,
} from '../../src/garment/record/limits.ts';
import type { Work } from '../../src/garment/record/record.ts';
import { type Seen, soundOf } from '../../src/garment/record/sound.ts';
import { isRun } from '../../src/garment/record/sound-values.ts';
import { LONGEST } from '../../src/lengths/length.ts';
import { garmentOf, typed } from './trial/garments.ts';

const FAR = 2 * LONGEST;
const FACT = { home: 'a||b', shown: 5, plan: 5.5, tape: 8000, rule: 1, read: '', when: 1 };
const MARK = { rank: 1, of: 3, asked: 5 };
const POINTS = {
  count: 3,
  points: [
    [0, 5],
    [2, 20],
  ],
};
const BEGUN = { ...POINTS, by: {} };
const DECISION = { way: 'spread', facts: ['f'], asked: 5, tolerance: 1 };

const isFact = (fact: unknown) => soundOf(garmentOf({ facts: { f: fact } })).facts.size === 1;
const isBegun = (begun: unknown) => soundOf(garmentOf({ begun: { h: begun } })).begun.has('h');
const isDecided = (one: unknown) =>
  soundOf(garmentOf({ decisions: { h: one } })).decisions.has('h');
const NONE: readonly unknown[] = [null, 7, 'x', [], undefined];

test.each<[string, readonly unknown[], readonly unknown[]]>([
  ['home', ['x'], [7, undefined]],
  ['shown', [0, -5, FAR, -FAR], [0.5, '1', FAR + 1, undefined]],
  ['plan', [0.5, FAR], ['1', FAR + 1, null]],
  ['tape', [0], [-1, '1', FAR + 1, undefined]],
  ['rule', [2], ['1', undefined]],
  ['measured', [undefined, 5, FAR], [0.5, '5', FAR + 1, null]],
  ['mark', [undefined, MARK, { rank: 0, of: 1, asked: 0.5 }], [null, 7, [], { rank: 0, of: 1 }]],
  ['mark', [{ ...MARK, rank: MOST_ROW - 1, of: MOST_ROW }], [{ ...MARK, of: MOST_ROW + 1 }]],
  [
    'mark',
    [],
    [
      { ...MARK, rank: 3 },
      { ...MARK, rank: -1 },
      { ...MARK, rank: 0.5 },
    ],
  ],
  [
    'mark',
    [],
    [
      { ...MARK, of: '3' },
      { ...MARK, asked: '5' },
      { ...MARK, rank: '1' },
    ],
  ],
])('the %s of a fact: what can be, and what can’t be worked with', (key, good, bad) => {
  for (const value of good) expect(isFact({ ...FACT, [key]: value }), `${value}`).toBe(true);
  for (const value of bad) {
    expect(isFact({ ...FACT, [key]: value }), JSON.stringify(value)).toBe(false);
  }
  for (const none of NONE) expect(isFact(none)).toBe(false);
});

test('a row that is begun has points from its first mark to its last', () => {
  expect(isBegun(BEGUN)).toBe(true);
  expect(isBegun({ ...BEGUN, count: 1, points: [[0, 5]] })).toBe(true);
  const points = (...all: unknown[]) => isBegun({ ...BEGUN, points: all });
  expect(points([0, 5], [1, 9], [2, 20])).toBe(true);
  for (const bad of [
    ...[points([1, 5], [2, 20]), points([0, 5], [1, 9]), points([0, 5], [0, 6], [2, 20])],
    ...[points([0, '5'], [2, 20]), points('x', [2, 20]), points(), points([0, 5], 7, [2, 20])],
    ...[points([0, 5], [2, FAR + 1]), points([0, 5], [-1, 5], [2, 20])],
    isBegun({ ...BEGUN, count: '3' }),
    isBegun({ ...BEGUN, points: {} }),
    isBegun({ ...BEGUN, by: [] }),
    isBegun({ ...BEGUN, by: undefined }),
  ]) {
    expect(bad).toBe(false);
  }
  const far = [
    [0, 5],
    [MOST_ROW, 20],
  ];
  expect(isBegun({ ...BEGUN, count: MOST_ROW + 1, points: far })).toBe(false);
  for (const none of NONE) expect(isBegun(none)).toBe(false);
});

test.each<[string, readonly unknown[], readonly unknown[]]>([
  ['way', ['as-begun', 'of a newer build'], [7, undefined]],
  ['facts', [[], ['f', 'g']], ['f', [7], ['f', 7], undefined]],
  ['asked', [0.5, FAR, POINTS], ['5', FAR + 1, {}, undefined]],
  ['tolerance', [0, FAR], ['1', FAR + 1, undefined]],
  ['allow', [undefined, 3], ['3', FAR + 1, null]],
])('the %s of a decision', (key, good, bad) => {
  for (const value of good) expect(isDecided({ ...DECISION, [key]: value })).toBe(true);
  for (const value of bad) {
    expect(isDecided({ ...DECISION, [key]: value }), JSON.stringify(value)).toBe(false);
  }
  for (const none of NONE) expect(isDecided(none)).toBe(false);
});

test('a row that stands in a link’s place: what can be, and what can’t be worked with', () => {
  const mark = { at: 0.5, label: '1', kind: 'hole' };
  const row = { datum: 'zero', length: 80, marks: [mark, { ...mark, at: 80, label: 'B' }] };
  const many = (count: number) => ({ ...row, marks: Array.from({ length: count }, () => mark) });
  const far = { ...row, length: FAR, marks: [{ ...mark, at: -FAR }] };
  for (const good of [row, { ...row, marks: [] }, far, many(MOST_ROW)]) {
    expect(isRun(good)).toBe(true);
  }
  const marks = [null, 7, [], { ...mark, at: '1' }, { ...mark, at: FAR + 1 }];
  const named = [
    { ...mark, label: 1 },
    { ...mark, kind: undefined },
  ];
  for (const bad of [
    ...[...NONE, many(MOST_ROW + 1), { ...row, marks: { 0: mark } }],
    ...[...marks, ...named].map((one) => ({ ...row, marks: [mark, one] })),
    ...[0.5, '80', FAR + 1, undefined].map((length) => ({ ...row, length })),
    ...[7, undefined].map((datum) => ({ ...row, datum })),
  ]) {
    expect(isRun(bad), JSON.stringify(bad)?.slice(0, 99)).toBe(false);
  }
});

const ids = (facts: object) =>
  [...soundOf(garmentOf({ facts: facts as never })).facts].map(([home, all]) => [
    home,
    all.map(({ id }) => id),
  ]);
const unsoundIn = (set: object) =>
  soundOf(garmentOf(set)).unsound.map(({ part, id }) => `${part} ${id}`);

test('facts of a row are in the order they lie in: by place, by rank, by id', () => {
  const at = (shown: number, rank: number, more: object = {}) => ({
    ...{ ...FACT, shown, mark: { ...MARK, rank }, ...more },
  });
  const facts = {
    d: at(30, 0),
    c: at(10, 2),
    b: at(10, 1),
    a: at(10, 1),
    e: at(5, 2, { measured: 20 }),
  };
  expect(ids(facts)).toEqual([['a||b', ['a', 'b', 'c', 'e', 'd']]]);
  expect(unsoundIn({ facts })).toEqual([]);
  const turned = Object.fromEntries(Object.entries(facts).reverse());
  expect(ids(turned)).toEqual(ids(facts));
});

test('of a step that is no row the last one counts, and what has no mark is not of a row', () => {
  const two = { b: { ...FACT, shown: 9 }, a: { ...FACT, shown: 5 } };
  expect(ids(two)).toEqual([['a||b', ['b']]]);
  expect(unsoundIn({ facts: two })).toEqual(['fact a']);
  // At one place the last by id, in whatever order they stand in the record.
  const three = { a: FACT, b: FACT, c: FACT };
  expect(ids(three)).toEqual([['a||b', ['c']]]);
  expect(unsoundIn({ facts: three })).toEqual(['fact a', 'fact b']);
  const mixed = { a: { ...FACT, mark: MARK }, b: FACT, c: { ...FACT, mark: { ...MARK, rank: 2 } } };
  expect(ids(mixed)).toEqual([['a||b', ['a', 'c']]]);
  expect(unsoundIn({ facts: mixed })).toEqual(['fact b']);
  expect(unsoundIn({ facts: { a: FACT } })).toEqual([]);
});

test('what is made without a number counts once, and not where a number is known', () => {
  const made = { home: 'a||b', before: true, when: 1 };
  const before = (facts: object) =>
    [...soundOf(garmentOf({ facts: facts as never })).before].map(([home, { id }]) => [home, id]);
  expect(before({ y: made, x: made })).toEqual([['a||b', 'x']]);
  expect(before({ x: made, y: made })).toEqual([['a||b', 'x']]);
  expect(unsoundIn({ facts: { y: made, x: made } })).toEqual(['fact y']);
  expect(before({ x: made, f: FACT })).toEqual([]);
  expect(unsoundIn({ facts: { x: made, f: FACT } })).toEqual(['fact x']);
  expect(unsoundIn({ facts: { x: { ...made, before: 1 }, y: { ...made, home: 7 } } })).toEqual([
    'fact x',
    'fact y',
  ]);
});

test('a quantity or a work is read as far as it can be worked with', () => {
  const quantity = { name: 'n', kind: 'length', rank: 1, parts: typed('1') };
  const work = { name: 'n', calculation: 'hem', rank: 1, fields: {} };
  const one = (kind: 'quantities' | 'works', it: object) =>
    soundOf(garmentOf({ [kind]: { x: it } }))[kind].get('x');
  const whole = { ...quantity, plusMinus: 0, measure: 'waist', lay: 'cloth', final: true };
  expect(one('quantities', whole)).toStrictEqual(whole);
  const { name: _, rank: __, ...bare } = quantity;
  expect(one('quantities', { ...bare, measure: 7, lay: 7, name: 7, rank: '1' })).toStrictEqual({
    ...bare,
    ...{ name: '', rank: 0 },
  });
  for (const plusMinus of [-1, '1', null]) {
    expect(one('quantities', { ...quantity, plusMinus })).toBeUndefined();
  }
  const sided = {
    sides: ['left', 'right'],
    own: { left: {} },
    moved: {},
    movedSides: { left: {} },
  };
  expect(one('works', { ...work, ...sided })).toStrictEqual({ ...work, ...sided });
  const none = { sides: 7, own: [], moved: 7, movedSides: null };
  expect(one('works', { ...work, ...none })).toStrictEqual(work);
  const sides = [
    'left',
    'total',
    '',
    'a|b',
    7,
    ['left'],
    'left',
    ...Array.from({ length: 30 }, (_, i) => `s${i}`),
  ];
  const seen = one('works', { ...work, sides }) as Work;
  expect(seen.sides).toEqual(['left', ...Array.from({ length: 19 }, (_, i) => `s${i}`)]);
  for (const bad of [{ ...work, calculation: 7 }, { ...work, fields: [] }, null, [], 7]) {
    expect(one('works', bad as object)).toBeUndefined();
  }
});

test('an id stands in homes, and is of one thing alone', () => {
  const quantity = { name: 'n', kind: 'length', rank: 1, parts: [] };
  const work = { name: 'n', calculation: 'hem', rank: 1, fields: {} };
  const long = 'k'.repeat(80);
  const quantities = { x: quantity, 'a|b': quantity, '': quantity };
  const works = { x: work, y: work, [long]: work, [`${long}k`]: work };
  expect(unsoundIn({ quantities, works })).toEqual([
    'quantity a|b',
    'quantity ',
    'work x',
    `work ${long}k`,
  ]);
  const { works: seen } = soundOf(garmentOf({ quantities, works }));
  expect([...seen.keys()]).toEqual([long, 'y']);
  expect(byId(['x||a', 'y||b', 'x||c'])).toEqual(
    new Map([
      ['x', ['x||a', 'x||c']],
      ['y', ['y||b']],
    ]),
  );
});

test('steps are passed over where that is said, and what was looked at is looked at once', () => {
  const passed = { 'a||': true, 'b||': 1, 'c||': false };
  expect([...soundOf({ ...garmentOf({}), passed }).passed]).toEqual(['a||']);
  const work = { name: 'n', calculation: 'hem', rank: 1, fields: {} };
  const record = garmentOf({ facts: { f: { ...FACT } }, works: { w: work } });
  const seen: Seen = new WeakMap();
  const [one, other] = [soundOf(record, seen), soundOf(record, seen)];
  expect(other).toEqual(one);
  // What is the same object needs no second working out.
  expect(other.works.get('w')).toBe(one.works.get('w'));
  expect(soundOf(record).works.get('w')).not.toBe(one.works.get('w'));
});

test('a garment holds so many works and facts, and is so long, and not one more', () => {
  const many = (count: number) =>
    Object.fromEntries(Array.from({ length: count }, (_, i) => [`k${i}`, 1]));
  expect(
    overLimit({ works: many(MOST_WORKS), facts: many(MOST_FACTS) }, 1_000_000),
  ).toBeUndefined();
  expect(overLimit({ works: many(MOST_WORKS + 1), facts: {} }, 1)).toBe('works');
  expect(overLimit({ works: {}, facts: many(MOST_FACTS + 1) }, 1)).toBe('facts');
  expect(overLimit({ works: {}, facts: {} }, 1_000_001)).toBe('size');
  expect(sizeOf(undefined)).toBe(0);
});
