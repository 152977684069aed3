import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { bias } from '../../src/calculations/bias/bias.ts';
import { biasDrawing } from '../../src/calculations/bias/drawing.ts';
import { biasOutputs } from '../../src/calculations/bias/outputs.ts';
import { mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type, workOn } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

// Dress Making, Trade Practical 2 (2024), page 220 (17.3): by area 15.12; in whole strips, joined, 16.8.
test('opens with a worked answer: the cloth for joined strips, and what the area would say', async () => {
  open(bias, {});
  const said = await answer();
  expect(said).toMatch(/^16\.8 cm of cloth, along the selvedge/);
  expect(said).toContain('15.116 cm: too little for what is cut whole');
  expect(said).toContain('(500 cm × 2.5 cm + 10 cm × 10 cm ÷ 2) ÷ 86 cm = 15.116 cm.');
  expect(said).toContain('2.5 cm × 1.41421 = 3.536 cm.');
  expect(said).toContain('Lines apart, along the edge3.6 cm');
  expect(said).toContain('3.333 cm apart: too narrow');
  expect(said).toContain('First line, from the corner7.071 cm');
  expect(said).toContain('Keep the hand that holds the cloth away from the blades');
});

// By hand, no source: √2 leaves the piece found a hair short of 500 cm, and rounded down it said 499.9.
test('a piece for what is needed is never said to give less', () => {
  const { lines } = answerTo(bias, { width: '90', cloth: '100' });
  expect(lines).toContainEqual({ label: 'It gives', value: '500 cm' });
});

test('what there is gives so much, rounded down; its lines are marked from the corner', async () => {
  open(bias, { want: 'have', seam: '0' });
  type('Piece, along the selvedge', '15.7');
  const said = await answer();
  expect(said).toMatch(/^499\.5 cm of bias strip/);
  expect(said).toContain('more than can be cut whole');
  const { runs } = answerTo(bias, { want: 'have' });
  expect(runs[0]?.run.datum).toBe('raw-corner');
  expect(runs[0]?.run.marks[0]?.at).toBeCloseTo(mm(100) / Math.SQRT2, 3);
});

// A quilting page (7.12): 250 in of 2 wants a square of 23; 22 in by their area alone has a round less.
test('in one from a tube: the least square that has whole rounds', () => {
  const set = { from: 'round', need: '250', width: '2', seam: '0' };
  const inch = benchOf({ unit: 'in' });
  const found = answerTo(bias, set, inch);
  expect(found.headline.number).toMatchObject({ whole: '22', fraction: { over: 11, under: 16 } });
  expect(found.lines).toContainEqual({ label: 'Rounds', value: '8' });
  expect(found.lines).toContainEqual({ label: 'Joins', value: 'at most 15' });
  const have = { ...set, tube: 'have', long: '23', sideShort: '23' };
  expect(answerTo(bias, have, inch).workings[1]?.formula).toBe('8 × 1.41421 × 23 in = 260.215 in.');
  // By the area alone, as printed: √500 = 22.36. And 20 × 20 ÷ 2 = 200 (7.11).
  expect(found.lines.find(({ label }) => label === 'By its area')?.value).toBe(
    '22 3/8 in less 1/64 in: too little for what is cut whole',
  );
  const square = answerTo(bias, { ...have, long: '20', sideShort: '20' }, inch);
  expect(square.lines).toContainEqual({
    ...{ label: 'By its area', value: '200 in: more than can be cut whole' },
  });
  expect(square.workings[2]?.formula).toBe('20 in × 20 in ÷ 2 in = 200 in.');
});

// The teaching book again (17.5): 65 cm, 3 wide: 88 with its 1.4, 88.9 with √2.
test('one strip from a square, and the square for one', async () => {
  open(bias, { from: 'single', want: 'have', width: '3', long: '65' });
  const said = await answer();
  expect(said).toMatch(/^88\.9 cm of bias strip/);
  expect(said).toContain('1.41421 × 65 cm − 3 cm = 88.924 cm.');
  const square = answerTo(bias, { from: 'single', width: '3', need: '88.9' });
  expect(square.headline.number).toMatchObject({ whole: '65' });
});

test('many joins are doubted', () => {
  const narrow = answerTo(bias, { cloth: '20' });
  expect(narrow.warnings[0]).toContain('More than one join in half a metre');
  expect(answerTo(bias, { from: 'round' }).sentence).toContain('cut round and round');
});

test('outputs: cloth as a material, and how long it comes out as its joins were sewn', () => {
  const all = givenBy(biasOutputs, {});
  expect(all).toMatchObject({ 'cloth-wide': 860, strips: 25, joins: 24, strip: 25, seam: 6 });
  expect(all).toMatchObject({ rounds: 'absent by from' });
  const long = Number(givenBy(biasOutputs, {}).long);
  const made = Number(givenBy(biasOutputs, {}, { steps: { seam: mm(7) } }).long);
  expect(long - made).toBeCloseTo(24 * 2 * Math.SQRT2, 3);
  expect(givenBy(biasOutputs, { from: 'single' })).toMatchObject({
    ...{ lines: 'absent by from', joins: 'absent by from', long: 5000 },
  });
  const steps = biasOutputs.outputs.flatMap(({ key, step }) =>
    step ? [[key, step.stage, step.undoable]] : [],
  );
  expect(steps).toEqual([
    ['cloth', 'cut', false],
    ['lines', 'cut', true],
    ['strip', 'cut', false],
    ['seam', 'join', true],
  ]);
});

test('the drawing has the piece, the width across a strip, and every line', () => {
  const drawn = biasDrawing.draw({ ...bias.start(benchOf()), want: 'have' }, benchOf());
  expect(drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '))).toEqual([
    ...['width 2.5 cm', 'long 20 cm', 'cloth 86 cm'],
  ]);
  expect(drawn?.shapes.length).toBe(
    1 + (answerTo(bias, { want: 'have' }).runs[0]?.run.marks.length ?? 0),
  );
});

test.each<[string, Record<string, string>, string[]]>([
  ['nothing needed', { need: '0' }, ['need']],
  ['strips that go into their joins', { shortest: '1' }, ['shortest']],
  ['cloth narrower than a strip', { cloth: '5' }, ['cloth']],
  ['too short a piece', { want: 'have', long: '5' }, ['long']],
  ['too small for a round', { from: 'round', tube: 'have', long: '4', sideShort: '4' }, ['long']],
  ['a square that is all corner', { from: 'single', want: 'have', long: '1' }, ['long']],
])('%s: the field is named', (_, set, fields) => {
  const work = workOn(bias, set);
  expect(work.ok ? [] : work.faults.map(({ field }) => field)).toEqual(fields);
});
