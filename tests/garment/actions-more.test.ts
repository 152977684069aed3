import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { copyAsNewStart } from '../../src/garment/actions/copy.ts';
import { linksFor } from '../../src/garment/actions/links-for.ts';
import { movedPast } from '../../src/garment/actions/move.ts';
import { moved } from '../../src/garment/actions/rank.ts';
import { takersOf } from '../../src/garment/actions/remove.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { hangsOn } from '../../src/garment/actions/works.ts';
import { writeBackup } from '../../src/garment/backup/backup.ts';
import { readStand } from '../../src/garment/backup/backup-due.ts';
import { readBackup } from '../../src/garment/backup/read-backup.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Garment, Parts } from '../../src/garment/record/record.ts';
import { spacesIn } from '../../src/garment/rows/price.ts';
import { runAt } from '../../src/garment/rows/row.ts';
import { mm } from '../../src/lengths/length.ts';
import type { Run } from '../../src/sewing/run.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 5;
const tape = 8000;
const strip = (more: object = {}) => ({
  ...{ name: 'Strip', calculation: 'toy-strip', rank: 3 },
  fields: { length: typed('62.4'), pitch: typed('8', 'mm'), end: typed('0.4') },
  ...more,
});
const hem = (parts: Parts, more: object = {}) => ({
  ...{ name: 'Hem', calculation: 'toy-hem', rank: 1, fields: { depth: parts } },
  ...more,
});
const number = (parts: Parts, more: object = {}) => ({
  ...{ name: 'n', kind: 'length', rank: 1, parts },
  ...more,
});
const on = (record: Garment, ...actions: readonly Action[]): State =>
  actions.reduce((state, action) => act(state, action).state, begin(record, KNOWN));
const depthOf = ({ record }: State, id: string) =>
  (record.works[id] as { fields: Record<string, Parts> }).fields.depth;
const SIDES = { sides: ['left', 'right'] };

test('today’s number in a link’s place: how sure it is goes along, and where there is none, nothing', () => {
  const record = garmentOf({
    quantities: {
      sure: number(typed('2')),
      read: number(typed('3'), { plusMinus: mm(1) }),
      none: number(typed('')),
    },
    works: {
      a: hem([quantity('sure')]),
      b: hem([quantity('read')]),
      c: hem([quantity('none')]),
      d: hem([quantity('gone')]),
      e: hem([quantity('sure'), ...typed(' + 1')]),
      strips: strip({ ...SIDES, own: { right: { length: typed('63') } } }),
      f: hem([output('strips', 'cut')]),
      alike: strip(SIDES),
      g: hem([output('alike', 'cut')]),
    },
  });
  const unlinked = (id: string) =>
    depthOf(on(record, { do: 'unlink', place: { work: id, field: 'depth' }, now }), id);
  const was = (id: string) => quantity(id).link;
  expect(unlinked('a')).toEqual([{ put: mm(20), kind: 'length', was: was('sure') }]);
  expect(unlinked('b')).toEqual([
    { put: mm(30), kind: 'length', plusMinus: mm(1), was: was('read') },
  ]);
  const nothing = (link: object) => [{ text: '', unit: 'cm', was: link }];
  expect(unlinked('c')).toEqual(nothing(was('none')));
  expect(unlinked('d')).toEqual(nothing(was('gone')));
  expect(unlinked('e')).toEqual([
    { put: mm(20), kind: 'length', was: was('sure') },
    ...typed(' + 1'),
  ]);
  expect(unlinked('f')).toEqual(nothing(output('strips', 'cut').link));
  expect(unlinked('g')).toMatchObject([{ put: mm(624), was: output('alike', 'cut').link }]);
  // Cut with a tape, each side is as sure as half its graduation; of two the one less sure counts.
  const cut = (side: string, by: number): Action => ({
    ...{ do: 'make', home: homeOf('alike', side, 'cut'), id: side, tape: by, now },
  });
  const made = on(record, cut('left', 8000), cut('right', 4000), {
    ...{ do: 'unlink', place: { work: 'g', field: 'depth' }, now },
  });
  expect(depthOf(made, 'g')).toMatchObject([{ put: mm(624), plusMinus: mm(0.5) }]);
});

