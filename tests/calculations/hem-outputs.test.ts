import { expect, test } from 'vitest';
import { hemOutputs } from '../../src/calculations/hem/outputs.ts';
import { inches, mm } from '../../src/lengths/length.ts';
import { lookUpIn } from './given.ts';

const outputs = lookUpIn(hemOutputs);
const manual = { depth: '1 in', turn: '1/2 in', edgeStitch: '1/8 in', style: 'unequal' };

// US Army FM 10-16, General Fabric Repair, fig. 8-3: turn-under 1/2 in, hem 1 in, allowance
// 1 1/2 in; folded to lines 1 in from the raw edge and 2 in from the fold; stitched 1/8 in in.
test('gives what the manual asks of a canvas hem', () => {
  const all = outputs(manual);
  expect(all.inches('first-press', 'hem-line', 'stitch')).toEqual([1 / 2, 1.5, 2.375]);
  expect(all.inches('allowance', 'depth', 'stitch-up')).toEqual([1.5, 1, 7 / 8]);
  expect(all.inches('chalk-first', 'chalk-hem')).toEqual([1, 2]);
  for (const key of ['radius', 'fullness', 'excess', 'deepest']) {
    expect(all.of(key)).toEqual({ state: 'absent', by: 'shape' });
  }
  expect(all.of('across-edge')).toEqual({ state: 'absent', by: 'taper' });
});

// By hand: pressed 1/8 in too far from the raw edge, a hem 1 in deep ends 1/8 in further; pressed
// there 1/16 in short, the hem is 15/16 in deep and takes 1 9/16 in.
test('lines as pressed move the lines after them, and what the hem takes', () => {
  const first = { 'first-press': inches(5 / 8) };
  const one = outputs(manual, { steps: first });
  expect(one.inches('hem-line', 'stitch', 'allowance')).toEqual([1.625, 2.5, 1.625]);
  expect(one.inches('depth', 'stitch-up', 'first-press')).toEqual([1, 7 / 8, 1 / 2]);
  const both = outputs(manual, { steps: { ...first, 'hem-line': inches(1.5625) } });
  expect(both.inches('allowance', 'depth', 'stitch-up')).toEqual([1.5625, 0.9375, 0.8125]);
  expect(both.inches('hem-line', 'stitch')).toEqual([1.625, 2.375]);
});

// By hand: of 1 1/2 in for the hem in all, 5/8 in turned in leaves 7/8 in.
test('a hem that takes all there is keeps its hem line, and gets less deep', () => {
  const all = { ...manual, given: 'all', depth: '1 1/2 in' };
  const pressed = outputs(all, { steps: { 'first-press': inches(5 / 8) } });
  expect(pressed.inches('hem-line', 'allowance', 'depth')).toEqual([1.5, 1.5, 0.875]);
  expect(pressed.inches('chalk-hem', 'stitch-up')).toEqual([1.75, 0.75]);
});

test('without a first turn there is no press for it, and one made before bends nothing', () => {
  const steps = { 'first-press': mm(9) };
  const once = outputs({ ...manual, style: 'single' }, { steps });
  expect(once.of('first-press')).toEqual({ state: 'absent', by: 'style' });
  expect(once.inches('hem-line')).toEqual([1]);
  const none = outputs({ ...manual, turn: '0' }, { steps });
  expect(none.of('first-press')).toEqual({ state: 'absent', by: 'turn' });
  expect(none.inches('hem-line')).toEqual([1]);
});

// Derived here: chord 400 and rise 50 are a radius of 425, 20 deep leaves 9.4 %, 6 % is 12.75 deep.
test('a curve says how full it is, inward less than nothing', () => {
  const curve = { depth: '20 mm', style: 'single', shape: 'rise', chord: '400 mm', rise: '50 mm' };
  const outward = outputs(curve);
  expect(outward.mm('radius', 'deepest')).toEqual([425, 12.75]);
  expect(outward.number('fullness')).toBeCloseTo(9.41, 2);
  const inward = outputs({ ...curve, shape: 'inward' });
  expect(inward.number('fullness')).toBeCloseTo(-9.41, 2);
  expect(inward.of('deepest')).toEqual({ state: 'absent', by: 'shape' });
});

// Derived here, as in the taper's own tests: 20 across at the hem, 21 a depth above it.
test('a taper is cut across by steps that can’t be undone', () => {
  const leg = { depth: '40 mm', turn: '10 mm', taper: 'taper', atHem: '200 mm' };
  const all = outputs({ ...leg, acrossAbove: '210 mm' });
  expect(all.mm('across-fold', 'across-edge')).toEqual([210, 207.5]);
  const cuts = hemOutputs.outputs.filter(({ step }) => step?.undoable === false);
  expect(cuts.map(({ key }) => key)).toEqual(['across-fold', 'across-edge']);
  expect(cuts.every(({ step }) => step?.caution)).toBe(true);
});

test('what a hem takes of its piece never reads what the piece is by it', () => {
  const allowance = hemOutputs.outputs.find(({ key }) => key === 'allowance');
  for (const key of ['finished', 'otherEnd', 'left']) expect(allowance?.reads).not.toContain(key);
});
