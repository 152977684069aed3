import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { facing } from '../../src/calculations/facing/facing.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open } from '../screens/helpers.tsx';

afterEach(cleanup);

// An older Butterick text on skirts (fashion-design-drawing.com, Skirts, part 5): 3/8 in.
test('the piece gives the facing’s seam only, the facing is cut by all three', async () => {
  open(facing, { depth: '1 1/2', turn: '1/4', finished: '24' }, benchOf({ unit: 'in' }));
  const said = await answer();
  expect(said).toMatch(/^3\/8.* in to leave for the seam/);
  expect(said).toMatch(/Cut the facing deep2 1\/8/);
  expect(said).toMatch(/Cut length24 3\/8/);
  expect(said).toContain('an older dressmaking text on skirts, about 1911');
});

test('a bias strip says what its free edge has to give (derived here)', async () => {
  open(facing, { kind: 'bias', depth: '2', radius: '42.5' });
  const said = await answer();
  expect(said).toContain('Cut the bias strip wide3.6 cm');
  expect(said).toContain('Free edge has to give4.7 %');
});

test('the free edge is stitched below itself, also where the tape would round it up', async () => {
  open(facing, { depth: '4', edgeStitch: '0.04' });
  expect(await answer()).toContain('Stitch 3.9 cm above the hem line');
  cleanup();
  open(facing, { depth: '0.1', seam: '0.1', turn: '0', edgeStitch: '0.02' });
  expect(await answer()).toContain('Stitch by eye just inside the free edge');
});

// Felt of 2 mm: 0.43 mm less at the seam, 0.86 mm at the free edge (derived by hand).
test('thick cloth: the facing is cut less deep, and every number of it is shown', async () => {
  open(facing, { thickness: '0.2', finished: '60', otherEnd: '1.5' });
  const said = await answer();
  expect(said).toContain('Cut the facing deep5.471 cm');
  expect(said).toContain('1 cm + 4 cm + 0.6 cm − 0.043 cm − 0.086 cm = 5.471 cm');
  expect(said).toContain('1.5708 × 0.2 cm − 2 × 0.2 cm = −0.086 cm');
  expect(said).toContain('Cut length62.457 cm');
});

test('a cut length says when nothing is added at the other end', async () => {
  open(facing, { finished: '60' });
  expect(await answer()).toContain('Cut length61 cm, nothing added at the other end');
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

// By hand: 80 and a seam of 1 at either end.
test('with the length of its edge, how long the facing is cut, and how; of nothing there is none', () => {
  const { lines, workings } = answerTo(facing, { edge: '80', seam: '1' });
  expect(lines.find(({ label }) => label === 'Its edge')?.value).toMatch(/^82 cm: /);
  expect(workings.at(-1)?.formula).toBe('80 cm + 2 × 1 cm = 82 cm.');
  const bench = benchOf();
  const none = facing.work({ ...facing.start(bench), edge: '0' }, bench);
  expect(none).toMatchObject({ ok: false, faults: [{ field: 'edge' }] });
});
