import { expect, test } from 'vitest';
import { writtenIn } from '../../src/garment/backup/written.ts';
import { plain, typingOf } from '../../src/garment/record/typing-of.ts';
import { garmentOf, typed } from './trial/garments.ts';

const CM = 80_000;
const cm = (text: string) => ({ text, unit: 'cm' as const });
const length = { name: 'Front edge', kind: 'length', rank: 1, parts: typed('46.3') };
const hem = { name: 'Hem', calculation: 'hem', rank: 1, fields: { depth: typed('2') } };

test('what is written in a record: what was typed, what was put, what comes from the garment, and what is made', () => {
  const fact = (home: string, shown: number, more: object = {}) => ({
    ...{ home, shown, plan: shown, tape: 8000, rule: 1, read: '', when: 5 },
    ...more,
  });
  const link = { link: { quantity: 'front' } };
  const depth = [cm('2 + '), { put: 1.5 * CM, was: { quantity: 'front' } }, link];
  const record = garmentOf({
    quantities: { front: length },
    works: { hem: { ...hem, fields: { depth, turn: typed('0.7') } }, other: hem },
    facts: {
      a: fact('front||', 46 * CM),
      b: fact('hem||cut', 4 * CM, { measured: 4.1 * CM }),
      c: fact('hem||press', 2 * CM),
    },
  });
  expect(writtenIn(record)).toEqual([
    { id: 'front', name: 'Front edge', typed: [['', ['46.3']]], made: ['460 mm'] },
    {
      ...{ id: 'hem', name: 'Hem' },
      typed: [
        ['depth', ['2 + ', '15 mm', undefined]],
        ['turn', ['0.7']],
      ],
      made: ['41 mm', '20 mm'],
    },
    { id: 'other', name: 'Hem', typed: [['depth', ['2']]], made: [] },
  ]);
});

test('what stands in a field of a file may be anything; of that nothing is shown', () => {
  const fields = { depth: 'x', turn: [7, null, { text: 7 }, { put: '7' }] };
  const record = garmentOf({ works: { hem: { ...hem, fields } } });
  expect(writtenIn(record)[0]?.typed).toEqual([
    ['depth', []],
    ['turn', [undefined, undefined, undefined, undefined]],
  ]);
});

test('what is typed of a work has another mark with each character, and the same in whatever order it stands', () => {
  const of = (fields: unknown) => typingOf({ ...hem, fields });
  const both = { depth: typed('2'), turn: typed('0.7') };
  expect(of(both)).toMatch(/^[0-9a-f]{8}$/);
  expect(of({ turn: both.turn, depth: both.depth })).toBe(of(both));
  const three = { ...both, a: typed('1') };
  expect(of(Object.fromEntries(Object.entries(three).reverse()))).toBe(of(three));
  const others = [
    { ...both, turn: typed('0.8') },
    { depth: both.turn, turn: both.depth },
    { ...both, turn: [{ text: '0.7', unit: 'in' }] },
    { ...both, turn: [...both.turn, { link: { quantity: 'front' } }] },
    { ...both, turn: [...both.turn, { link: { quantity: 'back' } }] },
    { depth: both.depth },
    { ...both, turn: undefined },
    {},
  ];
  expect(new Set([both, ...others].map(of)).size).toBe(others.length + 1);
});

test('of a number of the garment what counts is what is typed, and not what it is called', () => {
  expect(typingOf({ ...length, name: 'Back', rank: 9 })).toBe(typingOf(length));
  expect(typingOf({ ...length, parts: typed('46.4') })).not.toBe(typingOf(length));
  for (const none of [undefined, null, 7]) expect(typingOf(none)).toBe(typingOf({}));
});

test('parts are alike when they say the same, whatever else is known of them', () => {
  expect(plain([{ ...cm('2'), read: 0.1 }])).toBe(plain([cm('2')]));
  expect(plain([cm('2')])).not.toBe(plain([{ text: '2', unit: 'in' }]));
  const link = (quantity: string) => [{ link: { quantity } }];
  expect(plain(link('a'))).not.toBe(plain(link('b')));
  // Anything may stand there.
  expect(new Set([undefined, 'x', {}, 7, null, [], [null], ['x'], [7]].map(plain)).size).toBe(9);
});
