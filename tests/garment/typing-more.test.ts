import { describe, expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin, type State, withKnown, written } from '../../src/garment/actions/state.ts';
import { pendingOf, previewOf, putTyping, settleTyping } from '../../src/garment/actions/typing.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { MOST_WORKS, sizeOf } from '../../src/garment/record/limits.ts';
import { readRecord } from '../../src/garment/record/read-record.ts';
import type { Garment, Parts } from '../../src/garment/record/record.ts';
import { plusMinus } from '../../src/garment/work-out/doubt.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 5;
const hem = (fields: object) => ({ name: 'Hem', calculation: 'toy-hem', rank: 1, fields });
const DEPTH = { work: 'hem', field: 'depth' };
const LONG = { quantity: 'long' };
/** Invented: a number as it was read off a tape, and a hem. */
const skirt = garmentOf({
  quantities: {
    long: { name: 'Length', kind: 'length', rank: 1, parts: typed('60'), plusMinus: mm(2) },
  },
  works: { hem: hem({ depth: typed('2') }) },
});
const withTyped = (pending: unknown, record = skirt): Garment => ({ ...record, pending });
const typing = (place: object, parts: Parts, record = skirt) => withTyped({ place, parts }, record);
const type = (state: State, place: object, parts: Parts) =>
  act(state, { do: 'type', place, parts, now } as Action);
const settled = (record: Garment) => settleTyping(begin(record, KNOWN), now).state;

describe('what a record says is being typed', () => {
  test.each([[LONG], [DEPTH], [{ ...DEPTH, side: 'left' }]])('is read: %j', (place) => {
    const pending = { place, parts: typed('3') };
    expect(pendingOf(withTyped(pending))).toEqual(pending);
  });

  test.each([
    [undefined],
    [null],
    ['3'],
    [{ parts: typed('3') }],
    [{ place: 'long', parts: typed('3') }],
    [{ place: { quantity: 7 }, parts: typed('3') }],
    [{ place: { work: 'hem' }, parts: typed('3') }],
    [{ place: { work: 7, field: 'depth' }, parts: typed('3') }],
    [{ place: { work: 'hem', field: 7 }, parts: typed('3') }],
    [{ place: { ...DEPTH, side: 7 }, parts: typed('3') }],
    [{ place: { field: 'depth', side: 'left' }, parts: typed('3') }],
    [{ place: LONG }],
    [{ place: LONG, parts: null }],
    [{ place: LONG, parts: '3' }],
    [{ place: DEPTH, parts: { 0: typed('3') } }],
  ])('is nothing where that can’t be read: %j', (pending) => {
    const record = withTyped(pending);
    expect(pendingOf(record)).toBeUndefined();
    const state = begin(record, KNOWN);
    expect(previewOf(state)).toBe(state.answer);
    // What is settled stays as it is, and nothing waits any more.
    const { pending: _, ...rest } = settleTyping(state, now).state.record;
    expect(rest).toEqual(skirt);
  });

  // What a damaged file may hold in the place of a part: everything goes on, and it can be typed over.
  test.each([[[null]], [[7]], [['x']], [[{}]], [[{ text: 7 }]], [[]]])(
    'may hold anything as a part: %j',
    (parts) => {
      for (const place of [LONG, DEPTH]) {
        const record = typing(place, parts as unknown as Parts);
        const read = readRecord(JSON.parse(JSON.stringify(record)));
        const state = begin(read.ok ? read.value : skirt, KNOWN);
        expect(previewOf(state).values.get(homeOf('hem', '', 'fullness'))?.ok).toBe(false);
        const again = type(state, place, typed('4'));
        expect(again.refused).toBeUndefined();
        expect(settleTyping(again.state, now).refused).toBeUndefined();
        expect(settled(record).record).not.toHaveProperty('pending');
      }
    },
  );
});

test('what is typed in a field that was empty settles there; where its work is gone, nowhere', () => {
  const round = settled(typing({ work: 'hem', field: 'round' }, typed('90')));
  expect(round.record.works.hem).toEqual(hem({ depth: typed('2'), round: typed('90') }));
  const gone = settled(typing({ work: 'none', field: 'depth' }, typed('3')));
  expect(gone.record).toEqual(skirt);
  expect(gone.log).toEqual([]);
});

test('of a garment of which nothing is shown it settles just as well', () => {
  const { record, log, size } = putTyping(written(typing(DEPTH, typed('3.5'))), now);
  const shown = settled(typing(DEPTH, typed('3.5')));
  expect([record, log]).toEqual([shown.record, shown.log]);
  expect([size, log.length]).toEqual([shown.size, 1]);
  const nothing = written(skirt);
  expect(putTyping(nothing, now)).toBe(nothing);
  expect(nothing.log).toEqual([]);
});