test('of several sides one that has no number leaves the total without one; a side has its own', () => {
  const own = (text: string) => ({ ...SIDES, own: { right: { length: typed(text) } } });
  const at = { work: 'a', field: 'depth' };
  const record = (right: string, link: Parts) =>
    garmentOf({
      works: {
        strips: strip(own(right)),
        a: hem(typed('1'), { ...SIDES, own: { left: { depth: link }, right: { depth: link } } }),
        b: hem(link),
      },
    });
  const total = [output('strips', 'cut', 'total')];
  const unlink = (place: object): Action => ({ do: 'unlink', place, now }) as Action;
  const b = { work: 'b', field: 'depth' };
  expect(depthOf(on(record('63', total), unlink(b)), 'b')).toMatchObject([{ put: mm(1254) }]);
  expect(depthOf(on(record('', total), unlink(b)), 'b')).toMatchObject([{ text: '' }]);
  const cut = [output('strips', 'cut')];
  const sided = on(record('63', cut), unlink({ ...at, side: 'right' }));
  expect(sided.record.works.a).toMatchObject({
    own: { left: { depth: cut }, right: { depth: [{ put: mm(630) }] } },
  });
  const shared = act(sided, { do: 'share', place: { ...at, side: 'right' }, now }).state;
  expect(shared.record.works.a).toEqual(
    hem(typed('1'), { ...SIDES, own: { left: { depth: cut } } }),
  );
  const offered = linksFor(sided, { ...at, field: 'round', side: 'right' });
  expect(offered.find(({ output: key }) => key === 'Cut')).toMatchObject({ value: mm(630) });
});

test('put back, a work has the links again that its numbers stood for, and nothing else is linked', () => {
  const record = garmentOf({
    quantities: { long: number(typed('60')) },
    works: {
      hem: hem(typed('2')),
      other: hem(typed('3')),
      a: hem([output('hem', 'allowance')]),
      b: hem([output('other', 'allowance')]),
      c: hem([quantity('long')]),
    },
  });
  const unlink = (id: string): Action => ({
    ...{ do: 'unlink', place: { work: id, field: 'depth' }, now },
  });
  const off = on(record, unlink('b'), unlink('c'), {
    ...{ do: 'take off', work: 'hem', leave: 'number', now },
  });
  expect(off.answer.sound.works.get('hem')?.off).toBe(true);
  const again = act(off, { do: 'take off', work: 'hem', leave: 'wait', now });
  expect(again.refused).toEqual({ why: 'not there', what: 'work' });
  const back = act(off, { do: 'put back', work: 'hem', now }).state;
  expect(depthOf(back, 'a')).toEqual([output('hem', 'allowance')]);
  for (const id of ['b', 'c', 'other']) expect(depthOf(back, id)).toEqual(depthOf(off, id));
});

test('who takes something is told of each field, of sides and of works that are off, too', () => {
  const record = garmentOf({
    quantities: { long: number(typed('60')), sum: number([quantity('long'), ...typed(' + 1')]) },
    works: {
      hem: hem([quantity('long')], { ...SIDES, own: { left: { round: [quantity('long')] } } }),
      off: hem([quantity('long'), output('hem', 'allowance')], { off: true }),
      broken: 7,
      self: hem([output('self', 'allowance')]),
    },
  });
  const state = begin(record, KNOWN);
  expect(takersOf(state, 'long')).toEqual([
    ['quantities', 'sum', 'parts'],
    ['works', 'hem', 'fields', 'depth'],
    ['works', 'hem', 'own', 'left', 'round'],
    ['works', 'off', 'fields', 'depth'],
  ]);
  expect(takersOf(state, 'sum')).toEqual([]);
  expect(hangsOn(state, 'hem')).toEqual([['works', 'off', 'fields', 'depth']]);
  // What it takes of itself goes with it.
  expect(hangsOn(state, 'self')).toEqual([]);
});

test('a circle that was there already hinders no other link', () => {
  const works = {
    a: hem([output('b', 'allowance')]),
    b: hem([output('a', 'allowance')]),
    c: hem(typed('1')),
  };
  const link: Action = {
    ...{ do: 'link', place: { work: 'c', field: 'depth' }, now },
    parts: [quantity('long')],
  };
  const record = garmentOf({ quantities: { long: number(typed('60')) }, works });
  expect(act(begin(record, KNOWN), link).refused).toBeUndefined();
});

