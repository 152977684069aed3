import { expect, test } from 'vitest';
import { found } from '../../src/calculation/find.ts';

const LIST = [
  { name: 'Lacing', also: 'lace cord ribbon how much length' },
  { name: 'Gathers', also: 'ruffle frill cloth for a flounce' },
  { name: 'Elastic', also: 'waist casing cord length' },
  { name: 'Cord ends', also: 'knot' },
];
const PASSED = 'how much is the for a';
const names = (typed: string) => found(typed, LIST, PASSED).map(({ name }) => name);

test('what is typed is looked for in the name and in what it is for', () => {
  expect(names('frill')).toEqual(['Gathers']);
  expect(names('how much ribbon')).toEqual(['Lacing']);
  expect(names('ELÁS')).toEqual(['Elastic']);
});

test('a name goes before what it is for; else the list keeps its order', () => {
  expect(names('cord')).toEqual(['Cord ends', 'Lacing', 'Elastic']);
});

test('most of the words decide, in their usual endings too', () => {
  expect(names('frills, please')).toEqual(['Gathers']);
  expect(names('cord for a waist')).toEqual(['Elastic']);
});

test('nothing asked is everything; what nothing fits finds nothing', () => {
  expect(names(' ')).toEqual(LIST.map(({ name }) => name));
  expect(names('how much is the')).toEqual(LIST.map(({ name }) => name));
  expect(names('anvil')).toEqual([]);
});
