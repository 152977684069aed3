import { expect, test } from 'vitest';
import { edgingOutputs } from '../../src/calculations/edging/outputs.ts';
import { mm } from '../../src/lengths/length.ts';
import { givenBy } from './given.ts';

const present = (given: Record<string, unknown>) =>
  Object.fromEntries(Object.entries(given).filter(([, one]) => !/^absent/.test(String(one))));

// The invented waistcoat's armhole strip; by hand: 62.4 − 2 × 0.4 = 61.6 cm is 77 spaces of 8 mm,
// and from 62.8 on 78 spaces of 620 ÷ 78 = 7.949 mm are nearer than 77 of 8.052.
const ARMHOLE = { rows: 'one', length: '62.4', pitch: '8 mm', end: '0.4', fit: 'fill' };

test('an armhole strip of 62.4 cm has 78 holes at 8 mm, and 79 from 62.8 on', () => {
  const { holes, ...rest } = present(givenBy(edgingOutputs, ARMHOLE));
  expect(rest).toEqual({
    'cut-strip': 624,
    'cut-width': 20,
    count: 78,
    'count-all': 78,
    pitch: 8,
    span: 616,
    margin: 5,
  });
  expect((holes as number[]).slice(0, 3)).toEqual([4, 12, 20]);
  expect(givenBy(edgingOutputs, { ...ARMHOLE, length: '62.7' }).count).toBe(78);
  expect(givenBy(edgingOutputs, { ...ARMHOLE, length: '62.8' }).count).toBe(79);
});

test('once the strip is cut its holes are placed on it, whatever was asked', () => {
  const made = { steps: { 'cut-strip': mm(632) } };
  expect(givenBy(edgingOutputs, ARMHOLE, made)).toMatchObject({
    'cut-strip': 624,
    count: 79,
    pitch: 8,
    span: 624,
  });
});

test('as many holes as were begun are kept, at the pitch that fits', () => {
  const begun = { counts: { holes: 78 } };
  const given = givenBy(edgingOutputs, { ...ARMHOLE, length: '63' }, begun);
  expect(given.count).toBe(78);
  // 630 − 8 = 622 over 77 spaces.
  expect(given.pitch).toBeCloseTo(622 / 77, 5);
  const kept = { ...ARMHOLE, fit: 'split', length: '40' };
  expect(givenBy(edgingOutputs, kept, { counts: { holes: 50 } }).count).toBe(50);
  expect(givenBy(edgingOutputs, kept, { counts: { holes: 51 } }).holes).toEqual(['length']);
});

test('a second row is counted for itself and goes with the first, begun or not', () => {
  const two = { ...ARMHOLE, rows: 'staggered' };
  expect(givenBy(edgingOutputs, two)).toMatchObject({ count: 78, 'count-2': 77, 'count-all': 155 });
  const first = givenBy(edgingOutputs, two, { counts: { holes: 70 } });
  expect(first).toMatchObject({ count: 70, 'count-2': 69 });
  const second = givenBy(edgingOutputs, two, { counts: { 'holes-2': 76 } });
  expect(second).toMatchObject({ count: 78, 'count-2': 76 });
  expect(givenBy(edgingOutputs, ARMHOLE)).toMatchObject({
    'holes-2': 'absent by rows',
    'count-2': 'absent by rows',
    'pitch-2': 'absent by rows',
  });
});

// By hand: one row 5 mm in, ends 4 mm, a square corner: its hole is 5 mm from it along either side.
// 200 − 4 − 5 = 191 mm is 24 spaces of 7.958, 200 − 5 − 4 again; the corner's hole is on both.
test('round a corner each side has its places, and the hole in the corner counts once', () => {
  const given = givenBy(edgingOutputs, { ...ARMHOLE, length: '40', corners: '20' });
  const [one, two] = [given['side-1'], given['side-2']] as number[][];
  expect([one?.at(-1), two?.[0], one?.length, two?.length]).toEqual([195, 5, 25, 25]);
  expect(given).toMatchObject({
    count: 49,
    holes: 'absent by corners',
    'side-3': 'absent by corners',
  });
  expect(given.pitch).toBeCloseTo(191 / 24, 5);
  const begun = givenBy(
    edgingOutputs,
    { ...ARMHOLE, length: '40', corners: '20' },
    { counts: { 'side-2': 24 } },
  );
  expect([begun.count, begun['side-2']?.length]).toEqual([48, 24]);
});

// Common practice, no source: the other front's holes lie opposite those that are punched.
test('a strip follows the holes of another as they are punched, on a strip of its own length', () => {
  const came = givenBy(edgingOutputs, {
    ...{ length: '20', follow: '0.4; 1.2; 2.06; 2.8', rows: 'level', end: '3', teeth: '4' },
    ...{ stock: '10', crossings: '5' },
  });
  expect(came).toMatchObject({
    ...{ 'cut-strip': 200, holes: [4, 12, 20.6, 28], 'holes-2': [4, 12, 20.6, 28] },
    ...{ count: 4, 'count-2': 4, 'count-all': 8, span: 24 },
  });
  // Never too short for a lace: the widest step.
  expect(came.pitch).toBeCloseTo(8.6, 6);
  const further = { length: '20', follow: '0.4; 1.2', offset: '0.1' };
  expect(givenBy(edgingOutputs, further, { counts: { holes: 5 } }).holes).toEqual([5, 13]);
  // Round corners each side is filled, whatever was followed before.
  const turned = { length: '40', fit: 'fill', corners: '20', follow: '0.4; 1.2' };
  expect(givenBy(edgingOutputs, turned)).toEqual(
    givenBy(edgingOutputs, { length: '40', fit: 'fill', corners: '20' }),
  );
});
