import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { lastPress } from '../../src/garment/actions/undo.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { mm } from '../../src/lengths/length.ts';
import { backOne } from './trial/back-one.ts';
import { garmentOf, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { HOOKS, waistcoat } from './trial/waistcoat.ts';

const now = 5;
const tape = 8000;
const CUT = homeOf('back', '', 'cut-length');

/** Invented: a back, cut as long as a number says. */
const back = garmentOf({
  quantities: { long: { name: 'Back', kind: 'length', rank: 1, parts: typed('60') } },
  works: {
    back: {
      ...{ name: 'Back', calculation: 'toy-piece', rank: 2 },
      fields: { length: [quantity('long')], bottom: typed('2') },
    },
  },
});
const longer: Action = { do: 'choose', place: { quantity: 'long' }, parts: typed('63'), now };
const cut: Action = { do: 'make', home: CUT, id: 'cut', tape, now };
const named: Action = { do: 'say', of: 'works', ids: ['back'], set: { name: 'Rear' }, now };
const after = (state: State, ...actions: readonly Action[]) =>
  actions.reduce((so, action) => act(so, action).state, state);

test('a change that something was made to is taken back only once the maker has seen what comes of it', () => {
  const made = after(begin(back, KNOWN), longer, cut);
  const change = made.log[0]?.id ?? 0;
  const asked = act(made, { do: 'undo', change, now });
  expect(asked.refused).toEqual({ why: 'made to it', change, homes: [CUT] });
  expect(asked.state.record).toBe(made.record);
  const sure = act(made, { do: 'undo', change, sure: true, now });
  expect(sure.refused).toBeUndefined();
  expect(sure.state.answer.conflicts).toEqual([{ home: CUT, facts: ['cut'], over: mm(30) }]);
  expect(sure.state.record.facts).toBe(made.record.facts);
});

test('a change that nothing was made to, or only before, is taken back at once', () => {
  const made = after(begin(back, KNOWN), cut, longer);
  expect(made.answer.conflicts.length).toBe(1);
  const change = made.log.at(-1)?.id ?? 0;
  const done = act(made, { do: 'undo', change, now });
  expect(done.refused).toBeUndefined();
  expect(done.state.answer.conflicts).toEqual([]);
});

test('the last press is taken back whatever was settled since, as long as nothing touched it', () => {
  const made = after(begin(back, KNOWN), cut, longer, named);
  const back1 = act(made, backOne(made, now));
  expect(back1.refused).toBeUndefined();
  expect(back1.state.record.facts).toEqual({});
  expect(back1.state.record.works).toBe(made.record.works);
});

test('what is made of a work that is off is not taken back by one press, and is there with it again', () => {
  const made = after(begin(back, KNOWN), cut, {
    do: 'measure',
    fact: 'cut',
    measured: mm(650),
    now,
  });
  const off = after(made, { do: 'take off', work: 'back', leave: 'wait', now });
  expect(lastPress(off)).toBeUndefined();
  const again = after(off, { do: 'put back', work: 'back', now });
  expect(again.record.facts).toEqual(made.record.facts);
  expect(lastPress(again)).toBe(lastPress(made));
});

test('a press that can’t be taken back says why', () => {
  const made = after(begin(back, KNOWN), { ...cut, measured: mm(640) } as Action);
  const moved = after(made, { do: 'measure', fact: 'cut', measured: mm(650), now });
  // The measure is the last press, and goes first; then what was made goes.
  const first = act(moved, backOne(moved, now));
  expect(first.state.record.facts.cut).toMatchObject({ measured: mm(640) });
  expect(act(first.state, backOne(first.state, now)).state.record.facts).toEqual({});
  const press = made.log.at(-1)?.id ?? 0;
  expect(act(moved, { do: 'undo', change: press, now }).refused).toMatchObject({
    ...{ why: 'changed since', slot: ['facts', 'cut'] },
  });
});

const press = (id: string, more: object = {}): Action =>
  ({ ...{ do: 'make', home: HOOKS, id, tape, now }, ...more }) as Action;
const hooked = (...actions: readonly Action[]) => after(begin(waistcoat, KNOWN), ...actions);
const undone = (state: State, change: number, more: object = {}) =>
  act(state, { do: 'undo', change, now, ...more });
const idOf = ({ log }: State, i: number) => log.at(i)?.id ?? 0;

test('a press on several works is the last one as long as all of them are on', () => {
  const works = { ...back.works, front: back.works.back };
  const front = homeOf('front', '', 'cut-length');
  const made = after(begin({ ...back, works }, KNOWN), {
    ...{ do: 'make before', homes: [CUT, front], id: 'b', now },
  });
  expect(lastPress(made)).toBe(made.log.at(-1));
  const off = after(made, { do: 'take off', work: 'front', leave: 'wait', now });
  expect(lastPress(off)).toBeUndefined();
});

test('a row stays begun as long as a mark of it is made, and no longer', () => {
  const two = hooked(press('a'), press('b'));
  const begun = two.record.begun[HOOKS];
  const one = undone(two, idOf(two, 0)).state;
  expect(Object.keys(one.record.facts)).toEqual(['b']);
  expect(one.record.begun[HOOKS]).toBe(begun);
  const both = hooked(press('a', { upTo: 2 }));
  expect(undone(both, idOf(both, 0)).state.record).toMatchObject({ facts: {}, begun: {} });
});

test('what was otherwise than asked before, or was made before, asks nothing of who takes a change back', () => {
  const works = { ...back.works, front: back.works.back };
  const front = homeOf('front', '', 'cut-length');
  const cutFront: Action = { ...cut, home: front, id: 'front', measured: mm(700) } as Action;
  const open = after(begin({ ...back, works }, KNOWN), longer, cutFront);
  expect(open.answer.conflicts.map(({ home }) => home)).toEqual([front]);
  expect(undone(open, idOf(open, 0)).refused).toBeUndefined();
  // Two changes that make up for each other, to what was made before both.
  const field = (name: string, text: string): Action => ({
    ...{ do: 'choose', place: { work: 'back', field: name }, parts: typed(text), now },
  });
  const even = after(begin(back, KNOWN), cut, field('top', '1'), field('bottom', '1'));
  expect(even.answer.conflicts).toEqual([]);
  const first = undone(even, idOf(even, 1));
  expect(first.refused).toBeUndefined();
  expect(first.state.answer.conflicts.map(({ home }) => home)).toEqual([CUT]);
});

test('what was added isn’t taken back once something is made of it; another change of it is', () => {
  const it = { name: 'Hem', calculation: 'toy-hem', rank: 9, fields: { depth: typed('2') } };
  const hem = homeOf('hem', '', 'allowance');
  const added = after(begin(back, KNOWN), { do: 'add', to: 'works', id: 'hem', it, now });
  expect(undone(added, idOf(added, 0)).state.record.works).toEqual(back.works);
  const ranked = after(added, { do: 'rank', of: 'works', id: 'hem', rank: 4, now }, {
    ...cut,
    home: hem,
    id: 'f',
  } as Action);
  expect(undone(ranked, idOf(ranked, 0)).refused?.why).toBe('changed since');
  const back1 = undone(ranked, idOf(ranked, 1));
  expect(back1.refused).toBeUndefined();
  expect(undone(back1.state, idOf(ranked, 0)).refused).toEqual({ why: 'has facts', id: 'hem' });
  const number = { name: 'Waist', kind: 'length', rank: 9, parts: [] } as const;
  const measured = after(
    begin(back, KNOWN),
    { do: 'add', to: 'quantities', id: 'waist', it: number, now },
    { do: 'measure', quantity: 'waist', measured: mm(700), tape, id: 'm', now } as Action,
  );
  expect(undone(measured, idOf(measured, 0)).refused).toEqual({ why: 'has facts', id: 'waist' });
});

test('a measure taken anew is taken back to the one before', () => {
  const measure = (measured: number): Action =>
    ({ ...{ do: 'measure', quantity: 'long', measured, tape, id: 'm', now } }) as Action;
  const twice = after(begin(back, KNOWN), measure(mm(610)), measure(mm(620)));
  const once = undone(twice, idOf(twice, 1));
  expect(once.refused).toBeUndefined();
  expect(once.state.record.facts.m).toMatchObject({ shown: mm(610) });
});

test('a mark that was taken back comes again where none was made in its place since', () => {
  const gone = hooked(press('a'), press('b'), { do: 'unmake', fact: 'b', now });
  const taken = idOf(gone, -1);
  expect(undone(after(gone, press('c', { rank: 2 })), taken).refused).toBeUndefined();
  expect(undone(after(gone, press('c')), taken).refused).toEqual({
    ...{ why: 'made again', home: HOOKS },
  });
  // The second of eight is another mark than the second of seven.
  const count: Action = {
    ...{ do: 'choose', place: { work: 'hooks', field: 'count' }, parts: typed('8'), now },
  };
  const eight = after(gone, count, press('c'));
  expect(eight.record.facts.c).toMatchObject({ mark: { rank: 1, of: 8 } });
  expect(undone(eight, taken).refused).toBeUndefined();
  const cutGone = after(begin(back, KNOWN), cut, { do: 'unmake', fact: 'cut', now });
  expect(undone(cutGone, idOf(cutGone, -1)).state.record.facts).toHaveProperty('cut');
  const other = after(cutGone, { ...cut, id: 'other' } as Action);
  expect(undone(other, idOf(cutGone, -1)).refused).toEqual({ why: 'made again', home: CUT });
});
