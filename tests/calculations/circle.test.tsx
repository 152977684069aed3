import { cleanup } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { circle } from '../../src/calculations/circle/circle.ts';
import { circleDrawing } from '../../src/calculations/circle/drawing.ts';
import { circleOutputs } from '../../src/calculations/circle/outputs.ts';
import { mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

// Rows 16.1, 16.3 and 16.4, geometry, no source: 11.14, 447.0, 60.6.
test('a whole circle round 70: cut small at 9.6, with what is easily mistaken said', async () => {
  open(circle);
  const said = await answer();
  expect(said).toMatch(/^about 9.6 cm radius of the edge to cut/);
  expect(said).toContain(
    'One piece of 360°. Strike both arcs from the same point, the hem’s at 72.2 cm.',
  );
  expect(said).toContain('70 cm ÷ (2 × 3.1416 × 1) = 11.141 cm. 11.141 cm − 1.5 cm = 9.641 cm.');
  expect(said).toContain('11.141 cm + 60 cm + 1 cm = 72.141 cm.');
  expect(said).toContain('Hem, all round446.991 cm');
  expect(said).toContain('The cut edge is shorter60.575 cm, not 70 cm');
  expect(said).toContain('A radius too long by 1 mmmakes the edge 0.628 cm longer');
  expect(said).toContain('It hangs 24 or 48 hours before its hem is levelled.');
});

test('half a circle in two panels: a side along the grain, with its seams', async () => {
  open(circle, { part: 'half', panels: '2' });
  const said = await answer();
  expect(said).toContain('2 panels of 90°.');
  expect(said).toContain('Radius of the stitch line22.282 cm');
  expect(said).toContain('across × 84.8 cm along the grain, one side on it');
});

test('a flounce: rings that fit the edge exactly, at least as full as asked', async () => {
  open(circle, { what: 'flounce', edge: '180', long: '10', seam: '1', side: '1' });
  const said = await answer();
  expect(said).toContain('3 rings, each slit once.');
  expect(said).toContain(
    '10 cm ÷ (2 − 1) = 10 cm. 180 cm ÷ (2 × 3.1416 × 10 cm − 2 × 1 cm) = 2.96, so 3.',
  );
  expect(said).toContain('(180 cm ÷ 3 + 2 × 1 cm) ÷ (2 × 3.1416) = 9.868 cm.');
  expect(said).toContain('Hem to edge2.05 times');
  type('Times as full at the hem', '1');
  expect(await answer()).toMatch(/Times as full at the hem: give a number from 1.05 to 20/);
});

test('panels side by side in the width of the cloth, and how much of it they take', async () => {
  open(circle, { panels: '4', cloth: '150', seam: '0', side: '', hem: '' });
  const said = await answer();
  // Quarters of 11.14 + 60 cm each way: two of 71.14 in 150, two rows.
  expect(said).toContain('In the cloth’s width2 side by side, 2 rows: at most 142.3 cm of cloth');
});

test('gores: by arcs, with what chords and a straight side would differ by', async () => {
  open(circle, { what: 'gores' });
  const said = await answer();
  expect(said).toContain('6 gores of 20.7°.');
  expect(said).toContain('70 cm × 60 cm ÷ (200 cm − 70 cm) = 32.308 cm.');
  expect(said).toContain('all hems come out 1.085 cm short');
  expect(said).toContain('Side, if it is cut straight60.97 cm: 0.97 cm longer than its middle');
});

test.each<[string, Record<string, string>, RegExp]>([
  [
    'a seam that eats the hole',
    { edge: '9' },
    /Seam at the edge: 1.5 cm must be less than 1.432 cm/,
  ],
  ['more than a turn', { part: 'other' }, /Panels: give at least 2, at most \d+\./],
  [
    'wider than the cloth',
    { cloth: '140' },
    /Cloth wide: 140 cm is too short; give at least 144.282 cm.*Panels: give at least 2/,
  ],
  ['no flare', { what: 'gores', sweep: '70' }, /Hem, all round: 70 cm must be more than 70 cm/],
])('%s: the field and the mend are named', async (_, set, said) => {
  open(circle, set);
  expect(await answer()).toMatch(said);
});

test('the drawing has both radii on it, and its edge laid straight', () => {
  const bench = benchOf();
  const drawn = circleDrawing.draw(circle.start(bench), bench);
  const on = drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(on).toEqual(
    expect.arrayContaining([
      'cut-radius 9.641 cm',
      'cut-hem 72.141 cm',
      'edge 70 cm',
      'long 60 cm',
    ]),
  );
  const figure = answerTo(circle, {}).figures?.[0]?.draw() ?? [];
  expect(figure.filter((shape) => 'line' in shape && shape.line === 'cut')).toHaveLength(2);
});

describe('what it gives to a garment', () => {
  test('the hem’s arc and the edge are cut, neither can be undone: one not small, one not large', () => {
    const steps = circleOutputs.outputs.flatMap(({ key, step }) =>
      step ? [[key, step.stage, step.undoable, step.bound]] : [],
    );
    expect(steps).toEqual([
      ['cut-hem', 'cut', false, 'least'],
      ['cut-radius', 'cut', false, 'most'],
      ['edge', 'join', true, undefined],
      ['hem', 'turn-up', true, undefined],
    ]);
  });

  test('an edge cut 5 mm too far out is 31 mm longer (row 16.5), a hem cut short is shorter', () => {
    const planned = givenBy(circleOutputs, { seam: '0', hem: '0' });
    expect(planned.hem).toBe('absent by hem');
    const radius = Number(planned['cut-radius']);
    const wrong = givenBy(
      circleOutputs,
      { seam: '0' },
      { steps: { 'cut-radius': mm(radius + 5) } },
    );
    expect(Number(wrong.edge) - 700).toBeCloseTo(31.4, 1);
    const short = givenBy(circleOutputs, {}, { steps: { 'cut-hem': mm(711.408) } });
    expect(Number(short['hem-line'])).toBeCloseTo(4469.9 - 62.8, 0);
  });

  test('gores have a straight side, nothing else has', () => {
    expect(givenBy(circleOutputs, {}).side).toBe('absent by what');
    expect(givenBy(circleOutputs, { what: 'gores' })).toMatchObject({ pieces: 6 });
  });
});
