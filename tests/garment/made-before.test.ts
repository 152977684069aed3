import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { takersOf } from '../../src/garment/actions/remove.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { nextOf } from '../../src/garment/next/next.ts';
import { stepsMade } from '../../src/garment/next/work-lines.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { readRecord } from '../../src/garment/record/read-record.ts';
import type { Garment } from '../../src/garment/record/record.ts';
import { openBefore } from '../../src/garment/work-out/before-cut.ts';
import { mm } from '../../src/lengths/length.ts';
import { backOne } from './trial/back-one.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 5;
const tape = 8000;
const CUT = homeOf('back', '', 'cut-length');
const FINISHED = homeOf('back', '', 'finished-length');
const ROW = homeOf('hooks', '', 'marks');

/** Invented: a back that is cut, a facing as long as it is finished, and hooks. */
const coat = (long: string) =>
  garmentOf({
    quantities: { long: { name: 'Back', kind: 'length', rank: 1, parts: typed(long) } },
    works: {
      back: {
        ...{ name: 'Back', calculation: 'toy-piece', rank: 2 },
        fields: { length: [quantity('long')], bottom: typed('2') },
      },
      facing: {
        ...{ name: 'Facing', calculation: 'toy-piece', rank: 3 },
        fields: { length: [output('back', 'finished-length')], bottom: typed('1') },
      },
      hooks: {
        ...{ name: 'Hooks', calculation: 'closures', rank: 4 },
        fields: {
          ...{ opening: [output('back', 'finished-length')], count: typed('3') },
          ...{ top: typed('1'), bottom: typed('1'), by: typed('count'), ends: typed('given') },
        },
      },
    },
  });

const after = (state: State, ...actions: readonly Action[]) =>
  actions.reduce((so, action) => act(so, action).state, state);
const before = (...homes: string[]): Action => ({ do: 'make before', homes, id: 'b', now });
const stepAt = ({ answer }: State, home: string) => answer.steps.find((step) => step.home === home);
const valueAt = ({ answer }: State, key: string) => {
  const result = answer.values.get(key);
  return result?.ok ? [result.value, result.state] : result?.trouble.kind;
};

test('it counts as made, has no number of its own, and what needs one takes the plan of now', () => {
  const state = after(begin(coat('60'), KNOWN), before(CUT));
  expect(state.record.facts).toEqual({ b: { home: CUT, before: true, when: now } });
  expect(stepAt(state, CUT)).toMatchObject({ made: 1, of: 1 });
  expect(valueAt(state, CUT)).toEqual([mm(620), 'made before']);
  expect(valueAt(state, FINISHED)).toEqual([mm(600), 'made before']);
  // No number of it is known, so that no other plan can be at odds with it.
  const place = { quantity: 'long' };
  const longer = after(state, { do: 'choose', place, parts: typed('63'), now });
  expect(longer.answer.conflicts).toEqual([]);
  expect(valueAt(longer, CUT)).toEqual([mm(650), 'made before']);
  expect(longer.record.facts).toBe(state.record.facts);
});

test('it may be said where there is no number yet: it is made, and who needs the number waits', () => {
  const state = after(begin(coat(''), KNOWN), before(CUT, ROW));
  expect(stepAt(state, CUT)).toMatchObject({ made: 1, of: 1 });
  expect(stepAt(state, ROW)).toMatchObject({ made: 1, of: 1 });
  expect(valueAt(state, CUT)).toBe('waits');
  expect(nextOf(state.answer)).toMatchObject({ kind: 'missing' });
  const typedIn = after(state, {
    ...{ do: 'choose', place: { quantity: 'long' }, parts: typed('60'), now },
  });
  expect(stepAt(typedIn, ROW)).toMatchObject({ made: 3, of: 3 });
  expect(nextOf(typedIn.answer)).toMatchObject({
    kind: 'step',
    step: { home: homeOf('facing', '', 'cut-length') },
  });
});

test('a whole row is one fact and one press, taken back as one; a row under way is refused', () => {
  const state = after(begin(coat('60'), KNOWN), before(ROW, CUT));
  expect(Object.keys(state.record.facts)).toEqual(['b-1', 'b-2']);
  expect(stepsMade(state.answer).made).toBe(2);
  const back = act(state, backOne(state, now));
  expect(back.state.record.facts).toEqual({});
  const one = after(begin(coat('60'), KNOWN), { do: 'make', home: ROW, id: 'f', tape, now });
  expect(act(one, before(ROW)).refused).toEqual({ why: 'begun' });
  expect(act(state, before(ROW)).refused).toEqual({ why: 'all made' });
  expect(act(state, { do: 'make', home: ROW, id: 'f', tape, now }).refused?.why).toBe('all made');
  expect(act(state, { do: 'measure', fact: 'b-1', measured: 1, now }).refused).toEqual({
    why: 'made before',
  });
});

test('taken back and made anew, the one taken back does not come again beside it', () => {
  const said = after(begin(coat('60'), KNOWN), before(CUT), { do: 'unmake', fact: 'b', now });
  const taken = said.log.at(-1)?.id ?? 0;
  const made = after(said, { do: 'make', home: CUT, id: 'f', tape, now });
  expect(act(made, { do: 'undo', change: taken, now }).refused).toEqual({
    ...{ why: 'made again', home: CUT },
  });
});

test('before a cut it is asked about: the number is only the plan', () => {
  const state = after(begin(coat('60'), KNOWN), before(CUT));
  expect(openBefore(state.answer, homeOf('facing', '', 'cut-length'))).toContain(CUT);
});

test('a record with one is read, and one that also has a number keeps that', () => {
  const kept = after(begin(coat('60'), KNOWN), before(CUT)).record;
  expect(readRecord(JSON.parse(JSON.stringify(kept)))).toEqual({ ok: true, value: kept });
  const fact = after(begin(coat('60'), KNOWN), {
    ...{ do: 'make', home: CUT, id: 'f', tape, now, measured: mm(610) },
  }).record.facts;
  const both: Garment = { ...kept, facts: { ...kept.facts, ...fact } };
  const { answer } = begin(both, KNOWN);
  expect(valueAt(begin(both, KNOWN), CUT)).toEqual([mm(610), 'made']);
  expect(answer.unsound).toEqual([{ part: 'fact', id: 'b' }]);
  expect(takersOf(begin(both, KNOWN), 'long').length).toBe(1);
});

test('what a number typed goes through it is still offered to no field behind it', () => {
  const state = after(begin(coat('60'), KNOWN), before(CUT));
  const ring: Action = {
    ...{ do: 'link', place: { work: 'back', field: 'length' } },
    ...{ parts: [output('facing', 'finished-length')], now },
  };
  expect(act(state, ring).refused?.why).toBe('circle');
});
