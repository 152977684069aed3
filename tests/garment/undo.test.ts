import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { lastPress } from '../../src/garment/actions/undo.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { mm } from '../../src/lengths/length.ts';
import { backOne } from './trial/back-one.ts';
import { garmentOf, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

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
