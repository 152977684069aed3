import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { curve } from '../../src/calculations/curve/curve.ts';
import { curveDrawing } from '../../src/calculations/curve/drawing.ts';
import { curveOutputs } from '../../src/calculations/curve/outputs.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type, workOn } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

test('opens with a worked answer: the stitch line inside a curved edge', async () => {
  open(curve);
  const said = await answer();
  expect(said).toMatch(/^24\.3 cm along the stitch line/);
  expect(said).toContain('24 cm × 24 cm ÷ (8 × 5 cm) + 5 cm ÷ 2 = 16.9 cm.');
  // Worked by hand: 4 × atan(10 ÷ 24) = 1.5792; (16.9 − 1.5) × 1.5792 = 24.32.
  expect(said).toContain('26.688 cm − 1.5 cm × 1.5792 = 24.319 cm.');
});

test('a curve of any shape, walked: its quarters in steps, and what straight steps miss', () => {
  const { headline, lines, workings } = answerTo(curve, { kind: 'walk', walkRadius: '8' });
  expect(headline).toMatchObject({ number: { whole: '38', decimals: '4' } });
  expect(lines).toEqual([
    { label: 'Mark 1', value: '9 steps and 0.6 cm' },
    { label: 'Mark 2', value: '19 steps and 0.2 cm' },
    { label: 'Mark 3', value: '28 steps and 0.8 cm' },
    { label: 'Along the curve itself', value: '38.425 cm' },
  ]);
  expect(workings[0]?.formula).toBe('38 × 1 cm + 0.4 cm = 38.4 cm. 38.4 cm ÷ 4 = 9.6 cm.');
  expect(givenBy(curveOutputs, { kind: 'walk' })).toMatchObject({
    walked: 384,
    'walked-line': 'absent by walkRadius',
    'walk-marks': [0, 96, 192, 288, 384],
    marks: 'absent by kind',
  });
});

test('a slanted edge, and cloth squared by its diagonals', () => {
  const slant = answerTo(curve, { kind: 'slant', high: '40', aside: '30' });
  expect(slant.workings[0]?.formula).toBe('40 cm × 40 cm + 30 cm × 30 cm = 50 cm × 50 cm.');
  const square = answerTo(curve, { kind: 'square', long: '90', one: '150', other: '147' });
  expect(square.workings[0]?.formula).toContain(
    '(150 cm × 150 cm − 147 cm × 147 cm) ÷ (4 × 90 cm) = 2.475 cm.',
  );
  expect(square.cautions[0]).toContain('Pull it square before you cut');
});

// Rows 21.13, 21.14 and 21.19, as a laboratory's guide to ASTM D3882 has them; the per cent is derived.
test('bow and skew in per cent of the width, and what they come to at an edge', async () => {
  open(curve, { kind: 'grain' });
  const said = await answer();
  expect(said).toMatch(/^3\s+% of its width, askew/);
  expect(said).toContain('One end of that edge lies higher by1.5 cm');
  type('Its end runs ahead by', '2');
  expect(await answer()).toMatch(/^2\s+% of its width, bowed/);
  expect(said).toContain('Bow2 %');
  expect(said).toContain('Skew3 %, 1.72°');
  expect(said).toContain('the worst counts');
  expect(said).toContain(
    '2.8 cm ÷ 140 cm = 2 %. 4.2 cm ÷ 140 cm = 3 %. 50 cm × 4.2 cm ÷ 140 cm = 1.5 cm.',
  );
  expect(givenBy(curveOutputs, { kind: 'grain' })).toMatchObject({ bowed: 2, askew: 3, lift: 15 });
  const none = givenBy(curveOutputs, { kind: 'grain', bow: '', ahead: '0' });
  expect(none).toMatchObject({ bowed: 0, askew: 0, lift: 0 });
});

test('outputs, and the drawing with its numbers', () => {
  const arc = { chord: '20', rise: '10', off: '0', parts: '2' };
  expect(givenBy(curveOutputs, arc)).toMatchObject({ radius: 100, slant: 'absent by kind' });
  expect(givenBy(curveOutputs, arc, { counts: { marks: 5 } }).marks).toHaveLength(5);
  const square = { kind: 'square', long: '90', one: '150', other: '150' };
  expect(givenBy(curveOutputs, square)).toMatchObject({ wanted: 1500, skew: 0, usable: 900 });
  const drawn = curveDrawing.draw({ ...curve.start(benchOf()), kind: 'slant' }, benchOf());
  expect(drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '))).toEqual([
    ...['high 60 cm', 'aside 11 cm', 'slant 61 cm'],
  ]);
});

test.each<[string, Record<string, string>, string[]]>([
  ['no rise', { rise: '0' }, ['rise']],
  ['a line past the middle', { off: '17' }, ['off']],
  ['no height', { kind: 'slant', high: '0' }, ['high']],
  ['diagonals too short', { kind: 'square', long: '170' }, ['long']],
  ['a skew as long as the cloth is wide', { kind: 'grain', ahead: '140' }, ['ahead']],
])('%s: the field is named', (_, set, fields) => {
  const work = workOn(curve, set);
  expect(work.ok ? [] : work.faults.map(({ field }) => field)).toEqual(fields);
});
