import { cleanup } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { collar } from '../../src/calculations/collar/collar.ts';
import { collarDrawing } from '../../src/calculations/collar/drawing.ts';
import { collarOutputs } from '../../src/calculations/collar/outputs.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

test('a straight collar: the upper one larger, the under one smaller', async () => {
  open(collar);
  const said = await answer();
  expect(said).toMatch(/^41.2 cm long to cut, the upper collar/);
  expect(said).toContain('Cut the upper collar 9.1 cm wide, the under one 40.8 cm × 8.9 cm.');
  expect(said).toContain('2 × (11 cm + 8.5 cm) = 39 cm. 39 cm + 2 × 1 cm + 2 × 0.1 cm = 41.2 cm.');
  expect(said).toContain('7 cm − 0.1 cm + 2 × 1 cm = 8.9 cm.');
});

test('thick cloth takes more over the roll', async () => {
  open(collar, { upperThick: '2 mm', underThick: '2 mm', between: '1 mm', outer: '46' });
  const said = await answer();
  expect(said).toContain('3.1416 × (0.2 cm ÷ 2 + 0.1 cm + 0.2 cm ÷ 2) = 0.942 cm.');
  expect(said).toContain('Over the roll, upper wider by0.942 cm');
  expect(said).toContain('Its outer edge, all round, longer by1.885 cm');
  expect(said).toContain('Neck edge on a radius of39 cm');
  expect(said).toContain('39 cm × 7 cm ÷ (46 cm − 39 cm) = 39 cm.');
});

test('a roll within a stitch, an edge that leans in, one that only stands', () => {
  const warned = (set: Record<string, string>) => answerTo(collar, set).warnings.join(' ');
  expect(warned({})).toBe('');
  expect(warned({ upperThick: '0.2 mm', underThick: '0.2 mm' })).toContain(
    'within a stitch’s width',
  );
  expect(warned({ outer: '36' })).toContain('it leans in');
  expect(warned({ stand: '7' })).toContain('nothing rolls over');
});

test.each<[string, Record<string, string>, RegExp]>([
  ['a stand deeper than it', { stand: '8' }, /Of it, stands: 8 cm is too long; give at most 7 cm/],
  [
    'more than half a turn',
    { rolled: '200' },
    /Rolls over through, °: give a number from 1 to 180/,
  ],
])('%s: the field and the mend are named', async (_, set, said) => {
  open(collar, set);
  expect(await answer()).toMatch(said);
});

test('the drawing has both pieces, and the outer edge over them', () => {
  const bench = benchOf();
  const drawn = collarDrawing.draw({ ...collar.start(bench), outer: '46', past: '2' }, bench);
  const on = drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(on).toEqual([
    ...['outer 46 cm', 'upper-long 45.2 cm', 'upper-wide 9.1 cm', 'past 2 cm', 'front 11 cm'],
    ...[
      'back 8.5 cm',
      'deep 7 cm',
      'stand 3 cm',
      'seam 1 cm',
      'under-long 44.8 cm',
      'under-wide 8.9 cm',
    ],
  ]);
});

describe('what it gives to a garment', () => {
  test('both pieces are cut first, which cannot be undone; then marked, then rolled', () => {
    const steps = collarOutputs.outputs.flatMap(({ key, step }) =>
      step ? [[key, step.undoable, step.stage].join(' ')] : [],
    );
    expect(steps).toEqual([
      ...['upper-long false cut', 'upper-wide false cut', 'under-long false cut'],
      ...['under-wide false cut', 'upper-marks true cut', 'under-marks true cut', 'roll true join'],
    ]);
  });

  test('numbers to link to', () => {
    expect(givenBy(collarOutputs, { stand: '' })).toMatchObject({
      ...{ 'upper-long': 412, 'under-wide': 89, neck: 390, roll: 'absent by stand', turn: 0 },
    });
  });
});