test('a copy has what was measured as typed, in the first one’s place, and nothing that was made', () => {
  const record: Garment = {
    ...garmentOf({
      quantities: {
        waist: number([]),
        hip: number(typed('90')),
        bare: number([]),
      },
      works: { hem: hem(typed('2')) },
    }),
    materials: { cloth: { name: 'Linen', there: mm(900) } },
  };
  const measure = (id: string, measured: number): Action => ({
    ...{ do: 'measure', quantity: id, measured, tape, id, now },
  });
  const state = on(record, measure('waist', mm(700)), measure('hip', mm(910)), {
    ...{ do: 'make', home: homeOf('hem', '', 'allowance'), id: 'f', tape, now },
  });
  const copy = copyAsNewStart(state.record, 'other', 'Second', 9);
  expect(copy).toEqual({
    ...record,
    ...{ id: 'other', name: 'Second', invented: false, changed: 9, edits: 1 },
    quantities: {
      waist: number([{ put: mm(700), kind: 'length', was: { quantity: 'waist' } }]),
      hip: number(typed('90')),
      bare: number([]),
    },
    materials: { cloth: { name: 'Linen' } },
  });
});

test('a work that is taken off is nothing to be moved past', () => {
  const works = {
    a: hem(typed('1'), { rank: 1 }),
    off: hem(typed('1'), { rank: 2, off: true }),
    b: hem(typed('1'), { rank: 3 }),
  };
  const state = begin(garmentOf({ works }), KNOWN);
  expect(moved(state, 'b', -1)).toEqual({ of: 'works', id: 'b', rank: 0.5 });
  expect(moved(state, 'off', 1)).toBeUndefined();
  // Between two ranks that lie as near as numbers can, all are numbered anew.
  const near = 1 + Number.EPSILON;
  const close = { ...works, off: hem(typed('1'), { rank: near }), c: hem(typed('1'), { rank: 9 }) };
  delete (close.off as { off?: true }).off;
  expect(moved(begin(garmentOf({ works: close }), KNOWN), 'b', -1)).toEqual({
    ...{ of: 'works', id: 'b', rank: 1.5 },
    room: [
      { slot: ['works', 'a', 'rank'], rank: 1 },
      { slot: ['works', 'off', 'rank'], rank: 2 },
      { slot: ['works', 'c', 'rank'], rank: 4 },
    ],
  });
});

test('steps are not moved of a stage or a side they aren’t of, nor past what stands where they do', () => {
  const works = {
    a: strip({ rank: 1, fields: { ...strip().fields, fit: typed('keep'), rows: typed('one') } }),
    b: strip({ rank: 1, fields: { ...strip().fields, fit: typed('keep'), rows: typed('one') } }),
  };
  const state = begin(garmentOf({ works }), KNOWN);
  expect(movedPast(state, { work: 'a', stage: 'join' }, 1)).toBeUndefined();
  expect(movedPast(state, { work: 'a', stage: 'cut', side: 'left' }, 1)).toBeUndefined();
  expect(movedPast(state, { work: 'a', stage: 'cut' }, -1)).toBeUndefined();
  expect(movedPast(state, { work: 'b', stage: 'edge' }, 1)).toBeUndefined();
  const past = movedPast(state, { work: 'b', stage: 'cut' }, -1);
  expect(past).toMatchObject({ work: 'b', to: { stage: 'cut', rank: 0 }, past: { work: 'a' } });
});

