import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { MOST_WORKS } from '../../src/garment/record/limits.ts';
import type { Garment, Parts, Quantity } from '../../src/garment/record/record.ts';
import { readHanded } from '../../src/garment/share/read-shared.ts';
import { type ShareWish, sharedGarment } from '../../src/garment/share/shared.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 5;
const tape = 8000;
const LEAST: ShareWish = {
  ...{ bodies: false, notes: false, times: false, goOn: false },
  knownOnly: true,
};
const said: [string, string, readonly number[]][] = [];
const say = (home: string, kind: string, numbers: readonly number[]) => {
  said.push([home, kind, numbers]);
  return 'was made';
};
const shared = (state: State, wish: Partial<ShareWish> = {}) =>
  sharedGarment(state, { ...LEAST, ...wish }, 'new', say);
const number = (parts: Parts, more: Partial<Quantity> = {}): Quantity => ({
  ...{ name: 'n', kind: 'length', rank: 1, parts },
  ...more,
});
const hem = (fields: Record<string, Parts>, more: object = {}) => ({
  ...{ name: 'Hem', calculation: 'toy-hem', rank: 1, fields },
  ...more,
});
const on = (record: Garment, ...actions: readonly Action[]): State =>
  actions.reduce((state, action) => act(state, action).state, begin(record, KNOWN));

test('what can’t be read of what was handed on says why', () => {
  for (const none of [7, null, {}, { ...garmentOf({}), works: [] }]) {
    expect(readHanded(none)).toEqual({ ok: false, fault: 'damaged' });
  }
  expect(readHanded({ version: 4 })).toEqual({ ok: false, fault: 'newer' });
  const works = Object.fromEntries(
    Array.from({ length: MOST_WORKS + 1 }, (_, i) => [`w${i}`, hem({})]),
  );
  expect(readHanded(garmentOf({ works }))).toEqual({ ok: false, fault: 'too-large' });
});

test('what it says was left out is counted as far as it is a count', () => {
  const shared = { bodies: -1, typed: 1.5, notes: '3', photos: 2, facts: 0 };
  expect(readHanded({ ...garmentOf({}), shared })).toMatchObject({
    handed: { left: { bodies: 0, typed: 0, notes: 0, photos: 2, facts: 0 } },
  });
});

test('whatever kind of number of a body is taken, it goes along as what it is now, and unnamed', () => {
  const body = { body: true, name: 'Of Ada' } as const;
  const record = garmentOf({
    quantities: {
      waist: number(typed('70'), body),
      less: number([...typed('1 − '), quantity('waist')], body),
      count: number(typed('7'), { ...body, kind: 'count' }),
      none: number(typed(''), body),
      hip: number(typed('90'), { measure: 'hip', name: 'Hip of Ada' }),
      zero: number([quantity('waist'), ...typed(' − '), quantity('waist')], body),
    },
    works: {
      a: hem({ depth: [quantity('less')] }),
      b: hem({ depth: [quantity('none')], round: [quantity('hip')] }),
      c: { ...hem({}), calculation: 'toy-lace', fields: { holes: [quantity('count')] } },
      d: hem({ depth: [quantity('zero')] }),
    },
  });
  const garment = shared(begin(record, KNOWN));
  expect(JSON.stringify(garment)).not.toContain('Ada');
  expect(garment.quantities).toEqual({});
  expect(garment.works).toMatchObject({
    a: { fields: { depth: typed('(−69 cm)') } },
    b: { fields: { depth: typed(''), round: typed('90 cm') } },
    c: { fields: { holes: typed('7') } },
    d: { fields: { depth: typed('0 cm') } },
  });
  expect(garment.shared).toMatchObject({ bodies: 6 });
});

test('what was measured goes along as typed where what is made doesn’t', () => {
  const record = garmentOf({
    quantities: { edge: number(typed('46')), other: number(typed('3')) },
  });
  const measured = on(record, {
    ...{ do: 'measure', quantity: 'edge', measured: mm(471), id: 'm', tape, now },
  } as Action);
  expect(shared(measured).quantities).toEqual({
    edge: number(typed('47.1 cm')),
    other: number(typed('3')),
  });
  expect(shared(measured, { goOn: true }).quantities).toMatchObject({
    edge: { parts: typed('46') },
  });
});

test('what is made is said with the kind of its number, behind what was noted there', () => {
  const record = garmentOf({
    works: { hem: hem({ depth: typed('2') }), off: hem({ depth: typed('2') }) },
  });
  const home = homeOf('hem', '', 'allowance');
  const gone = homeOf('off', '', 'allowance');
  const make = (at: string): Action => ({ do: 'make', home: at, id: at, tape, now });
  const made = on(record, make(home), make(gone), {
    ...{ do: 'note', home, note: { text: 'press', photo: 'p1' }, now },
  });
  const off = act(made, { do: 'take off', work: 'off', leave: 'wait', now }).state;
  said.length = 0;
  const noted = shared(off, { notes: true });
  expect(said).toEqual([
    [home, 'length', [mm(20)]],
    [gone, 'length', [mm(20)]],
  ]);
  expect(noted.notes).toEqual({
    [home]: { text: 'press\nwas made' },
    [gone]: { text: 'was made' },
  });
  expect(noted.shared).toMatchObject({ notes: 0, photos: 1, facts: 2 });
  const bare = shared(off, { goOn: true });
  expect(bare.shared).toMatchObject({ notes: 1, photos: 1, facts: 0 });
  expect(bare).not.toHaveProperty('notes');
});

test('a photo alone is no note, and damaged ones are neither', () => {
  const record: Garment = {
    ...garmentOf({ works: { hem: hem({}) } }),
    notes: { 'hem||': { photo: 'p1' }, 'hem||x': 7, 'hem||y': { text: 7, photo: 8 } },
  };
  const garment = shared(begin(record, KNOWN), { notes: true });
  expect(garment.shared).toMatchObject({ notes: 0, photos: 1 });
  expect(garment).not.toHaveProperty('notes');
});

test('where the steps of a side stand goes along, and nothing else that stands there', () => {
  const at = { stage: 'join', rank: 2 };
  const works = {
    hem: hem(
      {},
      {
        sides: ['left', 'right'],
        movedSides: { left: { 'turn-up': { ...at, secret: 1 } } },
        moved: { 'turn-up': at },
      },
    ),
  };
  const form = { kind: 'four', long: 8000, top: 8000, bottom: 8000, slant: 'both' };
  const lays = {
    cloth: {
      pieces: {
        a: { oneWay: true },
        b: { outline: { form: { ...form, secret: 1 }, secret: 1 } },
        c: { outline: { form, adds: 'edges' } },
      },
    },
  };
  const garment = shared(begin({ ...garmentOf({ works }), lays }, KNOWN));
  expect(garment.works).toMatchObject({
    hem: { movedSides: { left: { 'turn-up': at } }, moved: { 'turn-up': at } },
  });
  expect(JSON.stringify(garment)).not.toContain('secret');
  expect(garment.lays).toEqual({
    cloth: {
      pieces: {
        a: { oneWay: true },
        b: { outline: { form } },
        c: { outline: { form, adds: 'edges' } },
      },
    },
  });
});
