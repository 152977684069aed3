import { expect, test } from 'vitest';
import { partsOutputs } from '../../src/calculations/parts/outputs.ts';
import { givenBy } from './given.ts';

// Quarters of the elastic to quarters of the edge is common practice, no source; worked by hand.
test('elastic of 60 cm to an edge of 96 cm: 9 cm more in each quarter', () => {
  expect(givenBy(partsOutputs, { length: '60', other: '96' })).toEqual({
    marks: [0, 150, 300, 450],
    'marks-other': [0, 240, 480, 720],
    part: 150,
    'part-other': 240,
    ease: 90,
  });
});

test('an edge that meets none has nothing of the other', () => {
  expect(givenBy(partsOutputs, { length: '72', round: 'open' })).toEqual({
    marks: [180, 360, 540],
    'marks-other': 'absent by other',
    part: 180,
    'part-other': 'absent by other',
    ease: 'absent by other',
  });
});

test('as many marks as were begun are kept, all round and between two ends', () => {
  const begun = { counts: { marks: 3 } };
  expect(givenBy(partsOutputs, { length: '60' }, begun).marks).toEqual([0, 200, 400]);
  expect(givenBy(partsOutputs, { length: '60', round: 'open' }, begun).marks).toEqual([
    150, 300, 450,
  ]);
});

// Common practice, no source: a waistband is marked where the gathered skirt's marks came to lie.
test('marks follow those of another edge, and the edge it meets by the same fractions', () => {
  expect(givenBy(partsOutputs, { length: '60', other: '96', follow: '15; 31; 45' })).toEqual({
    marks: [150, 310, 450],
    // 96 ÷ 60 = 1.6 times as far.
    'marks-other': [240, 496, 720],
    part: 'absent by follow',
    'part-other': 'absent by follow',
    ease: 'absent by follow',
  });
  expect(givenBy(partsOutputs, { length: '60', follow: '15; 31', offset: '0.5' }).marks).toEqual([
    155, 315,
  ]);
});

test('as many as are followed, whatever was begun; one off the edge is a problem of what it follows', () => {
  const begun = { counts: { marks: 3 } };
  expect(givenBy(partsOutputs, { length: '60', follow: '15; 31' }, begun).marks).toEqual([
    150, 310,
  ]);
  expect(givenBy(partsOutputs, { length: '60', follow: '15; 61' }).marks).toEqual(['follow']);
});
