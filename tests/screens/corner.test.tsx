import { cleanup, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { corner } from '../../src/screens/corner/corner.ts';
import { answer, answerTo, open } from './helpers.tsx';

afterEach(cleanup);

test('a corner has its two marks, and is drawn flat and finished with the key of its lines', async () => {
  open(corner, { depth: '4', side: '1.5' });
  const said = await answer();
  expect(said).toMatch(/^3 cm along the bottom.*8 cm up the side/);
  expect(said).toContain('Trim outside the stitching0.635 cm');
  expect(await screen.findByRole('img', { name: 'Corner, flat, wrong side up' })).toBeTruthy();
  expect(await screen.findByRole('img', { name: 'Corner, finished, wrong side up' })).toBeTruthy();
  expect((await screen.findAllByText('cut line')).length).toBeGreaterThan(0);
});

test('it is drawn whatever way its angle is typed', () => {
  for (const angle of ['72,5', ' 72.5 ']) {
    const { figures } = answerTo(corner, { angle });
    expect(figures).toHaveLength(2);
    expect(JSON.stringify(figures)).not.toContain('null'); // which is how NaN is written
  }
});

test('turned twice, the first turns are pressed before anything is measured', async () => {
  open(corner, { turned: 'twice' });
  expect(await answer()).toContain('Press the first turns before you measure');
});

const WRONG: [string, Record<string, string>, RegExp][] = [
  ['no depth', { depth: '0' }, /Depth at the bottom: /],
  ['no such corner', { angle: '3' }, /Angle of the corner: .*20 to 160/],
  ['no such angle', { angle: 'right' }, /Angle of the corner: “right”/],
  ['past the other hem', { angle: '150' }, /Depth at the bottom: 4 cm must be less than 1\.732 cm/],
  ['stitched beyond the hem', { edgeStitch: '2' }, /Stitch in from fold: .*less than 1\.5 cm/],
];

test.each(WRONG)('%s: the field and the mend are named', async (_, set, said) => {
  open(corner, set);
  expect(await answer()).toMatch(said);
});
