import { expect, test } from 'vitest';
import { cornerOutputs } from '../../src/calculations/corner/outputs.ts';
import { mm } from '../../src/lengths/length.ts';
import { lookUpIn } from './given.ts';

const corner = lookUpIn(cornerOutputs);
const square = { depth: '40 mm', side: '15 mm', angle: '90', turned: 'once' };

// At a right angle the marks are twice the other depth (derived here). Hand Sewing Lessons,
// model 7: trimmed 1/4 in outside.
test('gives the folds and marks of both edges', () => {
  const all = corner(square);
  expect(all.mm('fold-bottom', 'mitre-bottom', 'fold-side', 'mitre-side')).toEqual([
    15, 30, 40, 80,
  ]);
  expect(all.inches('trim')).toEqual([1 / 4]);
});

// By hand: a side hem pressed 17 mm from its edge has its mark at twice that, and the other stays;
// at 60° half of it is added to the other too: 2 × (p + q × cos 60°).
test('folds as pressed move the marks after them', () => {
  const bent = corner(square, { steps: { 'fold-bottom': mm(17) } });
  expect(bent.mm('mitre-bottom', 'mitre-side', 'fold-bottom')).toEqual([34, 80, 15]);
  const steps = { 'fold-bottom': mm(20), 'fold-side': mm(50) };
  const sharp = corner({ ...square, angle: '60' }, { steps });
  const [bottom = 0, side = 0] = sharp.mm('mitre-bottom', 'mitre-side');
  expect(bottom).toBeCloseTo(2 * (20 + 50 / 2), 3);
  expect(side).toBeCloseTo(2 * (50 + 20 / 2), 3);
});

test('only the trimming can’t be undone, and says so', () => {
  const last = cornerOutputs.outputs.filter(({ step }) => step && !step.undoable);
  expect(last.map(({ key, step }) => [key, step?.caution])).toEqual([
    ['trim', 'Check the corner turned out before you trim: what is cut off stays off.'],
  ]);
});
