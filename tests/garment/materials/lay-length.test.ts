import { expect, test } from 'vitest';
import { begin, type State } from '../../../src/garment/actions/state.ts';
import { layIn } from '../../../src/garment/record/cloth-lay.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import { readRecord } from '../../../src/garment/record/read-record.ts';
import { sharedGarment } from '../../../src/garment/share/shared.ts';
import { mm } from '../../../src/lengths/length.ts';
import { KNOWN } from '../trial/known.ts';
import { doing, garment, one, work } from './garments.ts';

const now = 5;
const cm = (amount: number) => mm(10 * amount);
const front = work('piece', 'width=40&length=60&top=0&bottom=0&side=0&count=2');
const other = work('piece', 'width=20&length=30&top=0&bottom=0&side=0&count=1');
const start = () => garment({ front, other }, { cloth: { width: cm(140) } });
const LENGTH = { id: 'laid', name: 'Length laid: Cloth' };

const keep = (state: State, length: number, quantity = LENGTH) => {
  const found = { length: cm(length), laid: [], of: one(state, 'cloth').lay!.of! };
  return doing(state, { do: 'lay', id: 'cloth', found, quantity, now });
};
const value = (state: State, key = homeOf('laid')) => {
  const result = state.answer.values.get(key);
  return result?.ok ? result.value : undefined;
};
/** The width of another piece is as long as the lay. */
const linked = (state: State) => {
  const place = { work: 'other', field: 'width' };
  const parts = [{ link: { quantity: 'laid' } }];
  return doing(state, { do: 'link', place, parts, now });
};
const OTHER = homeOf('other', '', 'cut-width');

test('the length found is a number of the garment that works take; a better lay gives it anew', () => {
  const first = keep(start(), 64);
  expect(first.answer.sound.quantities.get('laid')).toMatchObject({
    ...{ name: LENGTH.name, kind: 'length', lay: 'cloth' },
  });
  expect(value(first)).toBe(cm(64));
  const taken = linked(first);
  expect(value(taken, OTHER)).toBe(cm(64));
  // Laid for the other sizes it now has: longer, and all the same the lay that holds.
  const better = keep(taken, 66);
  expect([value(better), value(better, OTHER)]).toEqual([cm(66), cm(66)]);
  expect(better.answer.sound.quantities.size).toBe(1);
});

test('nothing of it can be taken back, as nobody chose it; its name is the maker’s', () => {
  const first = keep(start(), 64);
  expect(first.log).toEqual([]);
  const set = { name: 'Cloth to lay' };
  const named = doing(first, { do: 'say', of: 'quantities', ids: ['laid'], set, now });
  const better = keep(named, 62, { ...LENGTH, id: 'second' });
  expect(better.answer.sound.quantities.get('laid')?.name).toBe('Cloth to lay');
  expect(better.answer.sound.quantities.has('second')).toBe(false);
  expect(value(better)).toBe(cm(62));
});

test('it is no shorter than the lay, to the tenth of a millimetre', () => {
  const state = start();
  const found = { length: cm(64) + 1, laid: [], of: one(state, 'cloth').lay!.of! };
  const kept = doing(state, { do: 'lay', id: 'cloth', found, quantity: LENGTH, now });
  expect(value(kept)).toBe(mm(640.1));
});

test('a record has it again; a link hands the number on, without the lay it was of', () => {
  const state = keep(start(), 64);
  const read = readRecord(JSON.parse(JSON.stringify(state.record)));
  expect(read.ok && read.value.quantities).toEqual(state.record.quantities);
  const wish = { bodies: false, notes: false, times: false, goOn: false, knownOnly: true };
  const { quantities } = sharedGarment(state, wish, 'c', () => '');
  expect(quantities.laid).toMatchObject({ parts: [{ text: '640', unit: 'mm' }] });
  expect(quantities.laid).not.toHaveProperty('lay');
});

test('another number is left as it is, and a new one comes behind all there are', () => {
  const typed = { name: 'Edge', kind: 'length', parts: [{ text: '1', unit: 'cm' }] } as const;
  const plain = start();
  const quantities = {
    ...{ last: { ...typed, rank: 7 }, first: { ...typed, rank: 2 } },
    lining: { ...typed, rank: 3, lay: 'lining' },
  };
  const before = begin({ ...plain.record, quantities }, KNOWN);
  const { laid, ...others } = keep(before, 64).record.quantities;
  expect(laid).toMatchObject({ rank: 8, lay: 'cloth' });
  expect(others).toEqual(quantities);
  // One that has its id is never written over, and the lay is kept all the same.
  const taken = keep(before, 64, { ...LENGTH, id: 'last' });
  expect(taken.record.quantities).toEqual(quantities);
  expect(layIn(taken.record, 'cloth').found?.length).toBe(cm(64));
  // No number hangs on it: nothing is worked out anew.
  expect(taken.answer).toBe(before.answer);
});

test('of two lays as long as each other the one that is there stays', () => {
  const first = keep(start(), 64);
  expect(keep(first, 64)).toBe(first);
});
