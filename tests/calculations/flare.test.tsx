import { cleanup } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { flareDrawing } from '../../src/calculations/flare/drawing.ts';
import { flare } from '../../src/calculations/flare/flare.ts';
import { flareOutputs } from '../../src/calculations/flare/outputs.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, open } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

// Row 16.8, geometry.
test('four slashes of 5 on a hem of 120 make 140', async () => {
  open(flare);
  const said = await answer();
  expect(said).toMatch(/^140 cm hem, all round/);
  expect(said).toContain('120 cm + 4 × 5 cm = 140 cm.');
  expect(said).toContain('More hem20 cm');
  cleanup();
  open(flare, { by: 'wanted', wanted: '130' });
  expect(await answer()).toContain('(130 cm − 120 cm) ÷ 4 = 2.5 cm. 120 cm + 4 × 2.5 cm = 130 cm.');
});

// Row 16.10, geometry: 30 at 60° adds 31.4.
test('godets: what each adds, its cloth, and its slit stayed before it is cut', async () => {
  open(flare, { what: 'godet' });
  const said = await answer();
  expect(said).toContain(
    '3.1416 × 30 cm × 60 ÷ 180 = 31.416 cm. 120 cm + 4 × 31.416 cm = 245.664 cm.',
  );
  expect(said).toContain('Straight across one at the hem line30 cm');
  expect(said).toContain('Cloth for one, along its middle × across35 cm × ');
  expect(said).toContain('Stay the end of each slit before you cut it');
  expect(said).toContain('Let it hang before its hem is levelled');
});

test('longer at the hem and at a line within: both are said, they differ', async () => {
  open(flare, { what: 'length' });
  const said = await answer();
  expect(said).toContain(
    '60 cm + 5 cm = 65 cm. 120 cm + (120 cm − 70 cm) ÷ 60 cm × 5 cm = 124.167 cm.',
  );
  expect(said).toContain(
    'Changed at a line within, it stays 120 cm, and each side edge jogs by 1.057 cm',
  );
});

test.each<[string, Record<string, string>, RegExp]>([
  [
    'a hem no longer than it was',
    { by: 'wanted', wanted: '120' },
    /Hem wanted, all round: 120 cm must be more than 120 cm/,
  ],
  [
    'a godet too wide',
    { what: 'godet', angle: '200' },
    /Angle at its point, °: give a number from 5 to 180/,
  ],
  [
    'shortened past all of it',
    { what: 'length', way: 'shorter', change: '60' },
    /By: 60 cm must be less than 60 cm/,
  ],
])('%s: the field and the mend are named', async (_, set, said) => {
  open(flare, set);
  expect(await answer()).toMatch(said);
});

test.each<[Record<string, string>, readonly string[]]>([
  [{}, ['long 60 cm', 'spread 5 cm', 'slashes 4 slashes', 'sweep 120 cm', 'hem 140 cm']],
  [{ what: 'godet' }, ['edge 30 cm', 'chord 30 cm', 'godets 4 godets']],
  [{ what: 'length' }, ['upper 70 cm', 'sweep 120 cm', 'change 5 cm', 'hem 124.167 cm']],
])('the drawing of %o has its numbers', (set, wanted) => {
  const bench = benchOf();
  const drawn = flareDrawing.draw({ ...flare.start(bench), ...set }, bench);
  const on = drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(on).toEqual(expect.arrayContaining([...wanted]));
});

describe('what it gives to a garment', () => {
  test('patterns are changed and can be changed back; godets and slits are cut', () => {
    const steps = flareOutputs.outputs.flatMap(({ key, step }) =>
      step ? [`${key} ${step.undoable}`] : [],
    );
    expect(steps).toEqual([
      'spread true',
      'change true',
      'godet-long false',
      'godet-wide false',
      'edge false',
    ]);
  });

  test('numbers to link to, by what was made', () => {
    expect(givenBy(flareOutputs, {})).toMatchObject({
      spread: 50,
      hem: 1400,
      godets: 'absent by what',
    });
    expect(givenBy(flareOutputs, { what: 'godet' })).toMatchObject({
      godets: 4,
      edge: 300,
      'godet-long': 350,
    });
    expect(givenBy(flareOutputs, { what: 'length' })).toMatchObject({
      long: 650,
      spread: 'absent by what',
    });
  });
});
