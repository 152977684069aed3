import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { takersOf } from '../../src/garment/actions/remove.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { plusMinus } from '../../src/garment/work-out/doubt.ts';
import { mm } from '../../src/lengths/length.ts';
import { plain } from './trial/compare.ts';
import { quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { waistcoat } from './trial/waistcoat.ts';

const now = 5;
const after = (...actions: readonly Action[]): State =>
  actions.reduce((state, action) => act(state, action).state, begin(waistcoat, KNOWN));

test('a quantity that something takes is not taken off, and who takes it is told', () => {
  const done = act(after(), { do: 'remove', quantity: 'front', now });
  expect(done.refused).toEqual({ why: 'taken', by: [['works', 'hooks', 'fields', 'opening']] });
  const off = after({ do: 'take off', work: 'hooks', leave: 'wait', now });
  expect(takersOf(off, 'front')).toHaveLength(1);
  const gone = act(after(), { do: 'remove', quantity: 'none', now });
  expect(gone.refused).toEqual({ why: 'not there', what: 'work' });
});

test('one that nothing takes goes and comes back, and what was measured of it stays', () => {
  const it = { name: 'Waist', kind: 'length', rank: 9, parts: typed('70') } as const;
  const measured: Action = {
    ...{ do: 'measure', quantity: 'waist', measured: mm(712), tape: mm(1), id: 'm', now },
  };
  const state = after({ do: 'add', to: 'quantities', id: 'waist', it, now }, measured);
  const { state: off, refused } = act(state, { do: 'remove', quantity: 'waist', now });
  expect(refused).toBeUndefined();
  expect(off.answer.values.has(homeOf('waist'))).toBe(false);
  expect(off.record.facts.m).toEqual(state.record.facts.m);
  expect(off.answer.earlier).toEqual([{ fact: 'm', home: homeOf('waist') }]);
  const change = off.log.at(-1)?.id ?? 0;
  const back = act(off, { do: 'undo', change, now }).state;
  expect(plain(back.record)).toEqual(plain(state.record));
});

test('how sure a reading was goes with the number that was read, and comes back with it', () => {
  const round = (state: State) => state.answer.values.get(homeOf('armhole'));
  const sure = (state: State) =>
    plusMinus(round(state) ?? { ok: false, trouble: { kind: 'undecided' } });
  expect(sure(after())).toBe(mm(2));
  const place = { quantity: 'armhole' };
  const anew = after(
    { do: 'type', place, parts: typed('6'), now },
    { do: 'type', place, parts: typed('63'), now },
    { do: 'settle', now },
  );
  expect(round(anew)).toMatchObject({ ok: true, value: mm(630) });
  expect(sure(anew)).toBe(0);
  const change = anew.log.at(-1)?.id ?? 0;
  expect(sure(act(anew, { do: 'undo', change, now }).state)).toBe(mm(2));
  expect(sure(after({ do: 'link', place, parts: [quantity('front')], now }))).toBe(0);
  const same = after({ do: 'type', place, parts: typed('62.4'), now }, { do: 'settle', now });
  expect(sure(same)).toBe(mm(2));
});
