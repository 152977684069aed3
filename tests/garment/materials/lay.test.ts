import { describe, expect, test } from 'vitest';
import { act } from '../../../src/garment/actions/act.ts';
import { copyAsNewStart } from '../../../src/garment/actions/copy.ts';
import type { State } from '../../../src/garment/actions/state.ts';
import type { FoundLay, HeldPiece, PlacedPiece } from '../../../src/garment/record/cloth-lay.ts';
import { layIn } from '../../../src/garment/record/cloth-lay.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import { readRecord } from '../../../src/garment/record/read-record.ts';
import { sharedGarment } from '../../../src/garment/share/shared.ts';
import { mm } from '../../../src/lengths/length.ts';
import { doing, garment, one, work } from './garments.ts';

const now = 5;
const cm = (amount: number) => mm(10 * amount);
/** Cut 43 × 65.5 and 30 × 50 (worked by hand), two of each. */
const front = work('piece', 'width=40&length=60&top=1.5&bottom=4&side=1.5&count=2');
const sleeve = work('piece', 'width=30&length=50&top=0&bottom=0&side=0&count=2');
const cloth = { width: cm(140) };
const FRONT = homeOf('front', '', 'count');
const SLEEVE = homeOf('sleeve', '', 'count');

const at = (id: string, x: number, y: number): PlacedPiece => ({ id, turn: 0, x: cm(x), y: cm(y) });
/** Both fronts and a sleeve side by side, 116 of 140; the other sleeve after a front. */
const LAID = [
  at(FRONT, 32.75, 21.5),
  at(FRONT, 32.75, 64.5),
  at(SLEEVE, 25, 101),
  at(SLEEVE, 90.5, 15),
];
const LONG = 115.4;

function found(state: State, more: Partial<FoundLay> = {}): FoundLay {
  const of = one(state, 'cloth').lay?.of;
  if (!of) throw new Error('nothing to lay');
  return { length: cm(LONG), laid: LAID, of, ...more };
}
const keep = (state: State, more?: Partial<FoundLay>) =>
  doing(state, { do: 'lay', id: 'cloth', found: found(state, more), now });

const plain = () => garment({ front, sleeve }, { cloth });
const cut = (state: State, id: string, home: string) =>
  doing(state, {
    do: 'make',
    home: homeOf(home, '', `cut-${id}`),
    id: `${home}${id}`,
    tape: 8000,
    now,
  });
const wholeCut = (state: State, home: string) => cut(cut(state, 'width', home), 'length', home);

