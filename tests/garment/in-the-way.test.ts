import { expect, test } from 'vitest';
import { withKept } from '../../src/garment/changes.ts';
import { type Kept, newGarment } from '../../src/garment/garment.ts';
import { inTheWay } from '../../src/garment/in-the-way.ts';

const hem: Kept = {
  id: 'a',
  name: 'Hem',
  stage: 'turn-up',
  calculation: 'hem',
  draft: { u: 'cm', depth: '2' },
  runs: [],
};
const coat = withKept(newGarment('coat', 'Coat', 1), hem, 2);
const depth = (of: string) => ({ ...hem, draft: { ...hem.draft, depth: of } });

test('the same under another id is there already; anything else about it makes it another', () => {
  const again = { ...hem, id: 'b' };
  expect(inTheWay(coat, again, undefined)).toBe('there');
  for (const other of [
    { name: 'Back hem' },
    { stage: 'edge' as const },
    { calculation: 'facing' },
    { draft: { u: 'cm', depth: '3' } },
    { draft: { u: 'cm', depth: '2', turn: '1' } },
  ]) {
    expect(inTheWay(coat, { ...again, ...other }, undefined)).toBeUndefined();
  }
});

test('in its own place it is asked about only where another has changed what was typed', () => {
  expect(inTheWay(coat, depth('3'), hem)).toBeUndefined();
  const theirs = withKept(coat, depth('4'), 3);
  expect(inTheWay(theirs, depth('3'), hem)).toBe('changed');
  expect(inTheWay(theirs, depth('4'), hem)).toBeUndefined();
  const made = withKept(coat, { ...hem, runs: [{ planned: {}, made: { '1': '' } }] }, 3);
  expect(inTheWay(made, depth('3'), hem)).toBeUndefined();
});
