import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { MOST_LINKS } from '../../src/garment/record/limits.ts';
import { readRecord } from '../../src/garment/record/read-record.ts';
import type { Parts } from '../../src/garment/record/record.ts';
import { LONGEST, mm } from '../../src/lengths/length.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { HOOKS, waistcoat } from './trial/waistcoat.ts';

const now = 5;
const tape = 8000;
const CUT = homeOf('back', '', 'cut-length');

/** Invented: a back as long as a number says, with its hem. */
const back = garmentOf({
  quantities: {
    long: { name: 'Back', kind: 'length', rank: 1, parts: typed('60') },
    spare: { name: 'Spare', kind: 'length', rank: 2, parts: typed('1') },
    seven: { name: 'Hooks', kind: 'count', rank: 3, parts: typed('7') },
  },
  works: {
    hem: { name: 'Hem', calculation: 'toy-hem', rank: 1, fields: { depth: typed('2') } },
    back: {
      ...{ name: 'Back', calculation: 'toy-piece', rank: 2 },
      fields: { length: [quantity('long')], bottom: [output('hem', 'allowance')] },
    },
  },
});
const START = begin(back, KNOWN);
const after = (...actions: readonly Action[]): State =>
  actions.reduce((state, action) => act(state, action).state, START);
const cut = (more: object = {}): Action =>
  ({ ...{ do: 'make', home: CUT, id: 'cut', tape, now }, ...more }) as Action;
const place = { work: 'hem', field: 'depth' };
const put = (parts: Parts, where: object = place, how = 'choose'): Action =>
  ({ ...{ do: how, place: where, parts, now } }) as Action;
/** A little more than a kilometre, and just one. */
const TOO_LONG = typed('1000000.1', 'mm');
const AS_LONG = typed('1000000', 'mm');
const LINKS: Parts = Array.from({ length: MOST_LINKS + 1 }, () => quantity('spare'));
const hem = (fields: object) => ({ name: 'Hem', calculation: 'toy-hem', rank: 9, fields });
const added = (to: string, it: object, id = 'new'): Action =>
  ({ do: 'add', to, id, it, now }) as unknown as Action;
const length = (parts: Parts, kind = 'length') => ({ name: 'n', kind, rank: 9, parts });
const over = (limit: string) => ({ why: 'limit', limit });

test.each<[string, Action, unknown]>([
  ['typed too long', put(TOO_LONG, place, 'type'), over('length')],
  ['put too long', put(TOO_LONG), over('length')],
  ['taken too long', put(TOO_LONG, place, 'link'), over('length')],
  ['too long a quantity', put(TOO_LONG, { quantity: 'spare' }), over('length')],
  ['too many links', put(LINKS, place, 'link'), over('links')],
  ['a work with too long a field', added('works', hem({ depth: TOO_LONG })), over('length')],
  ['one with too many links', added('works', hem({ depth: LINKS })), over('links')],
  [
    'one that isn’t known here with too many',
    added('works', { ...hem({ depth: LINKS }), calculation: 'lattice' }),
    over('links'),
  ],
  ['a quantity that is too long', added('quantities', length(TOO_LONG)), over('length')],
  ['one with too many links', added('quantities', length(LINKS)), over('links')],
  ['made too far away', cut({ measured: LONGEST + 1 }), over('length')],
  [
    'a quantity measured too long',
    {
      ...{ do: 'measure', quantity: 'spare', measured: LONGEST + 1, id: 'm', tape, now },
    },
    over('length'),
  ],
  ['an id that a work has', added('works', hem({}), 'hem'), { why: 'id taken' }],
  ['an id that a quantity has', added('works', hem({}), 'long'), { why: 'id taken' }],
  ['a quantity of a work’s id', added('quantities', length([]), 'hem'), { why: 'id taken' }],
  ['an id that is none', added('works', hem({}), 'a|b'), { why: 'id taken' }],
  [
    'a work that closes a circle',
    added('works', hem({ depth: [output('new', 'allowance')] })),
    { why: 'circle', path: [homeOf('new', '', 'allowance')] },
  ],
  [
    'a field of a work that is not there',
    put(typed('1'), { work: 'none', field: 'depth' }),
    { why: 'not there', what: 'work' },
  ],
  [
    'one of a quantity that is not there',
    put(typed('1'), { quantity: 'none' }, 'type'),
    { why: 'not there', what: 'work' },
  ],
  [
    'shared where there is no side',
    { do: 'share', place, now },
    { why: 'not there', what: 'work' },
  ],
  ['made without a tape', cut({ tape: 0 }), { why: 'no tape' }],
  [
    'made where no step is',
    cut({ home: homeOf('back', '', 'finished-length') }),
    { why: 'not there', what: 'step' },
  ],
  [
    'made before where no step is',
    { do: 'make before', homes: ['back||x'], id: 'b', now },
    { why: 'not there', what: 'step' },
  ],
  [
    'a fact that is not there',
    { do: 'unmake', fact: 'f', now },
    { why: 'not there', what: 'fact' },
  ],
  [
    'a measure of a fact that is not there',
    { do: 'measure', fact: 'f', measured: 1, now },
    { why: 'not there', what: 'fact' },
  ],
  [
    'a work taken off that is not there',
    { do: 'take off', work: 'none', leave: 'wait', now },
    { why: 'not there', what: 'work' },
  ],
  [
    'a work put back that is not there',
    { do: 'put back', work: 'none', now },
    { why: 'not there', what: 'work' },
  ],
  [
    'a work put back that is on',
    { do: 'put back', work: 'hem', now },
    { why: 'not there', what: 'work' },
  ],
  [
    'a rank of what is not there',
    { do: 'rank', of: 'works', id: 'none', rank: 3, now },
    { why: 'not there', what: 'work' },
  ],
  [
    'room made for it by what is not there',
    {
      ...{ do: 'rank', of: 'works', id: 'hem', rank: 3, now },
      room: [{ slot: ['works', 'none', 'rank'], rank: 1 }],
    },
    { why: 'not there', what: 'work' },
  ],
  [
    'steps moved of a work that is not there',
    { do: 'move', work: 'none', stage: 'cut', to: { stage: 'join', rank: 1 }, now },
    { why: 'not there', what: 'work' },
  ],
  [
    'a decision where nothing is open',
    { do: 'decide', home: CUT, way: 'noted', now },
    { why: 'not there', what: 'conflict' },
  ],
  ['a change of no one', { do: 'undo', change: 77, now }, { why: 'not there', what: 'change' }],
])('%s is refused, and nothing is written', (_, action, refused) => {
  const done = act(START, action);
  expect(done.refused).toEqual(refused);
  expect(done.state.record).toBe(back);
});