describe('a lay that was found', () => {
  test('takes the place of the upper bound, to buy with what shrinks and is spare', () => {
    const before = plain();
    expect(one(before, 'cloth')).toMatchObject({ net: cm(115.5), bound: true });
    const after = keep(before);
    expect(one(after, 'cloth')).toMatchObject({ net: cm(LONG), bound: false });
    const bought = { unit: cm(10), shrinksAlong: 500 };
    const said = doing(after, { do: 'material', id: 'cloth', set: bought, now });
    // 115.4 / 0.95 = 121.5, sold by 10.
    expect(one(said, 'cloth')).toMatchObject({ buy: cm(130), bound: false });
  });

  test('is found for these sizes: with others the bound is back, and which they are is told', () => {
    const after = keep(plain());
    const place = { work: 'front', field: 'width' };
    const parts = [{ text: '41', unit: 'cm' as const }];
    const wider = doing(after, { do: 'choose', place, parts, now });
    expect(one(wider, 'cloth')).toMatchObject({ bound: true, net: cm(115.5) });
    expect(one(wider, 'cloth').lay?.stale).toEqual({ pieces: [FRONT], cloth: false, held: false });
    const last = wider.log.at(-1)?.id ?? 0;
    const back = doing(wider, { do: 'undo', change: last, now });
    expect(one(back, 'cloth')).toMatchObject({ bound: false, net: cm(LONG) });
  });

  test.each([
    ['width', { do: 'material', id: 'cloth', set: { width: cm(150) }, now }],
    ['shrinking', { do: 'material', id: 'cloth', set: { shrinksAcross: 100 }, now }],
    ['fold', { do: 'material', id: 'cloth', set: { folded: true }, now }],
    ['nap', { do: 'lay', id: 'cloth', set: { nap: true }, now }],
    ['distance', { do: 'lay', id: 'cloth', set: { gap: cm(1) }, now }],
  ] as const)('is stale on cloth of another %s', (_, action) => {
    const stale = one(doing(keep(plain()), action), 'cloth').lay?.stale;
    expect(stale).toEqual({ pieces: [], cloth: true, held: false });
  });

  test('is there to stay, and is no change that could be taken back', () => {
    const before = plain();
    const after = keep(before);
    expect(after.log).toEqual(before.log);
    expect(after.record.edits).toBe(before.record.edits + 1);
    const again = readRecord(JSON.parse(JSON.stringify(after.record)));
    expect(again.ok && layIn(again.value, 'cloth').found?.length).toBe(cm(LONG));
  });

  test('is given up for a shorter one only, unless it no longer holds', () => {
    const after = keep(plain());
    expect(keep(after, { length: cm(LONG + 1) })).toBe(after);
    const shorter = keep(after, { length: cm(LONG - 1) });
    expect(one(shorter, 'cloth').net).toBe(cm(LONG - 1));
    const nap = doing(after, { do: 'lay', id: 'cloth', set: { nap: true }, now });
    expect(one(keep(nap, { length: cm(LONG + 1) }), 'cloth').net).toBe(cm(LONG + 1));
  });

  test('that is shorter than its pieces can be is not believed', () => {
    // (2 × 43 × 65.5 + 2 × 30 × 50) / 140 = 61.7; and no less than 65.5.
    const after = keep(plain(), { length: cm(65) });
    expect(one(after, 'cloth')).toMatchObject({ bound: true, net: cm(115.5) });
  });
});

// 7.19: one full repeat more (sew4home.com, a page for sewers); how the shop cuts, not how the pieces lie.
describe('on a pattern that comes again every 24 cm', () => {
  const repeat = cm(24);
  const patterned = () => garment({ front, sleeve }, { cloth: { ...cloth, repeat } });

  test('a lay found with it counts, and one repeat more', () => {
    const state = patterned();
    // Whole repeats a row: 72 + 72 + 24.
    expect(one(state, 'cloth')).toMatchObject({ net: cm(168), bound: true });
    expect(one(state, 'cloth').lay?.of?.repeat).toBe(repeat);
    // The other sleeve begins at 72, three repeats on: 72 + 50.
    const laid = [...LAID.slice(0, 3), at(SLEEVE, 97, 15)];
    const after = keep(state, { length: cm(122), laid });
    expect(one(after, 'cloth')).toMatchObject({ net: cm(122 + 24), bound: false });
  });

  test('one found before the pattern was said is stale, and the bound counts', () => {
    const said = doing(keep(plain()), { do: 'material', id: 'cloth', set: { repeat }, now });
    expect(one(said, 'cloth')).toMatchObject({ net: cm(168), bound: true });
    expect(one(said, 'cloth').lay?.stale).toEqual({ pieces: [], cloth: true, held: false });
  });

  test('on folded cloth no lay follows it: the bound counts', () => {
    const folded = doing(patterned(), {
      do: 'material',
      id: 'cloth',
      set: { folded: true },
      now,
    });
    const before = one(folded, 'cloth').net;
    const after = keep(folded, { length: cm(200) });
    expect(one(after, 'cloth').lay?.stale).toBeUndefined();
    expect(one(after, 'cloth')).toMatchObject({ net: before, bound: true });
  });
});

