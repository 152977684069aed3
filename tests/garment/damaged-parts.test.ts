import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { copyAsNewStart } from '../../src/garment/actions/copy.ts';
import { isSum } from '../../src/garment/actions/measure.ts';
import { begin } from '../../src/garment/actions/state.ts';
import { laysTaken } from '../../src/garment/materials/lays-taken.ts';
import { readRecord } from '../../src/garment/record/read-record.ts';
import type { Quantity, Work } from '../../src/garment/record/record.ts';
import { sharedGarment } from '../../src/garment/share/shared.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 5;
const WISH = { bodies: false, notes: false, times: false, goOn: true, knownOnly: true };
const hem = (depth: unknown, more: object = {}) => ({
  ...{ name: 'Hem', calculation: 'toy-hem', rank: 1, fields: { depth } },
  ...more,
});
const waist: Quantity = { name: 'Waist', kind: 'length', rank: 1, parts: typed('70'), body: true };
const long = (parts: unknown, more: object = {}) =>
  ({ ...{ name: 'Long', kind: 'length', rank: 2, parts }, ...more }) as unknown as Quantity;

/** What a damaged or made-up record may hold in the place of a part; none of it leads anywhere. */
const PARTS: readonly unknown[] = [
  ...[null, 7, 'x', [], {}, { link: 7 }, { link: null }, { link: 'x' }, { link: [] }, { link: {} }],
  ...[{ link: { work: 'b' } }, { link: { work: 7, output: 'x' } }],
  { link: { work: 'b', output: 'allowance', of: 7 } },
  { link: 7, was: { quantity: 'waist' } },
  ...[7, null, 'x', { quantity: 7 }].map((was) => ({ text: '1', unit: 'mm', was })),
  ...[undefined, 3, 'x'].map((was) => ({ put: 5, kind: 'length', was })),
];

test.each(PARTS.map((part) => [part]))(
  'a field with the part %o lets everything be done with the garment',
  (part) => {
    const record = garmentOf({
      quantities: { waist, long: long([part]) },
      works: { a: hem([part]), b: hem(typed('2')), off: hem([part], { off: true }) },
    });
    expect(readRecord(record)).toMatchObject({ ok: true });
    const state = begin(record, KNOWN);
    for (const action of [
      { do: 'take off', work: 'b', leave: 'number', now },
      { do: 'put back', work: 'off', now },
      { do: 'unlink', place: { work: 'a', field: 'depth' }, now },
      { do: 'type', place: { work: 'b', field: 'depth' }, parts: typed('3'), now },
    ] as const satisfies readonly Action[]) {
      const done = act(state, action);
      expect(done.refused).toBeUndefined();
      // What can't be read stays as it is.
      expect((done.state.record.works.a as Work).fields.depth).toEqual([part]);
    }
    expect(sharedGarment(state, WISH, 'new', () => '').quantities).not.toHaveProperty('waist');
    expect(isSum(long([part]))).toBe(typeof part === 'object' && part !== null && 'link' in part);
  },
);

const LISTS: readonly unknown[] = [undefined, 7, null, {}, ...PARTS.map((part) => [part])];

test.each(LISTS.map((parts) => [parts]))(
  'the parts %o take no lay, and what was measured there is typed in a new start',
  (parts) => {
    const record = garmentOf({ quantities: { long: long(parts, { lay: 'cloth' }) } });
    const { sound } = begin(record, KNOWN).answer;
    expect(laysTaken(sound, [quantity('long')])).toEqual(['cloth']);
    expect(laysTaken(sound, parts as never)).toEqual([]);
    const fact = { shown: mm(470), plan: mm(470), tape: 8000, rule: 0, read: '', when: 1 };
    const measured = { ...record, facts: { f: { home: 'long||', ...fact } } };
    const put = [{ put: mm(470), kind: 'length', was: { quantity: 'long' } }];
    const copied = copyAsNewStart(measured, 'new', 'Copy', now).quantities.long;
    expect(copied).toMatchObject({ parts: Array.isArray(parts) ? parts : put });
  },
);

test('what was typed where a link led goes along as it was typed, in its unit', () => {
  const part = { text: '700', unit: 'mm', mark: ',', was: { quantity: 'waist' } };
  const record = garmentOf({ quantities: { waist }, works: { a: hem([part]) } });
  const { works } = sharedGarment(begin(record, KNOWN), WISH, 'new', () => '');
  expect(works.a).toMatchObject({ fields: { depth: [{ text: '700', unit: 'mm', mark: ',' }] } });
  expect(JSON.stringify(works)).not.toContain('waist');
});
