import { cleanup } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { darts } from '../../src/calculations/darts/darts.ts';
import { dartsDrawing } from '../../src/calculations/darts/drawing.ts';
import { dartsOutputs } from '../../src/calculations/darts/outputs.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

// Row 15.2: a teaching page on skirt darts; its shares rounded one by one come to 7 3/4 in of 8.
test('hip 37 less waist 29: 8 in over sides and darts, and nothing left over', () => {
  const found = answerTo(darts, {}, benchOf({ unit: 'in' }));
  const formula = found.workings.map((one) => `${one.formula} ${one.source}`).join(' ');
  expect(found.headline.after).toBe('at each front dart');
  expect(formula).toContain('37 in − 29 in = 8 in. 8 in × 13 % = 1.04 in.');
  expect(formula).toContain('4 × 1 in + 2 × 5/8 in + 2 × 1 3/8 in = 8 in.');
  expect(formula).toContain('its 8 in come out 1/4 in short');
  expect(found.lines).toContainEqual({
    label: 'Each back dart',
    value: '1 3/8 in, 2 of them: 2 3/4 in',
  });
  expect(found.lines.map(({ label }) => label)).not.toContain('Left over');
});

test('girths between: the side seam’s curve, with straight darts beside it', async () => {
  open(darts, { levels: '5; 13', girths: '82; 90' });
  const said = await answer();
  expect(said).toContain('94 cm − 82 cm = 12 cm.');
  expect(said).toContain('At 13 cm belowside seam edge 1 cm, front dart 0 cm, back dart 0 cm');
  cleanup();
  open(darts, { levels: '5', girths: '91' });
  expect(await answer()).toMatch(/Girth at each level: this needs 5.538 cm and there is 3 cm/);
});

test('what is left over, what is too narrow, what points', () => {
  const warned = (set: Record<string, string>) => answerTo(darts, set).warnings.join(' ');
  expect(warned({ larger: '94.1' })).toContain('0.1 cm');
  expect(warned({ larger: '76' })).toContain('Each front dart is so narrow');
  expect(warned({ frontLong: '2' })).toContain('Each front dart is over 30° at its point');
});

test.each<[string, Record<string, string>, RegExp]>([
  [
    'girths the wrong way round',
    { larger: '70' },
    /Larger girth, eased: 70 cm must be more than 74 cm/,
  ],
  ['shares short of all', { sidesShare: '10' }, /Each side edge, %: .*88/],
])('%s: the field and the mend are named', async (_, set, said) => {
  open(darts, set);
  expect(await answer()).toMatch(said);
});

test('the drawing has both girths, what is taken, and a dart of each kind', () => {
  const bench = benchOf();
  const drawn = dartsDrawing.draw(darts.start(bench), bench);
  const on = drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(on).toEqual(
    expect.arrayContaining([
      ...['larger 94 cm', 'smaller 74 cm', 'intake 20 cm', 'sides 4 side seam edges'],
      ...['side-edge 2.6 cm', 'front-dart 1.6 cm', 'frontLong 10 cm', 'backLong 13 cm'],
    ]),
  );
});

describe('what it gives to a garment', () => {
  test('each place is a number to link to, marked before it is sewn', () => {
    expect(givenBy(dartsOutputs, {})).toMatchObject({
      ...{ intake: 200, 'side-edge': 26, 'front-dart': 16, 'back-dart': 32, left: 0 },
    });
    expect(givenBy(dartsOutputs, { frontDarts: '', sidesShare: '17' })['front-dart']).toBe(
      'absent by frontDarts',
    );
    const steps = dartsOutputs.outputs.flatMap(({ step }) => (step ? [step.undoable] : []));
    expect(steps).toEqual([true, true, true, true]);
    expect(givenBy(dartsOutputs, { levels: '5; 13', girths: '82; 90' }).levels).toEqual([50, 130]);
    expect(givenBy(dartsOutputs, {}).levels).toBe('absent by levels');
  });
});
