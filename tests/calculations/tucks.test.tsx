import { cleanup, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { tucksDrawing } from '../../src/calculations/tucks/drawing.ts';
import { tucksOutputs } from '../../src/calculations/tucks/outputs.ts';
import { tucks } from '../../src/calculations/tucks/tucks.ts';
import { mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

// Row 12.3: Dress Making, Trade Practical 2 (teaching book, Government of India, 2024), page 209; it rounds up.
test('28 cm, a gap of 1.5, tucks of 2 mm: the nearest, and the printed 16 tucks beside it', async () => {
  open(tucks);
  const said = await answer();
  expect(said).toMatch(/^34 cm of cloth to cut across/);
  expect(said).toContain('15 tucks, one every 1.714 cm.');
  expect(said).toContain(
    '1.5 cm + 0.2 cm = 1.7 cm. 24 cm ÷ 1.7 cm = 14.12, so 14 gaps and 15 tucks.',
  );
  expect(said).toContain('15 × 2 × 0.2 cm = 6 cm. 28 cm + 6 cm = 34 cm.');
  (await screen.findByRole('button', { name: /^Or 16, each 1.6 cm/ })).click();
  expect(await answer()).toMatch(/^34.4 cm of cloth to cut across/);
});

test('no wider apart than asked is as the page prints it', async () => {
  open(tucks, { fit: 'no-wider' });
  const said = await answer();
  expect(said).toContain('16 tucks, one every 1.6 cm.');
  expect(said).toContain('Clear between1.4 cm');
  expect(said).toContain('28 cm + 6.4 cm = 34.4 cm.');
});

test('groups: their tucks just so far apart, the rest between them', async () => {
  open(tucks, { by: 'groups', spacing: '1' });
  const said = await answer();
  expect(said).toContain('9 tucks, one every 1 cm.');
  expect(said).toContain('(24 cm − 3 × 2 × 1 cm) ÷ 2 = 9 cm.');
  expect(said).toContain('From group to group, stitch lines9 cm');
  type('Tucks in a group', '8');
  type('First edge to stitch line', '2.2');
  expect(await answer()).toContain('The groups hardly stand apart');
  type('Tucks in a group', '9');
  expect(await answer()).toMatch(/Groups: this needs 24 cm and there is 23.6 cm/);
});

test('tucks that grow, on a curve: what they take, and how much fuller their under side is', async () => {
  open(tucks, { by: 'count', count: '3', depth: '1', step: '0.5', radius: '40' });
  const said = await answer();
  expect(said).toContain('3 × 2 × 1 cm + 3 × 2 × 0.5 cm = 9 cm. 28 cm + 9 cm = 37 cm.');
  expect(said).toContain('Letting one out gains2 cm to 4 cm');
  expect(said).toContain('Under side of a tuck is fuller by5 %');
  expect(said).toContain('2 × 1 cm ÷ 40 cm = 5 %.');
});

test('blind tucks, and tucks that cover the next line, are said', () => {
  const warned = (set: Record<string, string>) =>
    answerTo(tucks, { by: 'count', count: '13', ...set }).warnings.join(' ');
  expect(warned({ depth: '2' })).toContain('blind tucks');
  expect(warned({ depth: '2.1', last: '3', first: '1' })).toContain('covers the next stitch line');
  expect(warned({})).toContain('not with a card moved from tuck to tuck');
});

test('graduated groups: each begins anew, where that is asked', async () => {
  const groups = { by: 'groups', spacing: '1', step: '0.1' };
  open(tucks, groups);
  expect(await answer()).toContain('9 × 2 × 0.2 cm + 9 × 8 × 0.1 cm = 10.8 cm.');
  cleanup();
  open(tucks, { ...groups, anew: 'group' });
  const said = await answer();
  expect(said).toContain('3 × (3 × 2 × 0.2 cm + 3 × 2 × 0.1 cm) = 5.4 cm.');
  expect(said).toContain('Letting one out gains0.4 cm to 0.8 cm');
  expect(
    tucks.fields({ ...tucks.start(benchOf()), by: 'groups' }).map(({ key }) => key),
  ).not.toContain('anew');
});

test.each<[string, Record<string, string>, RegExp]>([
  ['no depth', { depth: '0' }, /Depth of a tuck: give more than nothing/],
  [
    'edges past the width',
    { first: '15' },
    /First edge to stitch line: first and last take 30 cm of 28 cm/,
  ],
  ['a tuck over its edge', { last: '0.1' }, /Last stitch line to edge: .*at least 0.2 cm/],
])('%s: the field and the mend are named', async (_, set, said) => {
  open(tucks, set);
  expect(await answer()).toMatch(said);
});

test('the figure has each tuck’s three lines flat, and the same folded below', () => {
  const bench = benchOf();
  const set = { by: 'count', count: '3', depth: '1' };
  const figure = answerTo(tucks, set).figures?.[0]?.draw() ?? [];
  const styles = figure.flatMap((shape) => ('line' in shape ? [shape.line] : []));
  expect(styles.filter((style) => style === 'stitch')).toHaveLength(6);
  expect(styles.filter((style) => style === 'fold')).toHaveLength(3);
  const drawn = tucksDrawing.draw({ ...tucks.start(bench), ...set }, bench);
  const on = drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(on).toEqual(
    expect.arrayContaining([
      'finished 28 cm',
      'cut 34 cm',
      'depth 1 cm',
      'spacing 12 cm',
      'first 2 cm',
    ]),
  );
});

describe('what it gives to a garment', () => {
  test('the cloth is cut first and cannot be undone; it is tucked before it is cut to shape', () => {
    const steps = tucksOutputs.outputs.flatMap(({ key, step }) =>
      step ? [[key, step.stage, step.undoable, step.bound]] : [],
    );
    expect(steps).toEqual([
      ['cut', 'cut', false, 'least'],
      ['marks', 'cut', true, undefined],
      ['depth', 'cut', true, undefined],
      ['finished', 'cut', true, undefined],
    ]);
    expect(tucksOutputs.outputs[0]?.step?.do).toContain('to shape only after tucking');
  });

  test('cloth cut 5 mm short comes out 5 mm narrower; as many lines as were begun stay', () => {
    expect(givenBy(tucksOutputs, {})).toMatchObject({
      cut: 340,
      finished: 280,
      count: 15,
      taken: 60,
    });
    expect(givenBy(tucksOutputs, {}, { steps: { cut: mm(335) } })).toMatchObject({ finished: 275 });
    const begun = givenBy(tucksOutputs, {}, { counts: { marks: 48 } });
    expect(begun.marks).toHaveLength(48);
    expect(givenBy(tucksOutputs, { by: 'count', count: '1' })).toMatchObject({
      ...{ spacing: 'absent by by', gap: 'absent by by', between: 'absent by by' },
    });
  });
});
