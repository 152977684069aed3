import { expect, test } from 'vitest';
import { act } from '../../src/garment/actions/act.ts';
import { begin } from '../../src/garment/actions/state.ts';
import { readRecord } from '../../src/garment/record/read-record.ts';
import type { Quantity } from '../../src/garment/record/record.ts';
import { soundOf } from '../../src/garment/record/sound.ts';
import { oddQuantity } from '../../src/garment/work-out/odd-quantity.ts';
import { workOut } from '../../src/garment/work-out/work-out.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const measure = (id: string, number: string, rank: number, set: Partial<Quantity> = {}) =>
  ({
    ...{ name: id, kind: 'length', rank, parts: typed(number), body: true, measure: id },
    ...set,
  }) satisfies Quantity;

const wearer = (set: Record<string, Quantity>) => garmentOf({ quantities: set });
const asked = (set: Record<string, Quantity>, id: string) =>
  oddQuantity(workOut(wearer(set), KNOWN), id);

// Relations of the survey: rows 20.33 and 20.40; the wearer is invented.
const height = measure('height', '176', 1);
const leg = measure('inside-leg-length', '31', 2);

test('a slip is asked about beside another measure, and worked with all the same', () => {
  const answer = workOut(wearer({ height, leg }), KNOWN);
  expect(oddQuantity(answer, 'leg')).toMatchObject({ past: 'least', beside: 'height' });
  expect(oddQuantity(answer, 'height')).toMatchObject({
    past: 'most',
    beside: 'inside-leg-length',
  });
  expect(answer.troubles).toEqual([]);
});

test('in inches it is usual; said to be final, or no measure of a body, nothing is asked', () => {
  const inches: Quantity = { ...leg, parts: [{ text: '31', unit: 'in' }] };
  expect(asked({ height, leg: inches }, 'leg')).toBeUndefined();
  expect(asked({ height, leg: { ...leg, final: true } }, 'leg')).toBeUndefined();
  const { measure: _, ...bare } = leg;
  expect(asked({ height, leg: bare }, 'leg')).toBeUndefined();
  expect(asked({ height, leg: { ...leg, kind: 'count' } }, 'leg')).toBeUndefined();
  expect(asked({ leg: { ...leg, parts: typed('') } }, 'leg')).toBeUndefined();
  expect(asked({ height, leg }, 'arm')).toBeUndefined();
});

test('left and right are two numbers of one measure, each held against the other measures', () => {
  const [left, right] = [measure('wrist-girth', '17', 2), measure('wrist-girth', '11', 3)];
  const hand = measure('hand-girth', '20', 1);
  const set = { hand, left, right };
  expect(asked(set, 'hand')).toMatchObject({ past: 'most', beside: 'wrist-girth' });
  expect(asked(set, 'left')).toBeUndefined();
  expect(asked(set, 'right')).toMatchObject({ past: 'least', beside: 'hand-girth' });
});

test('what was measured counts, not what was typed before', () => {
  const measured = act(begin(wearer({ height, leg }), KNOWN), {
    ...{ do: 'measure', quantity: 'leg', measured: mm(790), tape: 8000, id: 'f', now: 1 },
  }).state;
  expect(oddQuantity(measured.answer, 'leg')).toBeUndefined();
});

test('a measure of a newer build is kept as it is, and asked nothing', () => {
  const newer = wearer({ tail: measure('tail-girth', '4', 1) });
  expect(readRecord(newer)).toEqual({ ok: true, value: newer });
  expect(soundOf(newer).quantities.get('tail')?.measure).toBe('tail-girth');
  expect(oddQuantity(workOut(newer, KNOWN), 'tail')).toBeUndefined();
});

test('one that is damaged is passed over and kept', () => {
  const quantities = { height: { ...height, measure: 7 } };
  const damaged = garmentOf({ quantities });
  expect(soundOf(damaged).quantities.get('height')).not.toHaveProperty('measure');
  expect(readRecord(damaged)).toEqual({ ok: true, value: damaged });
});

test('which measure a number is, can be said of it and taken back', () => {
  const { measure: _, body: __, ...bare } = height;
  const before = begin(wearer({ height: bare }), KNOWN);
  const set = { measure: 'height', body: true } as const;
  const said = act(before, { do: 'say', of: 'quantities', ids: ['height'], set, now: 1 }).state;
  expect(said.record.quantities.height).toMatchObject(set);
  const back = act(said, { do: 'undo', change: said.log.at(-1)?.id ?? -1, now: 2 }).state;
  expect(back.record.quantities.height).toEqual(bare);
});
