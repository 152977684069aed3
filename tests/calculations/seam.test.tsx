import { cleanup, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { seamOutputs } from '../../src/calculations/seam/outputs.ts';
import { seam } from '../../src/calculations/seam/seam.ts';
import { inches } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type } from '../screens/helpers.tsx';
import { workOutputs } from './work-outputs.ts';

afterEach(cleanup);

const inchBench = benchOf({ unit: 'in' });

// Utah State University Extension, French Seam: 3/8 and 3/8 in take 3/4 in.
test('an under layer that is cut narrower is laid in from the upper one’s edge, and not trimmed', async () => {
  open(seam, { finish: 'felled', laid: 'inset' });
  const said = await answer();
  expect(said).toContain(
    'Lay the under layer back from the upper one’s raw edge by 1.2 cm: its own is 0.3 cm',
  );
  expect(said).not.toContain('Trim the under layer');
  expect(screen.getByLabelText(/^Under layer takes/)).toHaveProperty('value', '0.3');
});

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
  expect(said).toContain('a teaching page on seam finishes');
  expect(said).not.toMatch(/\.com|\.wiki/);
  expect(
    await screen.findByRole('img', { name: 'The seam in section, layers drawn apart' }),
  ).toBeTruthy();
});

test('the guide is in both units with the nearest line of the plate', async () => {
  open(seam, { finish: 'plain', given: '5/8' }, inchBench);
  expect(await answer()).toMatch(/15\.875 mm or 5\/8.* in from the needle.*just on it/s);
});

test('an edge beside the nearest line is told which side of it to keep', () => {
  const plateFor = (given: string) =>
    answerTo(seam, { finish: 'plain', given }, benchOf({ unit: 'mm' })).lines.find(({ label }) =>
      label.startsWith('Nearest line of the plate'),
    )?.value;
  // Lines at 15 mm and 5/8 in, 15.875 mm (common practice, no source).
  expect(plateFor('16')).toBe('5/8 in; keep the edge 0.12 mm past it, away from the needle');
  expect(plateFor('14.8')).toBe('15 mm; keep the edge 0.2 mm short of it, towards the needle');
  expect(plateFor('15')).toBe('15 mm, just on it');
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
  expect(await answer()).toMatch(/^1\.2 cm apart at most.*By what a clip may open1\.6 cm/);
});

// 0.2 × 6 ÷ 1.1 cm = 1.0909 cm: the nearest millimetre, 1.1 cm, is more than "at most".
test('clips at most so far apart are never further apart for being rounded', async () => {
  open(seam, { what: 'curve', radius: '6', allowance: '1.1', opening: '0.2' });
  expect(await answer()).toMatch(/^1 cm apart at most/);
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
  expect(said).toContain('Clips6, evenly');
  expect(said).toContain('Raw edge longer (or shorter, inward) by1 cm');
  expect(screen.getByRole('button', { name: 'Follow' })).toBeTruthy();
});

// Common practice, no source: trimming is for enclosed seams.
test('a plain seam is overcast and pressed open, not trimmed', async () => {
  open(seam, { finish: 'plain', given: '5/8' }, inchBench);
  const said = await answer();
  expect(said).toMatch(/1\.Sew.*2\.Overcast.*3\.Press the allowances open/s);
  expect(said).not.toContain('Trim to');
});

// Books fell 3/8 in too: trim and turn are the maker's.
test('a flat fell on 3/8 in is worked with the maker’s trim and turn', async () => {
  const own = { given: '3/8', under: '1/8', turn: '1/8' };
  open(seam, { finish: 'felled', ...own }, inchBench);
  const said = await answer();
  expect(said).toMatch(/fold is 1\/4.* in from the stitch line/);
  expect(said).toMatch(/3\/8.* in − 1\/8.* in = 1\/4.* in from the stitch line/);
});

