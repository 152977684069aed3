import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { madeButNotIn } from '../../src/garment/actions/copy.ts';
import { shownOn } from '../../src/garment/actions/make.ts';
import { begin, type State, withKnown } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { plusMinus } from '../../src/garment/work-out/doubt.ts';
import type { Known } from '../../src/garment/work-out/seen-work.ts';
import { mm } from '../../src/lengths/length.ts';
import type { Run } from '../../src/sewing/run.ts';
import { backOne } from './trial/back-one.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 5;
const tape = 8000;
const CUT = homeOf('back', '', 'cut-length');
const FINISHED = homeOf('back', '', 'finished-length');

const back = garmentOf({
  quantities: { long: { name: 'Back', kind: 'length', rank: 1, parts: typed('60') } },
  works: {
    back: {
      name: 'Back',
      calculation: 'toy-piece',
      rank: 2,
      fields: { length: [quantity('long')], bottom: typed('2') },
    },
  },
});

const after = (state: State, ...actions: readonly Action[]) =>
  actions.reduce((so, action) => act(so, action).state, state);
const cut = (measured?: number): Action => {
  return { do: 'make', home: CUT, id: 'cut', tape, now, ...(measured && { measured }) };
};

function numberAt({ answer }: State, key: string) {
  const result = answer.values.get(key);
  return result?.ok ? result.value : result?.trouble;
}

test('once cut, finished is cut as made less allowances, and what it lacks is one conflict, at the cut', () => {
  const state = after(begin(back, KNOWN), cut(mm(610)));
  expect(numberAt(state, FINISHED)).toBe(mm(590));
  expect(state.answer.conflicts).toEqual([{ home: CUT, facts: ['cut'], over: mm(-10) }]);
  const noted = act(state, { do: 'decide', home: CUT, way: 'noted', now }).state;
  expect(noted.answer.conflicts).toEqual([]);
  // Asked otherwise than what it answered, it holds no more.
  const place = { work: 'back', field: 'bottom' };
  const asked = act(noted, { do: 'choose', place, parts: typed('3'), now }).state;
  expect(asked.answer.conflicts).toMatchObject([{ home: CUT, over: mm(-20) }]);
});

test('a difference within the tape, or within its own doubt, is none', () => {
  expect(after(begin(back, KNOWN), cut(mm(620.5))).answer.conflicts).toEqual([]);
  const long = { ...(back.quantities.long as object), plusMinus: mm(12) };
  const sure = { ...back, quantities: { long } };
  expect(after(begin(sure, KNOWN), cut(mm(610))).answer.conflicts).toEqual([]);
});

test('where only a rule of the app changed, the conflict says so', () => {
  const state = after(begin(back, KNOWN), cut());
  const piece = KNOWN.get('toy-piece');
  if (typeof piece !== 'object') throw new Error('no piece');
  const outputs = piece.outputs.map((one) => ({
    ...one,
    of: (given: Parameters<typeof one.of>[0]) => {
      const came = one.of(given);
      return came.ok && typeof came.value === 'number'
        ? { ok: true as const, value: (came.value + mm(5)) as typeof came.value }
        : came;
    },
  }));
  const newer: Known = new Map([...KNOWN, ['toy-piece', { ...piece, rule: 2, outputs }]]);
  expect(withKnown(state, newer).answer.conflicts).toMatchObject([{ home: CUT, rule: 'only' }]);
});

test('a measure replaces what was typed and is no conflict; a sum isn’t measured', () => {
  const measure: Action = {
    do: 'measure',
    quantity: 'long',
    measured: mm(615),
    tape,
    id: 'm',
    now,
  };
  const state = after(begin(back, KNOWN), measure);
  expect(numberAt(state, CUT)).toBe(mm(635));
  expect(state.answer.conflicts).toEqual([]);
  const long = { name: 'Sum', kind: 'length', rank: 1, parts: [quantity('other')] };
  const sum = begin({ ...back, quantities: { long } }, KNOWN);
  expect(act(sum, measure).refused).toEqual({ why: 'a sum is not measured' });
});

test('fewer asked than made is said, and is no conflict: its count is what is made', () => {
  const fields = { length: typed('20'), pitch: typed('2'), end: typed('1'), fit: typed('fill') };
  const strip = { name: 'Strip', calculation: 'toy-strip', rank: 1, fields };
  const HOLES = homeOf('strip', '', 'holes');
  let state = begin(garmentOf({ works: { strip } }), KNOWN);
  state = act(state, { do: 'make', home: HOLES, id: 'h', tape, now, upTo: 10 }).state;
  expect(Object.keys(state.record.facts)).toHaveLength(10);
  const place = { work: 'strip', field: 'pitch' };
  state = act(state, { do: 'choose', place, parts: typed('4'), now }).state;
  expect(state.answer.values.get(HOLES)).toMatchObject({ row: { conflict: [], fewer: true } });
  expect(numberAt(state, homeOf('strip', '', 'count'))).toBe(10);
  // All of one press is taken back at once.
  state = act(state, backOne(state, now)).state;
  expect(state.record.facts).toEqual({});
  expect(state.record.begun).toEqual({});
});

test('a row that follows another goes where that one is made', () => {
  const hooks = {
    name: 'Hooks',
    calculation: 'closures',
    rank: 1,
    fields: { opening: typed('46.3'), count: typed('7'), top: typed('1.2'), bottom: typed('2.5') },
  };
  const eyes = {
    name: 'Eyes',
    calculation: 'toy-follow',
    rank: 2,
    fields: { row: [output('hooks', 'marks')], by: typed('1 mm') },
  };
  const home = homeOf('hooks', '', 'marks');
  const state = after(begin(garmentOf({ works: { hooks, eyes } }), KNOWN), {
    ...{ do: 'make', home, id: 'f', tape, now },
    measured: mm(20),
  });
  const run = numberAt(state, homeOf('eyes', '', 'marks')) as Run;
  expect(run.marks[0]?.at).toBe(mm(21));
  expect(state.answer.values.get(homeOf('eyes', '', 'marks'))).toMatchObject({ undecided: true });
});

test('± of a − a is none, of a + a twice, of two readings the root of their squares', () => {
  const q = (text: string, plus: number) => {
    return { name: 'n', kind: 'length', rank: 1, parts: typed(text), plusMinus: plus };
  };
  const sum = (...parts: readonly object[]) => ({ name: 's', kind: 'length', rank: 2, parts });
  const [plus, minus] = [' + ', ' − '].map((text) => ({ text, unit: 'cm' }));
  const quantities = {
    a: q('60', mm(3)),
    b: q('20', mm(4)),
    none: sum(quantity('a'), minus as object, quantity('a')),
    twice: sum(quantity('a'), plus as object, quantity('a')),
    both: sum(quantity('a'), plus as object, quantity('b')),
  };
  const { answer } = begin(garmentOf({ quantities }), KNOWN);
  const sure = (id: string) => {
    const result = answer.values.get(homeOf(id));
    return result && plusMinus(result);
  };
  expect(['none', 'twice', 'both'].map(sure)).toEqual([0, mm(6), mm(5)]);
});

test('what the key shows is on the tape; what a restore would lose is told', () => {
  expect(shownOn(12_700, { kind: 'length' }, mm(20))).toBe(13 * 12_700);
  expect(shownOn(8000, { kind: 'count' }, 7)).toBe(7);
  const made = after(begin(back, KNOWN), cut()).record;
  expect(madeButNotIn(made, back)).toEqual(['cut']);
  expect(madeButNotIn(made, made)).toEqual([]);
});
