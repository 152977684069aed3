import { describe, expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { pendingOf, previewOf } from '../../src/garment/actions/typing.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { readRecord } from '../../src/garment/record/read-record.ts';
import type { Parts } from '../../src/garment/record/record.ts';
import { plusMinus } from '../../src/garment/work-out/doubt.ts';
import { mm } from '../../src/lengths/length.ts';
import { alike, plain } from './trial/compare.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 5;
const TAPE = 8000;
const ALLOWANCE = homeOf('hem', '', 'allowance');
const CUT = homeOf('back', '', 'cut-length');

const hem = (fields: Record<string, Parts>) => ({
  name: 'Back hem',
  calculation: 'toy-hem',
  rank: 1,
  fields,
});

/** A back piece that takes its bottom from its hem, and its length from the garment. */
const back = garmentOf({
  quantities: { long: { name: 'Back', kind: 'length', rank: 1, parts: typed('60') } },
  works: {
    hem: hem({ depth: typed('2') }),
    back: {
      name: 'Back',
      calculation: 'toy-piece',
      rank: 2,
      fields: { length: [quantity('long')], bottom: [output('hem', 'allowance')] },
    },
  },
});

const place = { work: 'hem', field: 'depth' };
const type = (text: string): Action => ({ do: 'type', place, parts: typed(text), now });
const done = (state: State, ...actions: readonly Action[]) =>
  actions.reduce((so, action) => act(so, action).state, state);

function numberAt({ answer }: Pick<State, 'answer'>, key: string) {
  const result = answer.values.get(key);
  return result?.ok ? result.value : result?.trouble;
}

describe('typing', () => {
  test('what a preview was made of settles to just that, and is worked out once', () => {
    const typing = done(begin(back, KNOWN), type('6.3'));
    const preview = previewOf(typing);
    expect(previewOf(typing)).toBe(preview);
    const settled = done(typing, { do: 'settle', now });
    expect(settled.answer).toBe(preview);
    // As without it, down to the record; and the next change looks at nothing that stays.
    const without = done(begin(back, KNOWN), type('6.3'), { do: 'settle', now });
    expect(settled.record).toEqual(without.record);
    expect(alike(settled.answer, without.answer)).toBe(true);
    const [next, other] = [settled, without].map((state) =>
      done(state, { do: 'say', of: 'works', ids: ['back'], set: { name: 'Back piece' }, now }),
    );
    expect(next?.answer.evaluated).toBe(other?.answer.evaluated);
  });

  test('a preview of an earlier typing, or of another garment, is not what settles', () => {
    const first = done(begin(back, KNOWN), type('6'));
    previewOf(first);
    const settled = done(first, type('6.3'), { do: 'settle', now });
    expect(numberAt(settled, CUT)).toBe(mm(663));
    // The same typing upon a change of another tab.
    const long = { name: 'Back', kind: 'length', rank: 1, parts: typed('70') };
    const changed = { ...back, quantities: { long }, pending: first.record.pending };
    const other = begin(changed, KNOWN);
    expect(numberAt(done(other, { do: 'settle', now }), CUT)).toBe(mm(760));
  });

  test('what is half typed changes nothing that is settled; it is seen before it settles', () => {
    const state = begin(back, KNOWN);
    const typing = done(state, type('6'), type('63'), type('63.'));
    expect(numberAt(typing, CUT)).toBe(mm(620));
    expect(pendingOf(typing.record)).toEqual({ place, parts: typed('63.') });
    const preview = previewOf(done(typing, type('6.3')));
    expect(numberAt({ answer: preview }, CUT)).toBe(mm(663));
    expect(typing.log).toEqual([]);
  });

  test('it settles as one change, with one undo', () => {
    const state = begin(back, KNOWN);
    const settled = done(state, type('6'), type('63'), type('6.3'), { do: 'settle', now });
    expect(numberAt(settled, CUT)).toBe(mm(663));
    expect(settled.log).toHaveLength(1);
    expect(settled.record.edits).toBe(back.edits + 1);
    const undone = act(settled, { do: 'undo', change: settled.log[0]?.id ?? 0, now }).state;
    expect(plain(undone.record)).toEqual(plain(back));
  });

  test('typed and typed back is no change, and no count', () => {
    const settled = done(begin(back, KNOWN), type('3'), type('2'), { do: 'settle', now });
    expect(settled.record).toEqual(back);
  });

  test('a killed tab loses nothing of it: it is in the record', () => {
    const typing = done(begin(back, KNOWN), type('3'));
    const read = readRecord(JSON.parse(JSON.stringify(typing.record)));
    const again = begin(read.ok ? read.value : back, KNOWN);
    expect(numberAt(again, CUT)).toBe(mm(620));
    expect(numberAt(done(again, { do: 'settle', now }), CUT)).toBe(mm(630));
  });

  test('a press on the key that comes upon a number still pending stores nothing', () => {
    const press: Action = { do: 'make', home: CUT, id: 'f', tape: TAPE, now };
    const pressed = act(done(begin(back, KNOWN), type('3')), press);
    expect(pressed.refused).toEqual({ why: 'stale' });
    expect(pressed.state.record.facts).toEqual({});
    expect(numberAt(pressed.state, CUT)).toBe(mm(630));
    const late = act(pressed.state, { ...press, shown: mm(620) });
    expect(late.refused).toEqual({ why: 'stale', shown: mm(630) });
    expect(act(pressed.state, { ...press, shown: mm(630) }).refused).toBeUndefined();
  });
});

describe('links', () => {
  test('one that closes a circle is refused when it is taken, with the way round', () => {
    const parts: Parts = [output('back', 'finished-length'), { text: ' ÷ 30', unit: 'cm' }];
    const refused = { why: 'circle', path: [ALLOWANCE, homeOf('back', '', 'finished-length')] };
    const state = begin(back, KNOWN);
    expect(act(state, { do: 'link', place, parts, now })).toEqual({ state, refused });
    expect(act(state, { do: 'type', place, parts, now })).toEqual({ state, refused });
  });

  test('one that came otherwise is survived: those on it say so, the rest has its value', () => {
    const works = {
      a: hem({ depth: [output('b', 'allowance')] }),
      b: hem({ depth: [output('a', 'allowance')] }),
      c: hem({ depth: [output('a', 'allowance')] }),
      d: hem({ depth: typed('2') }),
    };
    const state = begin(garmentOf({ works }), KNOWN);
    const [a, b, c, d] = ['a', 'b', 'c', 'd'].map((id) => homeOf(id, '', 'allowance'));
    expect(numberAt(state, a ?? '')).toEqual({ kind: 'circle', path: [a, b] });
    expect(numberAt(state, c ?? '')).toMatchObject({ kind: 'waits', for: a, root: a });
    expect(numberAt(state, d ?? '')).toBe(mm(20));
    const fact = { home: a, shown: mm(20), plan: mm(20), tape: TAPE, rule: 1, read: '', when: 1 };
    const made = begin(garmentOf({ works, facts: { fact } }), KNOWN);
    // What is made stands, and what hangs on it goes on from there.
    expect([a, b, c].map((key) => numberAt(made, key ?? ''))).toEqual([mm(20), mm(20), mm(20)]);
  });

  test('a sum holds them; a count beside a length is a problem at that part', () => {
    const parts: Parts = [
      { text: '2 × (', unit: 'cm' },
      quantity('long'),
      { text: ' − 1)', unit: 'cm' },
    ];
    const q = (kind: 'length' | 'count', its: Parts) => ({ name: 'n', kind, rank: 2, parts: its });
    const { quantities } = back;
    const sum = garmentOf({
      quantities: {
        ...quantities,
        twice: q('length', parts),
        seven: q('count', typed('7')),
        odd: q('length', [quantity('long'), { text: ' + ', unit: 'cm' }, quantity('seven')]),
        none: q('length', [quantity('long'), { text: '−', unit: 'cm' }, quantity('long')]),
        other: q('length', [quantity('long'), { text: ' + 1', unit: 'in' }]),
      },
    });
    const state = begin(sum, KNOWN);
    expect(numberAt(state, homeOf('twice'))).toBe(mm(1180));
    expect(numberAt(state, homeOf('odd'))).toEqual({ kind: 'kinds', field: 'value', part: 2 });
    expect(numberAt(state, homeOf('none'))).toBe(0);
    // Typed on a bench of inches.
    expect(numberAt(state, homeOf('other'))).toBe(mm(625.4));
  });

  test('taken off with its number left, what hung on it keeps that, and has its link when it is back', () => {
    const off = act(begin(back, KNOWN), {
      do: 'take off',
      work: 'hem',
      leave: 'number',
      now,
    }).state;
    const { fields } = off.record.works.back as { fields: Record<string, Parts> };
    const was = output('hem', 'allowance').link;
    expect(fields.bottom).toEqual([{ put: mm(20), kind: 'length', was }]);
    expect(numberAt(off, CUT)).toBe(mm(620));
    const waits = act(begin(back, KNOWN), {
      do: 'take off',
      work: 'hem',
      leave: 'wait',
      now,
    }).state;
    expect(numberAt(waits, CUT)).toMatchObject({ kind: 'waits', gone: { why: 'taken off' } });
    const again = act(off, { do: 'put back', work: 'hem', now }).state;
    expect(plain(again.record)).toEqual(plain(back));
  });

  test('what an option takes away is waited for, and the option is named', () => {
    const depth = [output('hem', 'first-turn')];
    const works = { ...back.works, other: hem({ depth }) };
    const state = begin(garmentOf({ works }), KNOWN);
    const trouble = { kind: 'waits', gone: { why: 'absent', by: 'turned' } };
    expect(numberAt(state, homeOf('other', '', 'allowance'))).toMatchObject(trouble);
  });

  test('left and right that differ: say which; the same side, one by name, and the total', () => {
    const strip = (more: object) => ({
      name: 'Strip',
      calculation: 'toy-strip',
      rank: 3,
      sides: ['left', 'right'],
      fields: { length: typed('62.4'), pitch: typed('8 mm'), end: typed('0.4') },
      own: { right: { length: typed('63') } },
      ...more,
    });
    const q = (of?: string) => ({
      name: 'n',
      kind: 'length',
      rank: 1,
      parts: [output('strip', 'cut', of)],
    });
    const quantities = { any: q(), left: q('left'), both: q('total') };
    const state = begin(garmentOf({ quantities, works: { strip: strip({}) } }), KNOWN);
    expect(numberAt(state, homeOf('any'))).toMatchObject({ kind: 'sides differ', part: 0 });
    expect(numberAt(state, homeOf('left'))).toBe(mm(624));
    expect(numberAt(state, homeOf('both'))).toBe(mm(1254));
    const agree = begin(garmentOf({ quantities, works: { strip: strip({ own: {} }) } }), KNOWN);
    expect(numberAt(agree, homeOf('any'))).toBe(mm(624));
    // Each is cut with a tape of millimetres: either may be half a graduation off.
    const press = (side: string): Action => {
      return { do: 'make', home: homeOf('strip', side, 'cut'), id: side, tape: TAPE, now };
    };
    const { answer } = done(agree, press('left'), press('right'));
    const made = answer.values.get(homeOf('any'));
    const half = [mm(623.5), mm(624.5)];
    expect(made).toMatchObject({ value: mm(624), ends: { 'f:left': half, 'f:right': half } });
  });
});

test('what is said of several is one change; of what is not there it is refused', () => {
  const state = begin(back, KNOWN);
  const say = (ids: string[]): Action => ({
    do: 'say',
    of: 'works',
    ids,
    set: { final: true },
    now,
  });
  const final = act(state, say(['hem', 'back'])).state;
  expect(Object.values(final.record.works)).toMatchObject([{ final: true }, { final: true }]);
  expect(final.log.length).toBe(1);
  expect(act(state, say(['hem', 'gone'])).refused).toEqual({ why: 'not there', what: 'work' });
  const undone = act(final, { do: 'undo', change: final.log[0]?.id ?? 0, now }).state;
  expect(plain(undone.record)).toEqual(plain(state.record));
});

test('how sure a reading was comes with the number that was read, and goes with it', () => {
  const record = garmentOf({
    quantities: { edge: { name: 'Edge', kind: 'length', rank: 1, parts: typed('') } },
  });
  const place = { quantity: 'edge' };
  const read: Action = { do: 'choose', place, parts: typed('46.32 ± 0.02 cm'), now: 1 };
  const state = act(begin(record, KNOWN), read).state;
  const result = state.answer.values.get('edge||');
  expect(result?.ok && [result.value, plusMinus(result)]).toEqual([mm(463.2), mm(0.2)]);
  const anew = act(state, { do: 'choose', place, parts: typed('46'), now: 2 }).state;
  expect(anew.record.quantities.edge).not.toHaveProperty('plusMinus');
  const back = act(anew, { do: 'undo', change: 2, now: 3 }).state;
  expect(back.record.quantities.edge).toEqual(state.record.quantities.edge);
});