// bellaonline.com, art60164: on 5/8 in the upper layer is turned under by 3/8 in, 1/4 in is left.
test('the published fell is worked, and that its turn has no room is said', async () => {
  open(seam, { finish: 'felled', given: '5/8', turn: '3/8' }, inchBench);
  const said = await answer();
  expect(said).toMatch(/Stitch the fold down, 1\/4.* in from the seam/);
  expect(said).toMatch(/3\/8.* turned under is wider than the 1\/4.*Turn under 5\/16.* in at most/);
});

// Goodheart-Willcox, Apparel (2012), p. 452: every 1/4 to 1/2 in.
test('clips are said no further apart than published, with both figures and the reason', async () => {
  const mild = { what: 'curve', radius: '3', allowance: '1/4', opening: '1/8' };
  open(seam, mild, inchBench);
  const said = await answer();
  expect(said).toMatch(/^1\/2.* in apart at most/);
  expect(said).toContain('The published spacing is the lesser here');
  expect(said).toMatch(/By what a clip may open1 1\/2/);
  expect(said).toMatch(/clip a curve every 1\/4.* to 1\/2.* in/);
});

const WRONG: [string, Record<string, string>, RegExp][] = [
  ['no allowance', { given: '0' }, /Pattern gives: /],
  ['too small to fell', { finish: 'felled', given: '0.5' }, /Pattern gives: .*more than 0\.9 cm/],
  ['nothing to turn', { finish: 'felled', turn: '0' }, /Turn upper under: /],
  ['a second row too narrow', { second: '0.2' }, /Second row: .*more than/],
  ['half a seam', { what: 'girth', seams: '1.5' }, /Seams all round: /],
  [
    'too little to take in',
    { what: 'girth', way: 'in', allowance: '0.1', finish: 'felled' },
    /Allowance: .*more than 0\.65 cm/,
  ],
  ['clips that open by nothing', { what: 'curve', opening: '0' }, /A clip may open: /],
  ['no room for a clip', { what: 'curve', allowance: '0.3' }, /Allowance: .*more than 0\.318 cm/],
  ['no radius', { what: 'curve', radius: '0' }, /Radius of the curve: /],
  ['a finish that is no choice', { finish: 'hairy' }, /Finish: “hairy” is no choice .*; French; /],
  ['nothing to do that is known', { what: 'darn' }, /What: “darn” is no choice /],
];

test.each(WRONG)('%s: the field and the mend are named', async (_, set, said) => {
  open(seam, set);
  expect(await answer()).toMatch(said);
});

// 3.15, US Army FM 10-16: beside a seam of 5/8 in a row of topstitching, 1/16 in from it; the second row is ours.
test('a plain seam is topstitched so far beside it, in one row or two', () => {
  const set = { finish: 'plain', given: '5/8 in', top: '1/16 in', topSecond: '1/4 in' };
  const bench = benchOf({ unit: 'in' });
  const { lines } = answerTo(seam, set, bench);
  expect(lines.map(({ value }) => value)).toEqual(
    expect.arrayContaining([
      'Topstitch 1/16 in from the seam, on both sides, from the right side',
      'Topstitch 1/4 in from the seam, on both sides, from the right side',
    ]),
  );
  const came = workOutputs(seamOutputs, { ...seam.start(bench), ...set }, bench);
  expect(came.get('topstitch')).toMatchObject({ state: 'here', value: inches(1 / 16) });
  expect(came.get('topstitch-second')).toMatchObject({ state: 'here', value: inches(1 / 4) });
});

test.each([
  ['past the allowance', { top: '1.5' }, /Topstitched beside it: .*less than 1.5 cm/],
  [
    'a second row not beyond the first',
    { top: '0.6', topSecond: '0.6' },
    /Second row, topstitched: .*more than 0.6 cm/,
  ],
])('topstitching %s: the field and the mend', async (_, set, said) => {
  open(seam, { finish: 'plain', ...set });
  expect(await answer()).toMatch(said);
});