test('as much as may be is taken', () => {
  const taken = (action: Action) => expect(act(START, action).refused).toBeUndefined();
  for (const how of ['type', 'choose', 'link']) taken(put(AS_LONG, place, how));
  taken(put(LINKS.slice(1), { quantity: 'long' }, 'link'));
  taken(added('works', hem({ depth: AS_LONG, odd: typed('9'.repeat(30)) })));
  taken(added('quantities', length(AS_LONG)));
  // A count is no length, however large.
  taken(added('quantities', length(typed('2000000000'), 'count')));
  taken(put(typed('2000000000'), { quantity: 'seven' }));
  taken(put(typed('anything', 'mm'), { work: 'hem', field: 'odd' }));
  taken(cut({ measured: LONGEST }));
});

test('what is allowed to be off is a length, too; a way that there isn’t is none', () => {
  const off = after(cut({ measured: mm(640) }));
  const decide = (more: object) =>
    act(off, { ...{ do: 'decide', home: CUT, way: 'noted', now }, ...more } as Action).refused;
  expect(decide({ allow: LONGEST + 1 })).toEqual(over('length'));
  expect(decide({ allow: LONGEST })).toBeUndefined();
  expect(decide({ way: 'spread' })).toEqual({ why: 'not there', what: 'way' });
});

test('an id that is taken is refused of one that is made, and of several', () => {
  const made = after(cut());
  const width = homeOf('back', '', 'cut-width');
  const hems = homeOf('hem', '', 'allowance');
  const before = (...homes: string[]): Action => ({ do: 'make before', homes, id: 'cut', now });
  expect(act(made, before(hems)).refused).toEqual({ why: 'id taken' });
  expect(act(made, cut({ home: hems })).refused).toEqual({ why: 'id taken' });
  const second = after(cut({ id: 'cut-2' }));
  expect(act(second, before(hems, width)).refused).toEqual({ why: 'id taken' });
  expect(act(second, cut({ home: CUT, id: 'other' })).refused).toEqual({ why: 'all made' });
  const pass: Action = { do: 'pass', home: CUT, over: true, now };
  expect(act(made, pass).refused).toEqual({ why: 'all made' });
  // Taken up again it may be wherever it is.
  expect(act(made, { ...pass, home: 'gone||x', over: false }).refused).toBeUndefined();
});

test('what is being typed settles when something else is done, and typing on doesn’t settle it', () => {
  const typing = after(put(typed('3'), place, 'type'), put(typed('3.5'), place, 'type'));
  expect(typing.log).toEqual([]);
  const other = act(typing, put(typed('2'), { quantity: 'spare' }, 'type')).state;
  expect(other.record.works.hem).toMatchObject({ fields: { depth: typed('3.5') } });
  expect(other.record.pending).toEqual({ place: { quantity: 'spare' }, parts: typed('2') });
  const noted = act(typing, { do: 'note', home: 'hem||', note: { text: 'press' }, now });
  expect(noted.refused).toBeUndefined();
  expect(noted.state.log.map(({ what }) => what)).toEqual(['type', 'note']);
  // A choice in the same field, or any other press, isn’t typing on.
  const chosen = act(typing, put(typed('4'))).state;
  expect(chosen.log.map(({ what }) => what)).toEqual(['type', 'choose']);
});

