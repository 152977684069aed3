import { describe, expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { moved } from '../../src/garment/actions/rank.ts';
import { takersOf } from '../../src/garment/actions/remove.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Garment, Parts } from '../../src/garment/record/record.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { HOOKS, waistcoat } from './trial/waistcoat.ts';

const now = 5;
const tape = 8000;
const on = (record: Garment, ...actions: readonly Action[]): State =>
  actions.reduce((state, action) => act(state, action).state, begin(record, KNOWN));
const hem = (depth: Parts = typed('2'), more: object = {}) => ({
  ...{ name: 'Hem', calculation: 'toy-hem', rank: 1, fields: { depth } },
  ...more,
});
const number = (parts: Parts, kind = 'length') => ({ name: 'n', kind, rank: 1, parts });
const allowance = (id: string) => homeOf(id, '', 'allowance');

describe('a measure', () => {
  const measure = (id: string, more: object = {}): Action =>
    ({ ...{ do: 'measure', quantity: id, measured: 7, tape, id: 'm', now }, ...more }) as Action;
  const record = garmentOf({
    quantities: { hooks: number(typed('6'), 'count'), row: number(typed('1; 2'), 'run') },
    works: { hem: hem(), other: hem() },
  });

  test('of a count has no tape; of a row, or of what isn’t there, there is none', () => {
    expect(on(record, measure('hooks')).record.facts.m).toMatchObject({ shown: 7, tape: 0 });
    const state = begin(record, KNOWN);
    expect(act(state, measure('row')).refused).toEqual({ why: 'a sum is not measured' });
    expect(act(state, measure('none')).refused).toEqual({ why: 'not there', what: 'work' });
  });

  test('of what was made before the app knew is none, of what is made beside it it is', () => {
    const made = on(
      record,
      { do: 'make before', homes: [allowance('hem')], id: 'b', now },
      { do: 'make', home: allowance('other'), id: 'f', tape, now },
    );
    const measured = (fact: string) => act(made, { do: 'measure', fact, measured: mm(21), now });
    expect(measured('b').refused).toEqual({ why: 'made before' });
    expect(measured('f').state.record.facts.f).toMatchObject({ measured: mm(21) });
  });
});

test('what was added is taken back though something else is made meanwhile', () => {
  const added = on(garmentOf({ works: { other: hem() } }), {
    ...{ do: 'add', to: 'works', id: 'hem', it: hem(), now },
  } as Action);
  const change = added.log[0]?.id ?? 0;
  const made = act(added, { do: 'make', home: allowance('other'), id: 'f', tape, now }).state;
  const undone = act(made, { do: 'undo', change, now: 9 });
  expect(undone.refused).toBeUndefined();
  expect(Object.keys(undone.state.record.works)).toEqual(['other']);
});

test('a side that takes what all sides have is a change of now', () => {
  const own = { left: { depth: typed('3') } };
  const record = garmentOf({ works: { hem: hem(typed('2'), { sides: ['left', 'right'], own }) } });
  const place = { work: 'hem', field: 'depth', side: 'left' };
  const shared = on(record, { do: 'share', place, now: 77 });
  expect(shared.record).toMatchObject({ changed: 77, edits: 1 });
  expect(shared.log).toMatchObject([{ id: 77, what: 'share' }]);
});

test('a work that is nothing any more is nobody who takes something', () => {
  const record = garmentOf({
    quantities: { long: number(typed('60')) },
    works: { gone: null, hem: hem([quantity('long')]) },
  } as never);
  const state = begin(record, KNOWN);
  expect(takersOf(state, 'long')).toEqual([['works', 'hem', 'fields', 'depth']]);
});

test('one of the maker’s own things is kept whole, and forgotten whole', () => {
  const cloth = { name: 'Linen', kind: 'cloth' } as const;
  const kept = on(garmentOf({}), { do: 'material', id: 'linen', add: cloth, now });
  expect(kept.record.materials).toEqual({ linen: cloth });
  const forgotten = act(kept, { do: 'material', id: 'linen', forget: true, now }).state;
  expect(forgotten.record).not.toHaveProperty('materials');
});

test('between two ranks whose middle is one of them all are numbered anew', () => {
  const step = Number.EPSILON;
  const ranks = (far: number, near: number) =>
    moved(
      on(
        garmentOf({
          works: {
            a: hem(typed('1'), { rank: far }),
            b: hem(typed('1'), { rank: near }),
            c: hem(typed('1'), { rank: 9 }),
          },
        }),
      ),
      'c',
      -1,
    );
  const anew = {
    ...{ of: 'works', id: 'c', rank: 1.5 },
    room: [
      { slot: ['works', 'a', 'rank'], rank: 1 },
      { slot: ['works', 'b', 'rank'], rank: 2 },
    ],
  };
  // The middle is the farther one, and the nearer one.
  expect(ranks(1, 1 + step)).toEqual(anew);
  expect(ranks(1 + step, 1 + 2 * step)).toEqual(anew);
  expect(ranks(1, 2)).toEqual({ of: 'works', id: 'c', rank: 1.5 });
});

describe('taken back', () => {
  const press = (id: string): Action => ({ do: 'make', home: HOOKS, id, tape, now });

  test('the last mark of a row comes back with what the row began with', () => {
    const one = on(waistcoat, press('a'));
    const gone = act(one, { do: 'unmake', fact: 'a', now }).state;
    expect(gone.record.begun).toEqual({});
    const again = act(gone, { do: 'undo', change: gone.log.at(-1)?.id ?? 0, now }).state;
    expect(again.record.facts).toEqual(one.record.facts);
    expect(again.record.begun).toEqual(one.record.begun);
  });

  test('a change is asked about where one of several marks was made to it', () => {
    const put = (place: object, text: string) =>
      ({ ...{ do: 'choose', place, parts: typed(text), now } }) as Action;
    // The edge is as much longer as its end below the last is: the row stays where it is.
    const state = on(
      waistcoat,
      ...[press('a'), press('b'), put({ work: 'hooks', field: 'bottom' }, '4.5')],
      ...[put({ quantity: 'front' }, '48.3'), press('c')],
    );
    expect(state.answer.conflicts).toEqual([]);
    const change = state.log.findLast(({ what }) => what === 'choose')?.id ?? 0;
    const refused = { why: 'made to it', change, homes: [HOOKS] };
    expect(act(state, { do: 'undo', change, now }).refused).toEqual(refused);
    const { answer } = act(state, { do: 'undo', change, sure: true, now }).state;
    expect(answer.conflicts).toEqual([{ home: HOOKS, facts: ['b', 'c'] }]);
  });
});