test('typed into a full garment it settles all the same: what was let in is not refused', () => {
  // Just as large as a garment may be before it is typed, which makes it larger.
  const text = `2.${'0'.repeat(188)}`;
  const bare = typing(DEPTH, typed(text), { ...skirt, name: '' });
  const full = { ...bare, name: 'n'.repeat(1_000_000 - sizeOf(bare)) };
  const depth = { fields: { depth: typed(text) } };
  expect(settleTyping(begin(full, KNOWN), now).refused).toBeUndefined();
  expect(settled(full).record.works.hem).toMatchObject(depth);
  expect(putTyping(written(full), now).record.works.hem).toMatchObject(depth);
  // What is put there at once is refused, and so is typing more.
  const { pending: _, ...rest } = full;
  const just = { ...rest, name: 'n'.repeat(1_000_000 - sizeOf({ ...rest, name: '' })) };
  const state = begin(just, KNOWN);
  const refused = { why: 'limit', limit: 'size' };
  const parts = typed(text);
  expect(act(state, { do: 'choose', place: DEPTH, parts, now }).refused).toEqual(refused);
  expect(type(state, DEPTH, parts).refused).toEqual(refused);
});

test('in a garment of more works than may be, as a file may bring it, typing goes on', () => {
  const many = Array.from({ length: MOST_WORKS + 1 }, (_, i) => [
    `w${i}`,
    { name: 'Trellis', calculation: 'none-that-is-known', rank: i, fields: {} },
  ]);
  const record = { ...skirt, works: { ...skirt.works, ...Object.fromEntries(many) } };
  const state = type(begin(record, KNOWN), DEPTH, typed('12.5')).state;
  const { record: after } = settleTyping(state, now).state;
  expect(after.works.hem).toMatchObject({ fields: { depth: typed('12.5') } });
});

test('a link within what is being typed is typed, too, where it closes no circle', () => {
  const parts = [quantity('long'), ...typed(' ÷ ')];
  const { state, refused } = type(begin(skirt, KNOWN), DEPTH, parts);
  expect(refused).toBeUndefined();
  expect(pendingOf(state.record)).toEqual({ place: DEPTH, parts });
});

describe('a preview', () => {
  const at = (state: State) => {
    const result = previewOf(state).values.get(homeOf('long'));
    return result?.ok && [result.value, plusMinus(result)];
  };

  test('of the number that stands there leaves how sure it is; of another one it doesn’t', () => {
    const state = begin(skirt, KNOWN);
    expect(at(type(state, LONG, typed('60')).state)).toEqual([mm(600), mm(2)]);
    expect(at(type(state, LONG, typed('61')).state)).toEqual([mm(610), 0]);
    expect(at(type(state, LONG, typed('61 ± 0.1 cm')).state)).toEqual([mm(610), mm(1)]);
  });

  test('is of what is known now', () => {
    const waits = new Map([...KNOWN, ['toy-hem', 'awaited'] as const]);
    const before = type(begin(skirt, waits), DEPTH, typed('3')).state;
    const home = homeOf('hem', '', 'allowance');
    expect(previewOf(before).values.get(home)?.ok).not.toBe(true);
    const known = withKnown(before, KNOWN);
    expect(previewOf(known).values.get(home)).toMatchObject({ ok: true, value: mm(30) });
    expect(settleTyping(known, now).state.answer).toBe(previewOf(known));
  });
});

test('how sure a reading is is kept of one number that was read, and of no sum', () => {
  const sure = (parts: Parts) => {
    const { record } = act(begin(skirt, KNOWN), { do: 'choose', place: LONG, parts, now }).state;
    return (record.quantities.long as { plusMinus?: number }).plusMinus;
  };
  expect(sure(typed('61.2 ± 0.2 cm'))).toBe(mm(2));
  expect(sure(typed('24 ± 0.1 in', 'in'))).toBe(mm(2.54));
  expect(sure(typed('61.2'))).toBeUndefined();
  expect(sure([...typed('61.2 ± 0.2 cm'), ...typed(' + 1')])).toBeUndefined();
  expect(sure([quantity('other'), ...typed(' + 61.2 ± 0.2 cm')])).toBeUndefined();
  expect(sure([quantity('other')])).toBeUndefined();
  expect(sure([])).toBeUndefined();
});
