import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { facing } from '../../src/screens/facing/facing.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, open } from './helpers.tsx';

afterEach(cleanup);

// An older Butterick text on skirts (fashion-design-drawing.com, Skirts, part 5): 3/8 in.
test('the piece gives the facing’s seam only, the facing is cut by all three', async () => {
  open(facing, { depth: '1 1/2', turn: '1/4', finished: '24' }, benchOf({ unit: 'in' }));
  const said = await answer();
  expect(said).toMatch(/^3\/8.* in to leave for the seam/);
  expect(said).toMatch(/Cut the facing deep2 1\/8/);
  expect(said).toMatch(/Cut length24 3\/8/);
  expect(said).toContain('fashion-design-drawing.com');
});

test('a bias strip says what its free edge has to give (derived here)', async () => {
  open(facing, { kind: 'bias', depth: '2', radius: '42.5' });
  const said = await answer();
  expect(said).toContain('Cut the bias strip wide3.6 cm');
  expect(said).toContain('Free edge has to give4.7 %');
});

const WRONG: [string, Record<string, string>, RegExp][] = [
  ['no depth', { depth: '0' }, /Depth, finished: /],
  ['a seam deeper than the facing', { seam: '5' }, /Facing seam: .*at most 4 cm/],
  ['less cloth than the seam', { left: '0.5' }, /Facing seam: .*at most 0\.5 cm/],
  ['deeper than the radius', { radius: '4' }, /Depth, finished: .*less than 4 cm/],
  ['deeper than the piece', { finished: '3' }, /Depth, finished: .*at most 3 cm/],
];

test.each(WRONG)('%s: the field and the mend are named', async (_, set, said) => {
  open(facing, set);
  expect(await answer()).toMatch(said);
});
