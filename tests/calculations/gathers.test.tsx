import { cleanup, screen, waitFor } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { elastic } from '../../src/calculations/elastic/elastic.ts';
import { elasticOutputs } from '../../src/calculations/elastic/outputs.ts';
import { gathers } from '../../src/calculations/gathers/gathers.ts';
import { gathersOutputs } from '../../src/calculations/gathers/outputs.ts';
import { tiersOutputs } from '../../src/calculations/tiers/outputs.ts';
import { tiers } from '../../src/calculations/tiers/tiers.ts';
import { zonesOutputs } from '../../src/calculations/zones/outputs.ts';
import { zones } from '../../src/calculations/zones/zones.ts';
import { mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

// Row 13.3: Dress Making, Trade Practical 2 (teaching book, Government of India, 2024), page 212, worked.
test('1.80 m at 3 times: 5.40 m with its ends beside; 6 strips with their joins, and the rule’s 5 beside them', async () => {
  open(gathers);
  const said = await answer();
  expect(said).toMatch(/^543 cm of strip to cut, joins closed/);
  expect(said).toContain('3 times as full, 6 strips joined.');
  expect(said).toContain('3 × 180 cm = 540 cm. 540 cm + 2 × 1.5 cm = 543 cm.');
  expect(said).toContain('Strips across the cloth6, 5 joins; 102 cm left over');
  expect(said).toContain('Cut each strip deep15 cm');
  expect(said).toContain('Cloth to cut them from90 cm');
  expect(said).toContain(
    'A published rule leaves the joins out: 5 strips, which come out 2.97 times as full.',
  );
});

// Its own numbers: no seam at the joins, none at the ends.
test('without joins it is the published 5 strips and 75 cm', async () => {
  open(gathers, { seam: '0' });
  const said = await answer();
  expect(said).toMatch(/^540 cm of strip to cut/);
  expect(said).toContain('Strips across the cloth5, 4 joins; 10 cm left over');
  expect(said).toContain('540 cm ÷ 110 cm = 4.91, so 5.');
  expect(said).toContain('Cloth to cut them from75 cm');
  expect(said).not.toContain('A published rule leaves');
});

test('one strip fewer is offered with what it comes out at, and taken by a press', async () => {
  expect(answerTo(gathers, {}).offers.map(({ words }) => words)).toEqual([
    'Or 5 strips: 2.97 times as full',
  ]);
  open(gathers);
  await answer();
  (await screen.findByRole('button', { name: /^Or 5 strips/ })).click();
  expect(await answer()).toContain('2.97 times as full, 5 strips joined.');
  await waitFor(() =>
    expect(screen.getByLabelText(/^Times as full/)).toHaveProperty('value', '2.97'),
  );
});

test('by the part it comes in to, by an own sample, and by the strip that is there', () => {
  const formulaOf = (set: Record<string, string>) => answerTo(gathers, set).workings[0]?.formula;
  expect(formulaOf({ by: 'part', edge: '160', seam: '0' })).toBe('160 cm ÷ 0.4 = 400 cm. ');
  expect(formulaOf({ by: 'sample' })).toContain('180 cm × 25 cm ÷ 10 cm = 450 cm. ');
  expect(formulaOf({ by: 'strip' })).toBe('(440 cm − 2 × 1.5 cm) ÷ 180 cm = 2.43 times. ');
});

test('by the cloth that is there: whole strips of it, joined, give the fullness', async () => {
  open(gathers, { by: 'cloth' });
  const said = await answer();
  expect(said).toMatch(/^645 cm of strip to cut/);
  expect(said).toContain('3.57 times as full, 6 strips joined.');
  expect(said).toContain(
    '90 cm ÷ 15 cm = 6, so 6. 6 × (110 cm − 2 × 1.5 cm) + 2 × 1.5 cm = 645 cm.',
  );
  expect(said).toContain('Over 3 times is more than cloth is commonly gathered');
  type('Cloth there is, long', '20');
  expect(await answer()).toMatch(/Cloth there is, long: 20 cm is too short; give at least 30 cm/);
  type('Cloth there is, long', '90');
  type('Finished depth', '');
  expect(await answer()).toMatch(/Finished depth/);
});

test('a flat part stays as it is, and a ring is closed by a seam of its own', async () => {
  open(gathers, { ring: 'closed', flat: '20', cloth: '' });
  const said = await answer();
  expect(said).toMatch(/^503 cm of strip to cut/);
  expect(said).toContain('3 × (180 cm − 20 cm) + 20 cm = 500 cm.');
  expect(said).toContain('Ends, in it1.5 cm at each end');
  expect(screen.queryByLabelText(/^Each end of the strip/)).toBeNull();
});

test.each<[string, Record<string, string>, RegExp]>([
  ['less than its edge', { ratio: '0.9' }, /Times as full: give a number from 1 to 20/],
  [
    'cloth that is all seam',
    { cloth: '3' },
    /Cloth wide: 3 cm is too short; give at least 4.08 cm/,
  ],
  ['a strip too short', { by: 'strip', strip: '150' }, /Strip there is: .*at least 183 cm/],
  ['all of it flat', { flat: '180' }, /Left flat, at the end: 180 cm must be less than 180 cm/],
])('%s: the field and the mend are named', async (_, set, said) => {
  open(gathers, set);
  expect(await answer()).toMatch(said);
});

test('what is doubtful is said: hardly gathered, a thin allowance, a tight width of cloth', () => {
  const warned = (set: Record<string, string>) => answerTo(gathers, set).warnings.join(' ');
  expect(warned({ ratio: '1' })).toContain('nothing is gathered');
  expect(warned({ ratio: '1.1' })).toContain('eased in, hardly gathered');
  expect(warned({ top: '1.2' })).toContain(
    'under 1.3 cm: both rows lie closer together than 0.6 cm',
  );
  expect(warned({ top: '1.3' })).not.toContain('under 1.3 cm');
  expect(warned({ cloth: '111.1', seam: '1.5' })).toContain('Hardly any cloth is left over');
});

// 13 mm is 0.51 in, 6 mm 0.24; 1 mm 0.04: the nearest of a tape of sixteenths. No outside source.
test('on a bench of inches it is said in inches', async () => {
  open(gathers, { top: '3/8' }, benchOf({ unit: 'in' }));
  expect(await answer()).toMatch(
    /under 1\/2.* in: both rows lie closer together than 1\/4.* in, inside it/,
  );
});

describe('what it gives to a garment', () => {
  test('strips are cut first and cannot be undone; the rest is joined', () => {
    const steps = gathersOutputs.outputs.flatMap(({ key, step }) =>
      step ? [[key, step.stage, step.undoable, step.bound]] : [],
    );
    expect(steps).toEqual([
      ['cut-deep', 'cut', false, 'least'],
      ['strip', 'cut', false, 'least'],
      ['marks', 'join', true, undefined],
      ['edge-marks', 'join', true, undefined],
      ['row-1', 'join', true, undefined],
      ['row-2', 'join', true, undefined],
      ['edge', 'join', true, undefined],
    ]);
  });

  test('a strip cut 30 mm long is as much fuller, its marks at their own scale', () => {
    const planned = givenBy(gathersOutputs, {});
    expect(planned).toMatchObject({
      ...{ strip: 5430, edge: 1800, ratio: 3, strips: 6, joins: 5, left: 1020, cloth: 900 },
      ...{ marks: [1365, 2715, 4065], 'edge-marks': [450, 900, 1350], 'row-1': 6, 'row-2': 12 },
    });
    const cut = givenBy(gathersOutputs, {}, { steps: { strip: mm(5466) } });
    expect(cut).toMatchObject({ ratio: 3.02, marks: [1374, 2733, 4092], strip: 5430, edge: 1800 });
    expect(cut.left).toBe(1020 - 36);
    expect(givenBy(gathersOutputs, {}, { steps: { strip: mm(7000) } }).left).toBe(0);
  });

  test('as many marks as were begun stay; without cloth there are no strips', () => {
    const begun = givenBy(gathersOutputs, {}, { counts: { marks: 5, 'edge-marks': 5 } });
    expect(begun['edge-marks']).toEqual([300, 600, 900, 1200, 1500]);
    expect(givenBy(gathersOutputs, { cloth: '' })).toMatchObject({ strips: 'absent by cloth' });
    expect(givenBy(gathersOutputs, { top: '0' })['row-1']).toBe('absent by top');
  });
});

// 40 in by 5 1/4 in are 7 strips, all taken: by hand.
test('where the cloth that is there decides, its strips are all taken, and none is said to be lacking soon', () => {
  const there = { by: 'cloth', have: '101', cloth: '140', deep: '10' };
  expect(answerTo(gathers, there).warnings.join()).not.toContain('Hardly any cloth is left over');
});

test('where marks on the edge are measured from is a place on the work, on its page and at its step', () => {
  const runs = [
    answerTo(gathers, {}).runs,
    answerTo(zones, {}).runs,
    answerTo(tiers, {}).runs,
    answerTo(elastic, {}).runs,
  ].flatMap((all) => all ?? []);
  expect([...new Set(runs.map(({ run }) => run.datum))].sort()).toEqual([
    'cut-end',
    'elastic-meets',
    'strip-begins',
  ]);
  const steps = [gathersOutputs, zonesOutputs, tiersOutputs, elasticOutputs].flatMap(
    ({ outputs }) => outputs,
  );
  const marked = steps.filter(({ kind, step }) => kind === 'run' && step);
  expect(marked.filter(({ step }) => step?.datum === 'zero').map(({ key }) => key)).toEqual([]);
});