test('of several sides each is offered by name, with its own number, and a total where all have one', () => {
  const offered = (works: object, field = 'round') =>
    linksFor(begin(garmentOf({ works: { ...works, hem: hem(typed('1')) } } as never), KNOWN), {
      work: 'hem',
      field,
    }).filter(({ output: key }) => key === 'Cut');
  const link = (of?: string) => output('strip', 'cut', of).link;
  const base = { kind: 'length', name: 'Strip', output: 'Cut', plusMinus: 0 };
  expect(offered({ strip: strip() })).toEqual([{ ...base, link: link(), value: mm(624) }]);
  const alike = offered({ strip: strip(SIDES) });
  expect(alike).toEqual([
    { ...base, link: link(), value: mm(624) },
    { ...base, link: link('total'), of: 'total', value: mm(1248) },
  ]);
  const differ = offered({ strip: strip({ ...SIDES, own: { right: { length: typed('63') } } }) });
  expect(differ.map(({ of, value }) => [of, value])).toEqual([
    ['left', mm(624)],
    ['right', mm(630)],
    ['total', mm(1254)],
  ]);
  expect(offered({ strip: strip({ off: true }) })).toEqual([]);
  // What waits is offered, too, without a number.
  const waits = offered({ strip: strip({ fields: {} }) });
  expect(waits).toEqual([{ ...base, link: link() }]);
  // An output that only one side has, as its options leave it.
  const turned = (text: string) => ({ turned: typed(text) });
  const hems = {
    other: hem(typed('2'), { ...SIDES, own: { left: turned('twice'), right: turned('once') } }),
  };
  const first = linksFor(begin(garmentOf({ works: { ...hems, hem: hem(typed('1')) } }), KNOWN), {
    work: 'hem',
    field: 'round',
  }).filter(({ output: key }) => key === 'First turn');
  expect(first.map(({ of }) => of)).toEqual([undefined]);
});

test('what a quantity takes of itself is not offered, nor a count to a length alone', () => {
  const record = garmentOf({
    quantities: { long: number(typed('60')), seven: number(typed('7'), { kind: 'count' }) },
    works: { hem: hem([quantity('long')]) },
  });
  const names = (place: object, factor = false) =>
    linksFor(begin(record, KNOWN), place as never, factor).flatMap(({ link }) =>
      'quantity' in link ? [link] : [],
    );
  expect(names({ quantity: 'long' })).toEqual([]);
  expect(names({ quantity: 'long' }, true)).toEqual([{ quantity: 'seven' }]);
  expect(names({ quantity: 'seven' })).toEqual([]);
  expect(names({ quantity: 'seven' }, true)).toEqual([]);
  expect(names({ quantity: 'none' })).toEqual([]);
  expect(names({ work: 'hem', field: 'turn' })).toEqual([{ quantity: 'long' }]);
  // A field nobody knows takes nothing, also with a name that every list has.
  expect(names({ work: 'hem', field: 'toString' })).toEqual([]);
});

test('a backup tells what was changed in it: a sum that is wrong, and one that is missing where all have one', () => {
  const text = writeBackup([garmentOf({})]);
  const damagedIn = (changed: string) => {
    const read = readBackup(changed);
    return read.ok && [...read.damaged];
  };
  expect(damagedIn(text)).toEqual([]);
  expect(damagedIn(text.replace(/"sum":"\w+",/, ''))).toEqual(['g']);
  const {
    quantities: _,
    works: __,
    facts: ___,
    begun: ____,
    decisions: _____,
    ...bare
  } = garmentOf({});
  const old = { ...bare, version: 2, kept: [], takenOff: [] };
  const file = (garment: object) =>
    JSON.stringify({ format: 'thumbrule backup', version: 1, garments: [garment] });
  expect(damagedIn(file(old))).toEqual([]);
  expect(damagedIn(file({ sum: '00000000', ...old }))).toEqual(['g']);
});

test('what was counted at the last backup is read as far as it is a count', () => {
  expect(readStand({ at: 1, edits: { a: 2, b: '3' } })).toEqual({ at: 1, edits: { a: 2 } });
  expect(Object.keys(readStand({ at: 1, edits: {} }) ?? {})).toEqual(['at', 'edits']);
  expect(readStand({ at: 1, edits: {}, facts: { a: null } })).toMatchObject({ facts: {} });
});

test('spaces from mark to mark are all looked at, and a row of another number of marks is numbered anew', () => {
  expect(spacesIn([0, 10, 15, 35])).toEqual({ least: 5, most: 20 });
  const mark = (label: string) => ({ at: mm(1), label, kind: 'hole' as const });
  const run: Run = { datum: 'zero', length: mm(90), marks: [mark('a'), mark('b')] as never };
  const { marks } = runAt(run, [0, 8000, 16_000], []).run;
  expect(marks).toEqual([
    { at: 0, label: '1', kind: 'hole' },
    { at: 8000, label: '2', kind: 'hole' },
    { at: 16_000, label: '3', kind: 'hole' },
  ]);
});
