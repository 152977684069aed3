import { expect, test } from 'vitest';
import { sharesFields } from '../../src/calculations/shares/fields.ts';
import { sharesOutputs } from '../../src/calculations/shares/outputs.ts';
import { inches } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { givenBy, lookUpIn } from './given.ts';

const shares = lookUpIn(sharesOutputs);
const hip = { ...sharesFields.asked.start(benchOf()), change: '8 in', step: '1/8 in' };

// patternstudio101.com, skirt darts (a teaching page): 13, 8 and 16 %; printed 1, 5/8, 1 1/4 in, 1/4 in short of 8.
test('15.2: what each edge and dart takes, and that nothing is left', () => {
  const all = shares(hip);
  expect(all.inches('side-edge', 'front-dart', 'back-dart')).toEqual([1, 5 / 8, 1 + 3 / 8]);
  expect(all.inches('side-edges', 'front-darts', 'back-darts')).toEqual([4, 1 + 1 / 4, 2 + 3 / 4]);
  expect(all.number('left')).toBe(0);
  expect(all.of('panel-edge')).toEqual({ state: 'absent', by: 'panelEdges' });
  expect(all.of('above-line')).toEqual({ state: 'absent', by: 'what' });
});

test('as changed: back darts of 1 1/4 in, as the page has them, leave 1/4 in', () => {
  const made = shares(hip, { steps: { 'back-dart': inches(1.25) } });
  expect(made.inches('back-darts', 'left')).toEqual([2.5, 0.25]);
});

// By hand: 5 cm of a sleeve, half above the elbow and half below.
test('a length, above and below', () => {
  const sleeve = givenBy(sharesOutputs, { what: 'length', change: '5', step: '0.5' });
  expect(sleeve).toMatchObject({
    'above-line': 25,
    'below-line': 25,
    'hem-edge': 0,
    left: 0,
    'side-edge': 'absent by what',
  });
});
