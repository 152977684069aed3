import { expect, test } from 'vitest';
import { withKept } from '../../src/garment/changes.ts';
import { type Kept, newGarment } from '../../src/garment/garment.ts';
import { inTheWay, isMeasuredTwice, typingOf } from '../../src/garment/in-the-way.ts';

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

const seen = { typing: typingOf(hem.draft), stage: hem.stage };

test('beside other things kept it is found too', () => {
  const facing = { ...hem, id: 'b', name: 'Facing', calculation: 'facing' };
  expect(inTheWay(withKept(coat, facing, 3), { ...hem, id: 'c' }, undefined)).toBe('there');
});

test('in its own place it is asked about only where another has changed what was typed', () => {
  expect(inTheWay(coat, depth('3'), seen)).toBeUndefined();
  const theirs = withKept(coat, depth('4'), 3);
  expect(inTheWay(theirs, depth('3'), seen)).toBe('changed');
  expect(inTheWay(theirs, depth('4'), seen)).toBeUndefined();
  const made = withKept(coat, { ...hem, runs: [{ planned: {}, made: { '1': '' } }] }, 3);
  expect(inTheWay(made, depth('3'), seen)).toBeUndefined();
  const moved = withKept(coat, { ...hem, stage: 'edge' }, 3);
  expect(inTheWay(moved, depth('3'), seen)).toBe('changed');
  expect(inTheWay(moved, { ...hem, stage: 'edge' }, seen)).toBeUndefined();
});

test('what was typed is told from anything else typed, and not from itself in another order', () => {
  expect(typingOf({ depth: '2', u: 'cm' })).toBe(typingOf(hem.draft));
  const others = [{ depth: '3', u: 'cm' }, { depth: '2' }, { u: 'cm2', depth: '' }, {}];
  for (const other of others) expect(typingOf(other)).not.toBe(typingOf(hem.draft));
});

test('a mark is measured twice where both have measured it since, and otherwise', () => {
  const made = (typed: string) => ({ planned: {}, made: { '3': typed } });
  const twice = (theirs: string, was: string | undefined, now: string | undefined) => {
    const map = (typed: string | undefined) => new Map(typed === undefined ? [] : [['3', typed]]);
    return isMeasuredTwice(made(theirs), map(was), map(now));
  };
  expect(twice('16 cm', undefined, '15 cm')).toBe(true);
  expect(twice('16 cm', '14 cm', '15 cm')).toBe(true);
  expect(twice('16 cm', '14 cm', undefined)).toBe(true);
  // The same here, only here, only there, or made as planned, which a measure says more of.
  expect(twice('15 cm', undefined, '15 cm')).toBe(false);
  expect(twice('14 cm', '14 cm', '15 cm')).toBe(false);
  expect(twice('16 cm', '14 cm', '14 cm')).toBe(false);
  expect(twice('', undefined, '15 cm')).toBe(false);
  expect(isMeasuredTwice(undefined, new Map(), new Map([['3', '15 cm']]))).toBe(false);
});
