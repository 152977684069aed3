import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { tiersDrawing } from '../../src/calculations/tiers/drawing.ts';
import { tiersOutputs } from '../../src/calculations/tiers/outputs.ts';
import { tiers } from '../../src/calculations/tiers/tiers.ts';
import { mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

// Row 13.7, Dress Making, Trade Theory (teaching book, Government of India, 2024), page 250.
test('13.7: three tiers at 1 1/2 are 3.375 times; each with its strips, joins and depth', async () => {
  open(tiers);
  const said = await answer();
  expect(said).toContain('134 cm of cloth for 3 tiers');
  expect(said).toContain('Tier 1, 1.5 times22 cm deep, 110 cm joined: 1 strip, 1 join');
  expect(said).toContain('Tier 3, 1.5 times32 cm deep, 245 cm joined: 2 strips, 2 joins');
  expect(said).toContain('The last, along243 cm, 3.38 times the first edge');
  expect(said).toContain('1.5 × 162 cm = 243 cm.');
  expect(said).toContain('1 × 22 cm + 2 × 24 cm + 2 × 32 cm = 134 cm.');
  expect(said).toContain('Of the length leftnothing: they come to it');
});

// Row 13.8, the same page.
test('13.8: depths that come to 29 in, as printed', () => {
  const printed = { depths: '6 1/4; 6 3/4; 7 1/4; 8 3/4', long: '29' };
  const { lines, workings } = answerTo(tiers, printed, benchOf({ unit: 'in' }));
  expect(lines).toContainEqual({ label: 'Depths together', value: '29 in' });
  expect(workings[1]?.formula).toBe('6 1/4 in + 6 3/4 in + 7 1/4 in + 8 3/4 in = 29 in.');
});

test('what is left of the length is said, and what is over', () => {
  const leftOf = (long: string) =>
    answerTo(tiers, { long }).lines.find(({ label }) => label === 'Of the length left')?.value;
  expect([leftOf('75'), leftOf('68'), leftOf('')]).toEqual([
    '5 cm',
    'they are 2 cm longer',
    undefined,
  ]);
});

test('too little, too much and hardly any left over: which tiers', () => {
  const { warnings } = answerTo(tiers, { ratios: '1; 1.1; 3.5', depths: '20; 20; 20' });
  expect(warnings.map((one) => one.slice(0, 24))).toEqual([
    'Tier 2: under 1.2 times ',
    'Tier 1: as long as the e',
    'Tier 3: over 3 times is ',
  ]);
  expect(answerTo(tiers, { ratios: '2' }).warnings).toEqual([expect.stringContaining('8 times')]);
  expect(answerTo(tiers, { edge: '92' }).warnings).toEqual([
    expect.stringContaining('Tier 1: hardly any cloth'),
  ]);
});

test('growing: each deeper than the one above, to the length', () => {
  const { workings } = answerTo(tiers, { by: 'growing', long: '62' });
  expect(workings[1]?.formula).toBe('62 cm ÷ (1 + 1.2 + 1.2 × 1.2) = 17.033 cm.');
  const equal = answerTo(tiers, { by: 'growing', long: '60', growth: '1' });
  expect(equal.workings[1]?.formula).toBe('60 cm ÷ 3 = 20 cm.');
});

test.each<[string, Record<string, string>, RegExp]>([
  ['a fullness under 1', { ratios: '0.8' }, /Times as full: .*1/],
  ['two for three tiers', { ratios: '1.5; 2' }, /Times as full: .*3/],
  ['no tier', { depths: '' }, /Each, finished: .*1/],
  ['cloth that is all seam', { cloth: '2' }, /Cloth wide: .*2 cm/],
])('%s: the field and the mend are named', async (_, set, said) => {
  open(tiers, set);
  expect(await answer()).toMatch(said);
});

test('the drawing has the edge and each tier with its depth and strip', () => {
  const bench = benchOf();
  const drawn = tiersDrawing.draw({ ...tiers.start(bench), depths: '20; 22' }, bench);
  const on = drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(on).toEqual([
    ...['edge 72 cm', 'parts 4 parts'],
    ...[
      'strip-1 110 cm',
      'deep-1 22 cm',
      'depths 20 cm',
      'strip-2 164 cm',
      'deep-2 26 cm',
      'depths 22 cm',
    ],
    ...['between 1 cm', 'seam 1 cm', 'hem 3 cm'],
  ]);
});

test('a tier cut longer than planned: those below, and the marks on it, go by it', () => {
  const planned = givenBy(tiersOutputs, {});
  expect(planned).toMatchObject({ 'strip-1': 1100, 'strip-2': 1640, cloth: 1340 });
  expect(planned['strip-4']).toBe('absent by depths');
  const made = givenBy(tiersOutputs, {}, { steps: { 'strip-1': mm(1220) } });
  expect(made).toMatchObject({
    'along-1': 1200,
    'strip-2': 1820,
    'edge-marks-2': [0, 300, 600, 900],
  });
  expect(givenBy(tiersOutputs, { by: 'growing', count: '2' })['deep-3']).toBe('absent by count');
});
