import { describe, expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { takeUps } from '../../src/garment/actions/take-up.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Garment, Parts } from '../../src/garment/record/record.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { HOOKS, waistcoat } from './trial/waistcoat.ts';

const now = 1;
const BACK = homeOf('back', '', 'cut-length');
const FRONT = homeOf('front', '', 'cut-length');
const piece = (fields: object, rank = 2) => ({
  ...{ name: 'Piece', calculation: 'toy-piece', rank },
  fields: { length: typed('60'), top: [quantity('seam')], ...fields },
});
const seam = (text = '1.5', unit: 'cm' | 'in' = 'cm') => ({
  seam: { name: 'Seam', kind: 'length', rank: 1, parts: typed(text, unit) },
});
/** Invented: two pieces that share a seam, each with a hem of its own; 60 + 1.5 + 4 = 65.5 to cut. */
const two = garmentOf({
  quantities: seam(),
  works: { back: piece({ bottom: typed('4') }), front: piece({ bottom: typed('4') }, 3) },
});
const doing = (garment: Garment, ...actions: readonly Action[]): State =>
  actions.reduce((state, action) => act(state, action).state, begin(garment, KNOWN));
const cut = (home: string, measured: number, tape = mm(1)): Action => {
  return { do: 'make', home, id: home, tape, measured: mm(measured), now };
};
const put = (place: object, parts: Parts): Action =>
  ({ ...{ do: 'choose', place, parts, now } }) as Action;
/** Which fields take it up, and what they then hold in millimetres. */
const taken = (state: State, home: string) =>
  Object.fromEntries(
    takeUps(state, home).map(({ place, after }) => [
      'quantity' in place ? place.quantity : `${place.work}.${place.field}`,
      after / mm(1),
    ]),
  );

test('nothing takes up what isn’t made, or isn’t there, or is no number to be cut', () => {
  const state = doing(two, cut(BACK, 645));
  for (const home of [FRONT, homeOf('back', '', 'finished-length'), 'seam||', 'none||x']) {
    expect(takeUps(state, home)).toEqual([]);
  }
  expect(takeUps(doing(waistcoat), HOOKS)).toEqual([]);
});

test('what is off by no more than was allowed takes nothing up, whatever else is open', () => {
  const decided: Action = { do: 'decide', home: BACK, way: 'noted', allow: mm(12), now };
  const state = doing(two, cut(BACK, 645), decided, cut(FRONT, 700));
  expect(state.answer.conflicts.map(({ home }) => home)).toEqual([FRONT]);
  expect(takeUps(state, BACK)).toEqual([]);
});

describe('what takes it up brings nothing else in the way', () => {
  test('not of what is made as asked: that is then otherwise than asked', () => {
    const state = doing(two, cut(FRONT, 655), cut(BACK, 645));
    expect(state.answer.conflicts.map(({ home }) => home)).toEqual([BACK]);
    expect(taken(state, BACK)).toEqual({ 'back.bottom': 30 });
  });

  test('what was otherwise than asked before is that still', () => {
    const state = doing(two, cut(FRONT, 700), cut(BACK, 645));
    expect(state.answer.conflicts.map(({ home }) => home).sort()).toEqual([BACK, FRONT]);
    expect(taken(state, BACK)).toEqual({ seam: 5, 'back.bottom': 30 });
  });

  test('nor is a number lost that something else needs', () => {
    // Holes a seam apart: of none there is no row.
    const strip = {
      ...{ name: 'Strip', calculation: 'toy-strip', rank: 4 },
      fields: {
        ...{ length: typed('6'), pitch: [quantity('seam')], end: typed('0.5') },
        ...{ fit: typed('keep'), rows: typed('one') },
      },
    };
    const record = { ...two, works: { ...two.works, strip } };
    expect(taken(doing(record, cut(BACK, 640)), BACK)).toEqual({ 'back.bottom': 25 });
    expect(taken(doing(two, cut(BACK, 640)), BACK)).toEqual({ seam: 0, 'back.bottom': 25 });
  });
});

test('of many fields the nearest eight are tried', () => {
  const names = Array.from({ length: 10 }, (_, i) => `h${i}`);
  const hems = Object.fromEntries(
    names.map((id, i) => [
      id,
      {
        ...{ name: id, calculation: 'toy-hem', rank: i },
        fields: {
          depth: i < 9 ? [output(`h${i + 1}`, 'allowance')] : typed('3'),
          ...{ turned: typed('twice'), turn: typed('2') },
        },
      },
    ]),
  );
  const back = {
    ...piece({ bottom: [output('h0', 'allowance')] }),
    fields: { length: typed('60'), bottom: [output('h0', 'allowance')] },
  };
  const record = garmentOf({ works: { ...hems, back } });
  // 60 + 3 + 10 × 2 = 83; cut 82.
  const found = taken(doing(record, cut(BACK, 820)), BACK);
  expect(found).toEqual(Object.fromEntries(names.slice(0, 8).map((id) => [`${id}.turn`, 10])));
});

describe('the number it then is', () => {
  const bottomOf = (measured: number, tape = mm(1)) =>
    taken(doing(two, cut(BACK, measured, tape)), BACK)['back.bottom'];

  test('is one of the tape where that is within a quarter of a graduation, else what it comes to', () => {
    // 4 cm less what is lacking of 65.5.
    expect(bottomOf(645)).toBe(30);
    expect(bottomOf(645.2)).toBe(30);
    expect(bottomOf(645.25)).toBe(30);
    expect(bottomOf(645.3)).toBe(30.3);
    expect(bottomOf(645.75)).toBe(31);
    expect(bottomOf(645.7)).toBe(30.7);
    // With a tape of half centimetres.
    expect(bottomOf(641, mm(5))).toBe(25);
    expect(bottomOf(642, mm(5))).toBe(27);
  });

  test('is what it comes to where it was made without a tape', () => {
    const fact = {
      ...{ home: BACK, shown: mm(645.3), plan: mm(655), tape: 0, rule: 1, read: '', when: 1 },
    };
    expect(taken(begin({ ...two, facts: { f: fact } }, KNOWN), BACK)).toMatchObject({
      'back.bottom': 30.3,
    });
  });
});

describe('a row', () => {
  const sewn = (many: number): Action[] =>
    Array.from({ length: many }, (_, i) => {
      return { do: 'make', home: HOOKS, id: `h${i}`, tape: mm(1), now };
    });
  const top = { work: 'hooks', field: 'top' };

  test('that lies otherwise at its beginning is taken up there', () => {
    const state = doing(waistcoat, ...sewn(7), put(top, typed('2.2')));
    expect(state.answer.conflicts.map(({ home }) => home)).toEqual([HOOKS]);
    expect(taken(state, HOOKS)).toEqual({ 'hooks.top': 12 });
  });

  test('that lies otherwise at both ends is taken up by neither alone', () => {
    const both = [put(top, typed('1.7')), put({ quantity: 'front' }, typed('47.3'))];
    const state = doing(waistcoat, ...sewn(7), ...both);
    expect(state.answer.conflicts.map(({ home }) => home)).toEqual([HOOKS]);
    expect(taken(state, HOOKS)).toEqual({});
  });

  test('of as many as aren’t asked any more is placed by the ways of a row', () => {
    const count = { work: 'hooks', field: 'count' };
    for (const many of ['6', '8']) {
      const state = doing(waistcoat, ...sewn(7), put(count, typed(many)));
      expect(taken(state, HOOKS)).toEqual({});
    }
    const longer = put({ quantity: 'front' }, typed('47.3'));
    const six = doing(waistcoat, ...sewn(6), longer);
    expect(six.answer.conflicts.map(({ home }) => home)).toEqual([HOOKS]);
    expect(taken(six, HOOKS)).toEqual({});
  });

  test('on an edge it can’t be asked on any more has nothing to take up', () => {
    const waits = doing(waistcoat, ...sewn(7), put({ quantity: 'front' }, typed('')));
    expect(taken(waits, HOOKS)).toEqual({});
    // Far too short: no end gives as much.
    const short = doing(waistcoat, ...sewn(7), put({ quantity: 'front' }, typed('20')));
    expect(short.answer.conflicts.map(({ home }) => home)).toEqual([HOOKS]);
    expect(taken(short, HOOKS)).toEqual({});
  });
});
