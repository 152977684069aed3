import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import type { Draft } from '../../src/calculation/calculation.ts';
import { corner } from '../../src/calculations/corner/corner.ts';
import { facing } from '../../src/calculations/facing/facing.ts';
import { hem } from '../../src/calculations/hem/hem.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type } from '../screens/helpers.tsx';

afterEach(cleanup);

// US Army FM 10-16, fig. 8-3: 1/2 in turn-under, 1 in hem, 1 1/2 in in all, lines at 1 and 2 in.
test('the canvas hem of the manual, on the screen', async () => {
  const canvas = { depth: '1', turn: '1/2', edgeStitch: '1/8', style: 'unequal' };
  open(hem, canvas, benchOf({ unit: 'in' }));
  const said = await answer();
  expect(said).toMatch(/^1 1\/2.* in to turn up/);
  expect(said).toMatch(/Press 1\/2.* in from the raw edge, then 1 1\/2/);
  expect(said).toMatch(/Chalk lines to fold to1 in from the raw edge, then 2 in from the fold/);
});

test('the lines are marks from the raw edge, to be followed', async () => {
  open(hem, { depth: '2', turn: '0.7', edgeStitch: '0.2' });
  await answer();
  expect(await screen.findByText('0.7 cm')).toBeTruthy();
  expect(await screen.findByText('4.5 cm')).toBeTruthy();
  expect(screen.getByRole('button', { name: 'Follow' })).toBeTruthy();
});

test('a hem too full for its cloth says so, and a shallower one is a press away', async () => {
  open(hem, { depth: '2', shape: 'rise', chord: '40', rise: '5' });
  expect(await answer()).toContain('9.4 % to lose, the cloth takes about 6 %');
  fireEvent.click(await screen.findByText('Make it 1.2 cm deep'));
  expect(await answer()).not.toContain('will not lie flat');
});

// Theta Johnson, It's Fun to Sew a Cotton School Dress: 1/4 + 1/4 → 1/2 in. Narrow is up to 1.5 cm
// (moodlehub.ca, garment hems).
test('a narrow hem that isn’t one says so, and the published one is a press away', async () => {
  open(hem, { style: 'narrow', depth: '2' });
  expect(await answer()).toContain('up to 1.5 cm deep');
  fireEvent.click(await screen.findByText(/turned in$/));
  const said = await answer();
  expect(said).toMatch(/^1\.3 cm to turn up/);
  expect(said).toContain('a narrow hem');
  expect(said).not.toContain('no narrow hem any more');
});

test('an inward curve is stretched or clipped instead', async () => {
  open(hem, { shape: 'inward' });
  expect(await answer()).toContain('An inward curve is too short');
});

test('where a curve is too full or too short, a facing is a press away', async () => {
  open(hem, { shape: 'inward' });
  expect(await answer()).toMatch(/or face it/);
  expect(await screen.findByRole('button', { name: 'Face it instead' })).toBeTruthy();
});

test('a shallower hem is reckoned on the readings as they were taken', async () => {
  open(hem, { depth: '2', shape: 'readings', round: '60', above: '57', taper: 'taper' });
  expect(await answer()).toContain('10 % to lose');
  fireEvent.click(await screen.findByText('Make it 1.2 cm deep'));
  const said = await answer();
  expect(said).not.toContain('will not lie flat');
  expect(said).toContain('6 %');
  // The leg widens from 20 to 21 in 2 cm: 20.6 at 1.2 cm.
  expect(said).toContain('20.6 cm at the inner fold');
});

test('two readings tell an inward curve and a straight tube', async () => {
  open(hem, { shape: 'readings', round: '60', above: '62' });
  expect(await answer()).toContain('An inward curve is too short');
  type('Round, higher up', '60');
  expect(await answer()).toContain('straight, as good as');
});

test('cautions stand where the cut and the iron come', async () => {
  open(hem);
  const said = await answer();
  expect(said).toContain('Try on before you cut');
  expect(said).toContain('at most 110 °C');
});

test('stitching that the tape would round onto the inner fold is said inside it', async () => {
  open(hem, { depth: '2', turn: '0.7', edgeStitch: '0.04' });
  expect(await answer()).toContain('Stitch 1.9 cm above the fold');
});

test('a first turn too small for the tape is not pressed at 0', async () => {
  const narrow = { depth: '1/8', turn: '1/16', edgeStitch: '1/32' };
  open(hem, narrow, benchOf({ unit: 'in', inch: '1/8in' }));
  const said = await answer();
  expect(said).not.toMatch(/Press 0|Stitch 0/);
  expect(said).toMatch(/Turn the raw edge 1\/16.* in under by eye/);
  expect(said).toContain('Stitch by eye just inside the inner fold');
});

// Felt of 2 mm (derived by hand): 0.86 mm less for a fold round nothing, 0.28 mm more over one layer.
test('thick cloth takes less for one turn, and of two equal ones the second a little more', async () => {
  open(hem, { depth: '2', style: 'single', thickness: '0.2' });
  let said = await answer();
  expect(said).toContain('in it0.086 cm less');
  expect(said).toContain('2 cm − 0.086 cm = 1.914 cm');
  cleanup();
  open(hem, { depth: '2', style: 'double', thickness: '0.2' });
  said = await answer();
  expect(said).toContain('2 cm + 2 cm − 0.086 cm + 0.028 cm = 3.942 cm');
  expect(said).toContain('1.5708 × (0.2 cm + 0.2 cm) − (0.2 cm + 2 × 0.2 cm) = 0.028 cm');
});