test('whatever is done is counted, dated, taken back, and can be read again', () => {
  const later = 9;
  const made = after(cut({ measured: mm(640) }));
  const hooked = act(begin(waistcoat, KNOWN), {
    ...{ do: 'make', home: HOOKS, id: 'h', tape, now, upTo: 2 },
  } as Action).state;
  const cloth = { id: 'cloth', now: later } as const;
  const all: [State, Action][] = [
    [START, put(typed('3'))],
    [START, put([quantity('spare')], place, 'link')],
    [START, { do: 'unlink', place: { work: 'back', field: 'length' }, now: later }],
    [START, added('works', hem({ depth: typed('3') }))],
    [START, added('quantities', length(typed('3')))],
    [START, { do: 'rank', of: 'works', id: 'hem', rank: 7, now: later }],
    [START, { do: 'say', of: 'works', ids: ['hem'], set: { name: 'Rear hem' }, now: later }],
    [START, { do: 'material', ...cloth, set: { width: mm(1400) } }],
    [START, { do: 'material', ...cloth, need: 'back', serves: false }],
    [START, { do: 'material', ...cloth, need: 'back', long: mm(3) }],
    [START, { do: 'material', ...cloth, add: { name: 'Linen', kind: 'cloth' } }],
    [START, { do: 'lay', ...cloth, set: { nap: true } }],
    [START, { do: 'lay', ...cloth, piece: 'back', set: { oneWay: true } }],
    [START, cut()],
    [START, { do: 'make before', homes: [CUT], id: 'b', now: later }],
    [START, { do: 'pass', home: CUT, over: true, now: later }],
    [START, { do: 'note', home: 'hem||', note: { text: 'press' }, now: later }],
    [
      START,
      { do: 'measure', quantity: 'spare', measured: mm(2), id: 'm', tape, now: later } as Action,
    ],
    [made, { do: 'measure', fact: 'cut', measured: mm(641), now: later }],
    [made, { do: 'unmake', fact: 'cut', now: later }],
    [hooked, { do: 'unmake', fact: 'h-1', now: later }],
    [made, { do: 'decide', home: CUT, way: 'noted', now: later }],
    [START, { do: 'take off', work: 'hem', leave: 'wait', now: later }],
    [START, { do: 'take off', work: 'hem', leave: 'number', now: later }],
    [START, { do: 'remove', quantity: 'spare', now: later }],
    [START, { do: 'move', work: 'back', stage: 'cut', to: { stage: 'join', rank: 1 }, now: later }],
  ];
  for (const [state, action] of all) {
    const where = JSON.stringify(action);
    const done = act(state, { ...action, now: later });
    expect(done.refused, where).toBeUndefined();
    const { record, log } = done.state;
    expect(record, where).toMatchObject({ changed: later, edits: state.record.edits + 1 });
    expect(readRecord(JSON.parse(JSON.stringify(record))), where).toEqual({
      ok: true,
      value: JSON.parse(JSON.stringify(record)),
    });
    const change = log.at(-1);
    const press = /make|measure|unmake/.test(change?.what ?? '');
    expect(change?.press, where).toBe(press);
    const undone = act(done.state, { do: 'undo', change: change?.id ?? 0, now: 12 });
    expect(undone.refused, where).toBeUndefined();
    const { changed: _, edits: __, ...as } = undone.state.record;
    const { changed: ___, edits: ____, ...was } = state.record;
    expect(as, where).toEqual(was);
    expect(undone.state.record.changed, where).toBe(12);
  }
});

test('with its last fact a row begins anew, and not before', () => {
  const press: Action = { do: 'make', home: HOOKS, id: 'h', tape, now, upTo: 2 };
  const two = act(begin(waistcoat, KNOWN), press).state;
  expect(Object.keys(two.record.facts)).toEqual(['h-1', 'h-2']);
  const unmade = (state: State, fact: string) => act(state, { do: 'unmake', fact, now }).state;
  const one = unmade(two, 'h-1');
  expect(Object.keys(one.record.begun)).toEqual([HOOKS]);
  const none = unmade(one, 'h-2');
  expect(none.record).toMatchObject({ facts: {}, begun: {} });
  // A damaged fact is taken back, too; another damaged one beside it is of no row.
  const broken = begin({ ...back, facts: { x: 7, y: null, z: { home: 7 } } }, KNOWN);
  for (const fact of ['x', 'z']) {
    expect(unmade(broken, fact).record.facts).not.toHaveProperty(fact);
  }
});
