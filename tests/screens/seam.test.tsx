import { cleanup, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { seam } from '../../src/screens/seam/seam.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, open, type } from './helpers.tsx';

afterEach(cleanup);

const inchBench = benchOf({ unit: 'in' });

// Utah State University Extension, French Seam: 3/8 and 3/8 in take 3/4 in.
test('a French seam that takes more than the pattern gives is flagged', async () => {
  open(seam, { given: '5/8', first: '3/8', trim: '1/8', second: '3/8' }, inchBench);
  const said = await answer();
  expect(said).toMatch(/^3\/4.* in taken on each edge/);
  expect(said).toContain('takes 1/8');
  expect(said).toContain('more than the pattern gives');
});

test('each finish says its rows in order, is drawn, and names its source', async () => {
  open(seam, { finish: 'felled', given: '5/8' }, inchBench);
  const said = await answer();
  expect(said).toMatch(
    /1\.Sew.*2\.Trim the under layer to 1\/8.*3\.Turn the upper layer under.*4\.Stitch the fold down/s,
  );
  expect(said).toContain('bellaonline.com');
  expect(
    await screen.findByRole('img', { name: 'The seam in section, layers drawn apart' }),
  ).toBeTruthy();
});

test('the guide is in both units with the nearest line of the plate', async () => {
  open(seam, { finish: 'plain', given: '5/8' }, inchBench);
  expect(await answer()).toMatch(/15\.875 mm or 5\/8.* in from the needle.*just on it/s);
});

test('another allowance: what to trim, and what it would do to the girth', async () => {
  open(seam, { what: 'change', given: '1.5', wanted: '1', seams: '4' });
  const said = await answer();
  expect(said).toMatch(/^0\.5 cm to trim from each edge/);
  expect(said).toContain('4 cm wider');
});

test('letting out keeps what the finish needs', async () => {
  open(seam, { what: 'girth', allowance: '1.5', change: '2', seams: '4', finish: 'plain' });
  expect(await answer()).toMatch(/^0\.25 cm on each edge of each seam/);
  type('By, all round', '50');
  await screen.findByText(/By, all round: .*give at most/);
});

test('clips on a curve', async () => {
  open(seam, { what: 'curve', radius: '8', allowance: '1', opening: '0.2' });
  expect(await answer()).toMatch(/^1\.6 cm apart at most/);
});

// 0.2 × 8 ÷ 1.1 cm = 1.4545 cm: the nearest millimetre, 1.5 cm, is more than "at most".
test('clips at most so far apart are never further apart for being rounded', async () => {
  open(seam, { what: 'curve', radius: '8', allowance: '1.1', opening: '0.2' });
  expect(await answer()).toMatch(/^1\.4 cm apart at most/);
  cleanup();
  open(seam, { what: 'curve', radius: '8', allowance: '2', opening: '0.02' });
  expect(await answer()).toMatch(/^0\.08 cm apart at most/);
});

test('a French seam is said as it is done: from the raw edge, and beside the first row', async () => {
  open(seam, { finish: 'french', given: '5/8' }, inchBench);
  const said = await answer();
  expect(said).toMatch(/1\.Sew the first row, wrong sides together, 3\/8.* in from the raw edge/);
  expect(said).toMatch(/2\.Trim to 1\/8.* in from the first row \(3\/8/);
});

test('clips along a curve are marks to be followed', async () => {
  open(seam, { what: 'curve', radius: '8', allowance: '1', opening: '0.2', along: '8' });
  const said = await answer();
  expect(said).toContain('Clips4, evenly');
  expect(said).toContain('Raw edge longer (or shorter, inward) by1 cm');
  expect(screen.getByRole('button', { name: 'Follow' })).toBeTruthy();
});

const WRONG: [string, Record<string, string>, RegExp][] = [
  ['no allowance', { given: '0' }, /Pattern gives: /],
  ['too small to fell', { finish: 'felled', given: '0.5' }, /Pattern gives: .*1\.27 cm/],
  ['a second row too narrow', { second: '0.2' }, /Second row: .*more than/],
  ['half a seam', { what: 'girth', seams: '1.5' }, /Seams all round: /],
  [
    'too little to take in',
    { what: 'girth', way: 'in', allowance: '0.1', finish: 'felled' },
    /Allowance: .*at least 1\.02 cm/,
  ],
  ['clips that open by nothing', { what: 'curve', opening: '0' }, /A clip may open: /],
  ['no room for a clip', { what: 'curve', allowance: '0.3' }, /Allowance: .*more than 0\.318 cm/],
  ['no radius', { what: 'curve', radius: '0' }, /Radius of the curve: /],
];

test.each(WRONG)('%s: the field and the mend are named', async (_, set, said) => {
  open(seam, set);
  expect(await answer()).toMatch(said);
});