// Theta Johnson, It's Fun to Sew a Cotton School Dress: 2 3/4 in make 2 1/2 finished with 1/4 turned in.
test('“3 in for the hem” is all of it where the maker says so', async () => {
  const all = { depth: '2 3/4', given: 'all', turn: '1/4' };
  open(hem, all, benchOf({ unit: 'in' }));
  const said = await answer();
  expect(said).toMatch(/^2 3\/4.* in to turn up/);
  expect(said).toMatch(/Depth, finished2 1\/2/);
  type('All for the hem', '3');
  expect(await answer()).toMatch(/Depth, finished2 3\/4/);
});

test('a cut length asks what the other end takes, and has it', async () => {
  open(hem, { depth: '2', turn: '0.7', finished: '60' });
  expect(await answer()).toContain('Cut length62.7 cm, nothing added at the other end');
  type('Other end takes', '1.5');
  expect(await answer()).toContain('Cut length64.2 cm');
});

test('every published depth is said with its kind of hem', async () => {
  open(hem);
  const said = await answer();
  for (const part of ['straight and sheer up to 4 in', 'medium cloth 2 to 3 in', 'circular 1/4']) {
    expect(said).toContain(part);
  }
  expect(said).toContain('gored, 60 to 70 in round, 2 in');
  expect(said).not.toMatch(/\.com|moodlehub/);
});

test('a facing and a corner begin with the depth that all there is leaves', () => {
  const bench = benchOf();
  const draft = { ...hem.start(bench), depth: '5', given: 'all', turn: '1', thickness: '' };
  const carried = hem.beside?.map(({ carry }) => carry?.(draft, bench)?.depth);
  expect(carried).toEqual(['4 cm', '4 cm']);
});

test('what a facing and a corner begin with is all theirs, and answered', () => {
  const bench = benchOf();
  const draft = { ...hem.start(bench), shape: 'rise', style: 'double' };
  const [toFacing, toCorner] = hem.beside?.map(({ carry }) => carry?.(draft, bench) ?? {}) ?? [];
  expect(toFacing).toMatchObject({ depth: '2', radius: '42.5 cm' });
  expect(toFacing).not.toHaveProperty('turn');
  expect(toCorner).toMatchObject({ depth: '2', turned: 'equal' });
  answerTo(facing, toFacing ?? {});
  answerTo(corner, toCorner ?? {});
});

test('what can’t be read of the curve takes nothing from the depth a facing begins with', () => {
  const bench = benchOf();
  const whole = { ...hem.start(bench), given: 'all', depth: '5', turn: '1' };
  const carried = (set: Draft) => hem.beside?.[0]?.carry?.({ ...whole, ...set }, bench);
  expect(carried({ shape: 'rise', chord: 'wide' })).toMatchObject({ depth: '4 cm', radius: '' });
  const tapered = carried({ shape: 'rise', taper: 'taper', atHem: '?' });
  expect(tapered).toMatchObject({ depth: '4 cm', radius: '42.5 cm' });
});

test('how far up was measured stands by what was measured there', () => {
  const order = (set: Draft) =>
    hem
      .fields({ ...hem.start(benchOf()), ...set })
      .map(({ key }) => key)
      .join(' ');
  expect(order({ taper: 'taper' })).toMatch(/taper atHem acrossAbove apart$/);
  expect(order({ shape: 'readings', taper: 'taper' })).toMatch(
    /shape round above apart cloth edgeStitch .*taper atHem acrossAbove$/,
  );
  expect(order({ shape: 'rise', cloth: 'own' })).toMatch(/shape chord rise cloth ease edgeStitch/);
  expect(order({})).not.toMatch(/apart|chord|round|atHem|ease |cloth/);
});

const WRONG: [string, Record<string, string>, RegExp][] = [
  ['no depth', { depth: '0' }, /Depth, finished: /],
  ['deeper than the piece', { depth: '2', finished: '1' }, /Depth, finished: .*1 cm/],
  ['a turn deeper than the hem', { turn: '3' }, /First turn: /],
  [
    'deeper than the radius',
    { depth: '50', turn: '1', shape: 'rise' },
    /Depth, finished: .*42\.5 cm/,
  ],
  ['no depth to taper along', { depth: '0', taper: 'taper' }, /Depth, finished: /],
  ['no taper', { taper: 'taper', acrossAbove: '0' }, /Across, higher up: /],
  [
    'no room for the turn in all there is',
    { given: 'all', depth: '0.5' },
    /All for the hem: .*more than 0\.7 cm/,
  ],
  ['cloth too thick to turn', { thickness: '1' }, /Cloth thick: .*at most 0\.7 cm/],
  ['more than the cloth left', { left: '2' }, /Depth, finished: .*at most 1\.3 cm/],
  ['readings at one height', { shape: 'readings', apart: '0' }, /Higher up by: /],
  ['stitched beyond the hem', { edgeStitch: '2' }, /Stitch in from fold: .*less than 2 cm/],
  ['an ease no cloth has', { shape: 'rise', cloth: 'own', ease: '120' }, /Eases in, per cent: /],
];

test.each(WRONG)('%s: the field and the mend are named', async (_, set, said) => {
  open(hem, set);
  expect(await answer()).toMatch(said);
});

test('typing the depth moves every line at once', async () => {
  open(hem);
  type('Depth, finished', '3');
  expect(await answer()).toMatch(/^3\.7 cm to turn up/);
});
