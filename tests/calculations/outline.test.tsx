import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { outlineDrawing } from '../../src/calculations/outline/drawing.ts';
import { outline } from '../../src/calculations/outline/outline.ts';
import { outlineOutputs } from '../../src/calculations/outline/outputs.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type, workOn } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

// Row 6.14: the corner hole where two margin lines cross, counted once.
test('opens with a worked answer: 12 × 18 cm, all holes, and which lie in corners', async () => {
  open(outline);
  const said = await answer();
  expect(said).toMatch(/^112\s+holes, all round/);
  expect(said).toContain('12 cm − 2 × 0.5 cm = 11 cm. 11 cm ÷ 0.5 cm = 22, so 22 spaces.');
  expect(said).toContain('2 × 22 + 2 × 34 = 112 holes.');
  expect(said).toContain('Corner holes are numbers1, 23, 57, 79');
  expect(said).toContain('punch the corners last');
  type('Punch, across', '0.3');
  expect(await answer()).toContain('Only 0.2 cm is left between two holes');
});

// Row 6.21: a lace that runs in and out needs an even number.
test('by number, an odd one is said; each further hole goes where the pitch is greatest', () => {
  const odd = answerTo(outline, { by: 'count', count: '57' });
  expect(odd.warnings[0]).toContain('One more or fewer is even');
  expect(odd.lines[0]).toEqual({ label: 'Along the width', value: '12 spaces of 0.917 cm' });
  expect(answerTo(outline, { by: 'count', count: '112' }).warnings).toEqual([]);
});

test('equal sides, and a circle', () => {
  const six = answerTo(outline, { shape: 'regular' });
  expect(six.workings[0]?.formula).toContain('8 cm − 2 × 0.5 cm × 0.5774 = 7.423 cm.');
  const ring = answerTo(outline, { shape: 'circle' });
  expect(ring.workings[0]?.formula).toContain('3.1416 × (20 cm − 2 × 0.5 cm) = 59.69 cm.');
});

test('side by side: each side by its corners, and all of them said', () => {
  const free = answerTo(outline, { shape: 'free' });
  expect(free.headline).toMatchObject({ number: '112' });
  expect(free.lines.map(({ label }) => label)).toEqual([
    ...['Along side 1', 'Along side 2', 'Along side 3', 'Along side 4'],
    'Corner holes are numbers',
  ]);
  expect(free.workings[0]?.formula).toContain('20 cm − 0.5 cm × 2.4994 = 18.75 cm.');
  const bench = benchOf();
  const drawn = outlineDrawing.draw({ ...outline.start(bench), shape: 'free' }, bench);
  const on = drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(on?.slice(0, 4)).toEqual([20, 12, 15, 13].map((long) => `ownSides ${long} cm`));
});

test('a bottom and its body: the same number, and what is eased', () => {
  const { headline, lines, runs } = answerTo(outline, { shape: 'pair', pitch: '1' });
  expect(headline.number).toBe('60');
  expect(lines).toContainEqual({ label: 'The one edge', value: 'is eased by 3.4 %' });
  expect(runs.map(({ run }) => run.marks.length)).toEqual([60, 60]);
  expect(answerTo(outline, { shape: 'pair', other: '50' }).warnings.at(-1)).toContain(
    'hard to ease',
  );
});

test('outputs: as many holes as were begun stay; punching can’t be undone', () => {
  expect(givenBy(outlineOutputs, {})).toMatchObject({
    ...{ margin: 5, count: 112, pitch: 5, second: 5, 'one-pitch': 'absent by shape' },
  });
  expect(givenBy(outlineOutputs, {}, { counts: { holes: 60 } }).holes).toHaveLength(60);
  const pair = givenBy(outlineOutputs, { shape: 'pair', by: 'count', count: '30' });
  expect(pair).toMatchObject({ 'pair-count': 30, 'one-pitch': 20, margin: 'absent by shape' });
  const fixed = outlineOutputs.outputs.flatMap(({ key, step }) =>
    step?.undoable === false ? [key] : [],
  );
  expect(fixed).toEqual(['holes', 'one-holes', 'other-holes']);
});

test('each shape is drawn to scale with its numbers', () => {
  const drawn = (set: Record<string, string>) =>
    outlineDrawing
      .draw({ ...outline.start(benchOf()), ...set }, benchOf())
      ?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(drawn({})).toEqual([
    ...['wide 12 cm', 'high 18 cm', 'count 112 holes', 'pitch 0.5 cm', 'second 0.5 cm'],
    'margin 0.5 cm',
  ]);
  expect(drawn({ shape: 'regular' })).toEqual(
    expect.arrayContaining(['side 8 cm', 'sides 6 sides']),
  );
  expect(drawn({ shape: 'circle' })).toEqual(expect.arrayContaining(['across 20 cm']));
  expect(drawn({ shape: 'pair' })).toEqual(expect.arrayContaining(['one 60 cm', 'other 58 cm']));
});

test.each<[string, Record<string, string>, string[]]>([
  ['a margin that meets itself', { margin: '6' }, ['margin']],
  ['fewer holes than corners', { by: 'count', count: '3' }, ['count']],
  ['two sides', { shape: 'regular', sides: '2' }, ['sides']],
  ['no pitch', { shape: 'pair', pitch: '0' }, ['pitch']],
  ['no punch', { hole: '0' }, ['hole']],
])('%s: the field is named', (_, set, fields) => {
  const work = workOn(outline, set);
  expect(work.ok ? [] : work.faults.map(({ field }) => field)).toEqual(fields);
});