describe('what is cut', () => {
  test('keeps its place, and the lay holds', () => {
    const after = wholeCut(keep(plain()), 'front');
    const { lay, net } = one(after, 'cloth');
    expect(lay?.fixed).toEqual(LAID.slice(0, 2));
    expect([lay?.stale, net]).toEqual([undefined, cm(LONG)]);
  });

  test('otherwise than planned stays where it was; the lay is stale', () => {
    const after = keep(plain());
    const width = homeOf('front', '', 'cut-width');
    const wide = { do: 'make', home: width, id: 'w', tape: 8000, measured: cm(44), now } as const;
    const { lay } = one(cut(doing(after, wide), 'length', 'front'), 'cloth');
    expect(lay?.fixed).toEqual(LAID.slice(0, 2));
    expect(lay?.stale?.pieces).toEqual([FRONT]);
  });

  test('on the folded cloth has no place on the open one: it is out of the lay, and comes on top', () => {
    const folded = doing(plain(), { do: 'material', id: 'cloth', set: { folded: true }, now });
    // From the fold, through both layers: on open cloth these numbers are other places.
    const laid = [at(FRONT, 32.75, 21.5), at(SLEEVE, 90.5, 15)];
    const begun = wholeCut(keep(folded, { length: cm(LONG), laid }), 'front');
    expect(one(begun, 'cloth').lay?.fixed).toEqual([laid[0]]);
    const open = doing(begun, { do: 'material', id: 'cloth', set: { folded: undefined }, now });
    const lay = one(open, 'cloth').lay;
    expect(lay?.fixed).toEqual([]);
    expect([...(lay?.needs.keys() ?? [])]).toEqual([SLEEVE]);
    expect(lay?.gone.map(({ home }) => home)).toEqual([FRONT]);
    const again = doing(open, { do: 'material', id: 'cloth', set: { folded: true }, now });
    expect(one(again, 'cloth').lay).toMatchObject({ fixed: [laid[0]], stale: undefined });
  });

  test('before there was a lay is out of it, and what it took comes on top', () => {
    const state = wholeCut(plain(), 'sleeve');
    const { lay } = one(state, 'cloth');
    expect([...(lay?.needs.keys() ?? [])]).toEqual([FRONT]);
    expect(lay?.gone.map(({ home }) => home)).toEqual([SLEEVE]);
    // What was cut with a tape of millimetres is known to half of one.
    const after = keep(state, { length: cm(65.5), laid: LAID.slice(0, 2) });
    expect(one(after, 'cloth').net).toBe(cm(65.5 + 50) + mm(0.5));
  });
});

test('what the maker puts somewhere stays; a lay that has it elsewhere is stale', () => {
  const after = keep(plain());
  const moved = at(SLEEVE, 90.5, 100);
  const held = doing(after, { do: 'lay', id: 'cloth', set: { held: [moved] }, now });
  expect(one(held, 'cloth').lay).toMatchObject({
    ...{ fixed: [moved], stale: { pieces: [], cloth: false, held: true } },
  });
  const anew = keep(held, { length: cm(LONG + 5), laid: [...LAID.slice(0, 3), moved] });
  expect(one(anew, 'cloth')).toMatchObject({ net: cm(LONG + 5), bound: false });
  const gone = doing(anew, { do: 'lay', id: 'cloth', set: { held: undefined }, now });
  expect(one(gone, 'cloth').lay?.stale).toBeUndefined();
});

describe('what the maker put somewhere on the folded cloth', () => {
  const turn = (state: State, folded?: true) =>
    doing(state, { do: 'material', id: 'cloth', set: { folded }, now });
  const sleeveThere = at(SLEEVE, 90.5, 15);
  const laid = [at(FRONT, 32.75, 21.5), sleeveThere];
  const put = (held: readonly HeldPiece[]) =>
    ({ do: 'lay', id: 'cloth', set: { held }, now }) as const;

  test.each([
    ['as it is put now', { ...sleeveThere, folded: true }],
    ['as it was put before how the cloth lay was kept', sleeveThere],
  ])('has no place on the open one, and has it again folded: %s', (_, held) => {
    const folded = doing(keep(turn(plain(), true), { length: cm(LONG), laid }), put([held]));
    expect(one(folded, 'cloth').lay?.fixed).toEqual([held]);
    const open = turn(folded);
    expect(one(open, 'cloth').lay?.fixed).toEqual([]);
    const found = keep(open);
    expect(one(found, 'cloth')).toMatchObject({
      bound: false,
      lay: { fixed: [], stale: undefined },
    });
    // The shorter of two lays stays, though the one held elsewhere isn't in it.
    const longer = keep(found, { length: cm(LONG + 20) });
    expect(one(longer, 'cloth').lay?.found?.length).toBe(cm(LONG));
    expect(one(turn(found, true), 'cloth').lay?.fixed).toMatchObject([sleeveThere]);
  });
});

