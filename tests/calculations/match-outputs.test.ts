import { expect, test } from 'vitest';
import { matchOutputs } from '../../src/calculations/match/outputs.ts';
import { mm } from '../../src/lengths/length.ts';
import { givenBy } from './given.ts';

// 12, 12, 11, 11 and 12, 12.6, 11.6, 11, worked by hand: 1.2 on 46 is 2.609 %; 0.6 on 11 is 5.455 %.
test('an armhole and its sleeve head: the ease of each length, marks on both, where notches should be', () => {
  const found = givenBy(matchOutputs, {});
  expect(found).toMatchObject({
    marks: [60, 120, 180, 240, 295, 350, 405],
    'marks-other': [60, 120, 183, 246, 304, 362, 417],
    'sewn-1': 120,
    'sewn-4': 460,
    'sewn-5': 'absent by here',
    'ease-1': 0,
    'ease-2': 6,
    'ease-3': 6,
    'ease-5': 'absent by here',
    ease: 12,
    // By length 12 and 11 of 23: 6.261 in the second, so its notch is 0.261 further on.
    'move-1': 0,
    'move-2': expect.closeTo(0.26087, 4),
    'move-3': 0,
    'move-4': 'absent by here',
  });
  expect(found.percent).toBeCloseTo(2.6087, 4);
  expect(found.fullest).toBeCloseTo(5.4545, 4);
});

test('a head of which only the whole is known has no notches to move', () => {
  expect(givenBy(matchOutputs, { other: '47.2' })).toMatchObject({
    'ease-1': 0,
    'ease-4': 0,
    ease: 12,
    'move-1': 'absent by other',
  });
});

// By hand: the second notch met 3 mm early, so its length was 11.7 and eases 0.9, the third 11.3 and 0.3.
test('as sewn: a notch that met early takes its ease from the next length', () => {
  const sewn = { steps: { 'sewn-2': mm(237) } };
  expect(givenBy(matchOutputs, {}, sewn)).toMatchObject({
    'ease-1': 0,
    'ease-2': 9,
    'ease-3': 3,
    ease: 12,
    'sewn-3': 350,
  });
});

test('as sewn: an end that came short is more ease in all', () => {
  const sewn = { steps: { 'sewn-4': mm(455) } };
  const found = givenBy(matchOutputs, {}, sewn);
  expect(found).toMatchObject({ 'ease-4': 5, ease: 17 });
  expect(found.percent).toBeCloseTo(3.6957, 4);
});

// By hand: 47.2 on 46.
test.each([
  ['other', { other: '24.4; 22.8' }],
  ['here', { here: '46', other: '12; 12.6; 11.6; 11' }],
])('of lengths that don’t pair, fewer of %s: what they come to in all', (fewer, set) => {
  const away = `absent by ${fewer}`;
  const found = givenBy(matchOutputs, set);
  expect(found).toMatchObject({
    marks: away,
    'marks-other': away,
    'sewn-1': away,
    'ease-1': away,
    'ease-unpaired': 12,
    ease: 12,
    fullest: away,
    'move-1': away,
  });
  expect(found.percent).toBeCloseTo(2.6087, 4);
});

test('of lengths that pair nothing is unpaired', () => {
  expect(givenBy(matchOutputs, {})).toMatchObject({
    'ease-unpaired': 'absent by other',
    left: 'absent by other',
  });
});

// By hand, as in match.test.tsx: 12, 23, 11 and 12, 24.4, 10.8.
test('with a notch left over the lengths that pair give their ease, marks and moves', () => {
  const found = givenBy(matchOutputs, { other: '12; 24.4; 10.8', alone: '2', parts: '1' });
  expect(found).toMatchObject({
    marks: [120, 350],
    // The armhole has more: its second notch lies 12 + 12 from where it begins.
    left: [240],
    'marks-other': [120, 364],
    'sewn-2': 350,
    'sewn-4': 'absent by other',
    'ease-1': 0,
    'ease-2': expect.closeTo(14, 6),
    'ease-3': expect.closeTo(-2, 6),
    'ease-4': 'absent by other',
    'ease-unpaired': 'absent by other',
    'move-3': 'absent by other',
    ease: 12,
  });
});
