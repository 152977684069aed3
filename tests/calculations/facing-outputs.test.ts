import { expect, test } from 'vitest';
import { facingOutputs } from '../../src/calculations/facing/outputs.ts';
import { mm } from '../../src/lengths/length.ts';
import { lookUpIn } from './given.ts';

const facing = lookUpIn(facingOutputs);
const faced = { depth: '40 mm', turn: '7 mm', edgeStitch: '2 mm', seam: '10 mm' };

// An older Butterick text on skirts (fashion-design-drawing.com, Skirts, part 5): the facing is
// joined by a seam of 3/8 in, which is all that the piece gives.
test('takes only the seam of its piece', () => {
  expect(facing({ ...faced, seam: '3/8 in' }).inches('allowance', 'seam')).toEqual([3 / 8, 3 / 8]);
});

// By its seam, its depth and its turning (common practice, no source).
test('gives how deep the facing is cut, and its lines', () => {
  const all = facing(faced);
  expect(all.mm('facing-deep', 'free-edge', 'stitch', 'stitch-up', 'depth')).toEqual([
    57, 7, 48, 38, 40,
  ]);
  expect(all.of('gives')).toEqual({ state: 'absent', by: 'kind' });
  expect(facing({ ...faced, kind: 'bias' }).of('gives')).toEqual({ state: 'absent', by: 'radius' });
  // Derived here: 40 on a radius of 400.
  expect(facing({ ...faced, kind: 'bias', radius: '400 mm' }).number('gives')).toBe(10);
  expect(facing({ ...faced, turn: '0' }).of('free-edge')).toEqual({ state: 'absent', by: 'turn' });
});

// By hand: cut 59 deep and sewn at 12, with 8 turned under, 39 of it are left below.
test('a facing as cut, sewn and turned is as deep as it came out', () => {
  const steps = { 'facing-deep': mm(59), seam: mm(12), 'free-edge': mm(8) };
  const all = facing(faced, { steps });
  expect(all.mm('allowance', 'depth', 'stitch-up', 'stitch')).toEqual([12, 39, 37, 49]);
  expect(all.mm('seam', 'facing-deep')).toEqual([10, 57]);
});

test('what it takes of its piece never reads what the piece is by it', () => {
  const allowance = facingOutputs.outputs.find(({ key }) => key === 'allowance');
  for (const key of ['finished', 'otherEnd', 'left']) expect(allowance?.reads).not.toContain(key);
});
