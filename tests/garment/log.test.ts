import { describe, expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin, type Change, type State } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { sizeOf } from '../../src/garment/record/limits.ts';
import type { Garment } from '../../src/garment/record/record.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, output, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 5;
const tape = 8000;
const LONG_ID = 'a-rather-long-name-of-a-work-that-is-added';
const hem = (depth = typed('2')) => ({
  ...{ name: 'Hem', calculation: 'toy-hem', rank: 1, fields: { depth } },
});
/** Invented: two hems and two numbers of the garment. */
const record = garmentOf({
  quantities: {
    long: { name: 'Length', kind: 'length', rank: 1, parts: typed('60') },
    wide: { name: 'Width', kind: 'length', rank: 2, parts: typed('40') },
  },
  works: { hem: hem(), other: hem(), [LONG_ID]: hem() },
  facts: { x: { home: 'gone||', before: true, when: 1 } },
});
const START = begin({ ...record, notes: { 'hem||x': { text: 'steam' } } }, KNOWN);
const named = (name: string): Action => ({
  ...{ do: 'say', of: 'works', ids: ['hem'], set: { name }, now },
});
const made: Action = { do: 'make', home: homeOf('hem', '', 'allowance'), id: 'f', tape, now };

describe('what can be taken back', () => {
  /** So many changes and presses, in turn, of long ago. */
  const logOf = (many: number): Change[] =>
    Array.from({ length: 2 * many }, (_, i) => {
      return { id: i, what: i % 2 ? 'make' : 'say', edits: [], press: i % 2 === 1 };
    });
  const ids = (state: State, press: boolean) =>
    state.log.filter((one) => one.press === press).map(({ id }) => id);
  const upTo = (many: number, from: number) => Array.from({ length: many }, (_, i) => from + 2 * i);

  test('is the last hundred changes, and beside them the last hundred presses', () => {
    const full = begin(record, KNOWN, logOf(100));
    const changed = act(full, named('Lower hem')).state;
    expect(ids(changed, false)).toEqual([...upTo(99, 2), 200]);
    expect(ids(changed, true)).toEqual(upTo(100, 1));
    const pressed = act(full, made).state;
    expect(ids(pressed, false)).toEqual(upTo(100, 0));
    expect(ids(pressed, true)).toEqual([...upTo(99, 3), 200]);
  });

  test('is all of them as long as there are fewer', () => {
    const state = begin(record, KNOWN, logOf(99));
    expect(ids(act(state, named('Lower hem')).state, false)).toEqual([...upTo(99, 0), 198]);
  });
});

test('what changes nothing leaves the very garment that is in hand', () => {
  for (const action of [named('Hem'), { ...named('Hem'), set: {} } as Action]) {
    const done = act(START, action);
    expect(done.state).toBe(START);
    expect(done.refused).toBeUndefined();
  }
});

test('a link that closes a circle is refused also where the field was empty before', () => {
  const works = { hem: hem([]), other: hem([output('hem', 'allowance')] as never) };
  const state = begin(garmentOf({ works }), KNOWN);
  const waiting = state.answer.values.get(homeOf('other', '', 'allowance'));
  expect(waiting).toMatchObject({ ok: false, trouble: { kind: 'waits' } });
  const link: Action = {
    ...{ do: 'link', place: { work: 'hem', field: 'depth' }, now },
    parts: [output('other', 'allowance')],
  };
  expect(act(state, link).refused?.why).toBe('circle');
});

describe('how large a garment is', () => {
  const sizeNow = ({ record: { edits: _, ...rest } }: State) => sizeOf(rest);
  const note: Action = { do: 'note', home: 'hem||', note: { text: 'press it well' }, now };

  // Each within the few signs that lists and counts take.
  test.each<[string, readonly Action[]]>([
    ['a name is longer', [named('The hem of the back, turned up twice')]],
    ['a name is shorter', [named('')]],
    ['a work is taken off', [{ do: 'take off', work: LONG_ID, leave: 'wait', now }]],
    ['a number is removed', [{ do: 'remove', quantity: 'long', now }]],
    ['a step is made', [made]],
    [
      'a field is filled',
      [
        ...[
          {
            do: 'choose',
            place: { work: 'hem', field: 'round' },
            parts: typed('90'),
            now,
          } as const,
        ],
      ],
    ],
    ['a work is added', [{ do: 'add', to: 'works', id: `${LONG_ID}-2`, it: hem(), now }]],
    ['notes are kept', [note, { ...note, home: 'other||' } as Action]],
    [
      'a measure is taken',
      [{ do: 'measure', quantity: 'wide', measured: mm(7), id: 'm', tape, now } as Action],
    ],
  ])('is known when %s', (_, actions) => {
    const state = actions.reduce((so, action) => {
      const done = act(so, action);
      expect(done.refused).toBeUndefined();
      return done.state;
    }, START);
    const grown = sizeNow(state) - sizeNow(START);
    expect(Math.abs(state.size - START.size - grown)).toBeLessThan(3 * actions.length);
  });

  test('is held to the limit, but what was larger before may be made smaller, or as large', () => {
    const bare = { ...record, notes: { 'hem||': { text: '' } } } as Garment;
    const room = 1_000_000 - sizeOf(bare);
    const notes = { 'hem||': { text: 'n'.repeat(room) } };
    const full = begin({ ...bare, notes }, KNOWN);
    expect(full.size).toBe(1_000_000);
    const over = { why: 'limit', limit: 'size' };
    expect(act(full, named('Hem!')).refused).toEqual(over);
    expect(act(full, named('Hum')).refused).toBeUndefined();
    const larger = begin({ ...bare, notes: { 'hem||': { text: 'n'.repeat(room + 50) } } }, KNOWN);
    expect(act(larger, named('Hum')).refused).toBeUndefined();
    const smaller = act(larger, named('H'));
    expect(smaller.refused).toBeUndefined();
    expect(smaller.state.size).toBe(larger.size - 2);
    expect(act(smaller.state, named('He')).refused).toEqual(over);
  });
});