test('enough cloth for the lay is enough for every work, though rows would take more', () => {
  const there = { ...cloth, there: cm(LONG) };
  const state = garment({ front, sleeve }, { cloth: there });
  expect(one(state, 'cloth').stops).toEqual(['sleeve']);
  expect(one(keep(state), 'cloth')).toMatchObject({ stops: [], ticked: true });
});

test('is found for these flaws: with another it is stale, and without them it holds again', () => {
  const flaws = [{ along: cm(5), across: cm(10), long: cm(4), wide: cm(3) }];
  const after = keep(plain());
  const flawed = doing(after, { do: 'lay', id: 'cloth', set: { flaws }, now });
  expect(one(flawed, 'cloth').lay).toMatchObject({ of: { flaws }, stale: { cloth: true } });
  const again = doing(flawed, { do: 'lay', id: 'cloth', set: { flaws: undefined }, now });
  expect(one(again, 'cloth')).toMatchObject({ net: cm(LONG), bound: false });
  const none = doing(after, { do: 'lay', id: 'cloth', set: { flaws: [] }, now });
  expect(one(none, 'cloth').lay?.stale).toBeUndefined();
});

describe('in a record', () => {
  test.each([
    ['no places', { found: { length: 8000, laid: 'here', of: {} } }],
    ['half a place', { held: [{ id: 'a', turn: 0, x: 1.5, y: 0 }] }],
    ['a place off the earth', { held: [{ id: 'a', turn: 0, x: 1e300, y: 0 }] }],
    ['a flaw without a size', { flaws: [{ along: 0, across: 0, long: 0, wide: 1 }] }],
    ['half a flaw', { flaws: [{ along: 0, across: 0, long: 8000 }] }],
    ['flaws all over', { flaws: Array(21).fill({ along: 0, across: 0, long: 1, wide: 1 }) }],
    ['no record', 7],
  ])('what can’t be read stays, and nothing of it is worked with: %s', (_, said) => {
    const record = { ...plain().record, lays: { cloth: said, other: { newer: [1] } } };
    const read = readRecord(record);
    if (!read.ok) throw new Error('refused');
    expect(read.value.lays).toBe(record.lays);
    expect(layIn(read.value, 'cloth')).toEqual({});
    expect(layIn(read.value, '__proto__')).toEqual({});
  });

  test('what a newer build wrote there otherwise is not written over', () => {
    const state = plain();
    const strange = { ...state, record: { ...state.record, lays: { cloth: [7] } } };
    const done = act(strange, { do: 'lay', id: 'cloth', set: { nap: true }, now });
    expect(done.refused).toEqual({ why: 'not there', what: 'work' });
    expect(readRecord({ ...state.record, lays: [] })).toEqual({
      ...{ ok: false, damage: { kind: 'damaged', part: 'lays' } },
    });
  });

  test('too large a one is refused before it is kept', () => {
    const state = { ...plain(), size: 999_999 };
    const done = act(state, { do: 'lay', id: 'cloth', found: found(state), now });
    expect(done.refused).toEqual({ why: 'limit', limit: 'size' });
    expect(done.state).toBe(state);
  });

  test('said and taken back leaves nothing; a copy keeps it; a link leaves the lay out', () => {
    const nap = doing(plain(), { do: 'lay', id: 'cloth', set: { nap: true }, now });
    const off = doing(nap, { do: 'lay', id: 'cloth', set: { nap: undefined }, now });
    expect(off.record).not.toHaveProperty('lays');
    const after = keep(nap);
    expect(copyAsNewStart(after.record, 'b', 'B', now).lays).toEqual(after.record.lays);
    const wish = { bodies: false, notes: false, times: false, goOn: false };
    const share = (knownOnly: boolean) =>
      sharedGarment(after, { ...wish, knownOnly }, 'c', () => '').lays;
    expect(share(false)).toEqual(after.record.lays);
    expect(share(true)).toEqual({ cloth: { nap: true } });
  });
});
