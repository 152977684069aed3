import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { slantDrawing } from '../../src/calculations/slant/drawing.ts';
import { slantOutputs } from '../../src/calculations/slant/outputs.ts';
import { slant } from '../../src/calculations/slant/slant.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

test('half a leg 1.5 cm longer at the heel: where its mirrored sides go, before anything is cut', async () => {
  open(slant, {});
  const said = await answer();
  expect(said).toMatch(/^0\.6 cm out at the shorter side, in at the longer/);
  expect(said).toContain('4 cm + 1 cm = 5 cm. 5 cm ÷ cos 4.2892° = 5.014 cm.');
  expect(said).toContain('2 × 4 cm × sin 4.2892° = 0.598 cm.');
  expect(said).toContain('Cut to, one side; other side105.1 cm; 106.6 cm');
  expect(said).toContain('Cut the mirrored sides before you press');
});

// 2.1, US Army FM 10-16 fig. 8-3: 1 1/2 in with 1/2 in turned in makes 1 in.
test('2.1: of the cloth that is there, straight, as printed', () => {
  const given = { given: 'cloth', one: '20 in', other: '20 in', turn: '1/2 in' };
  const there = { thereOne: '21 1/2 in', thereOther: '21 1/2 in' };
  const { headline, warnings } = answerTo(slant, { ...given, ...there }, benchOf({ unit: 'in' }));
  expect(headline).toMatchObject({ number: { whole: '1' }, after: 'deep, at most' });
  expect(warnings).toEqual([]);
});

test('a pair of its own: both are said, and as deep as the shorter allows', () => {
  const own = { given: 'cloth', pair: 'own' };
  const { lines } = answerTo(slant, own);
  expect(lines).toContainEqual({
    label: 'First piece: Cut off, one side; other side',
    value: '2 cm; 0.5 cm',
  });
  expect(lines).toContainEqual({
    label: 'Second piece: Cut off, one side; other side',
    value: '1.5 cm; 0 cm',
  });
});

test.each<[string, Record<string, string>, RegExp]>([
  ['a hem line too steep', { other: '130' }, /Finished, other side: .*less than 120 cm/],
  ['no cloth', { given: 'cloth', thereOne: '99' }, /Cloth there, one side: .*more than 100 cm/],
  ['a turn that takes it all', { given: 'cloth', turn: '6' }, /First turn: .*less than 4.487 cm/],
])('%s: the field and the mend are named', async (_, set, said) => {
  open(slant, set);
  expect(await answer()).toMatch(said);
});

test('the drawing has the length of each side, the width, both turns and how far aside', () => {
  const bench = benchOf();
  const on = (set: Record<string, string>) =>
    slantDrawing
      .draw({ ...slant.start(bench), ...set }, bench)
      ?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(on({})).toEqual([
    ...['one 100 cm', 'other 101.5 cm'],
    ...['across 20 cm', 'depth 4 cm', 'turn 1 cm', 'mirror 0.598 cm'],
  ]);
  expect(on({ given: 'cloth', pair: 'own' })).toEqual(
    expect.arrayContaining([
      ...['thereOne 106 cm', 'thereOther 106 cm', 'secondOne 99.5 cm', 'secondOther 101 cm'],
      ...['secondThereOne 105 cm', 'secondThereOther 105 cm'],
    ]),
  );
});

test('the sides are cut, which cannot be undone, before anything is pressed', () => {
  const steps = slantOutputs.outputs.flatMap(({ key, step }) =>
    step && !key.endsWith('second') ? [`${key} ${step.stage} ${step.undoable}`] : [],
  );
  expect(steps).toEqual([
    ...['cut-one cut false', 'trim-one cut false', 'cut-other cut false', 'trim-other cut false'],
    ...['mirror-down cut true', 'mirror cut false'],
    ...['first-press turn-up true', 'hem-line turn-up true'],
  ]);
  expect(givenBy(slantOutputs, { other: '100', turned: 'single' })).toMatchObject({
    'cut-one': 1040,
    'trim-one': 'absent by given',
    mirror: 'absent by other',
    'mirror-second': 'absent by pair',
    'first-press': 'absent by turned',
  });
  expect(givenBy(slantOutputs, { given: 'cloth', pair: 'own' })).toMatchObject({
    'trim-one-second': expect.closeTo(15, 3),
    'trim-other-second': 'absent by secondThereOther',
  });
});
