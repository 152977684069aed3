import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { repeatDrawing } from '../../src/calculations/repeat/drawing.ts';
import { repeatOutputs } from '../../src/calculations/repeat/outputs.ts';
import { repeat } from '../../src/calculations/repeat/repeat.ts';
import { mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type, workOn } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

// Row 7.19: a teaching page's one repeat more, too little from three panels on.
test('opens with a worked answer: 4 panels of 110 at 32, and the published rule beside it', async () => {
  open(repeat);
  const said = await answer();
  expect(said).toMatch(/^494 cm of cloth, so that all panels match/);
  expect(said).toContain('110 cm ÷ 32 cm = 3.438, so 4 to each panel.');
  expect(said).toContain('3 × 4 × 32 cm + 110 cm = 494 cm. 494 cm − 4 × 110 cm = 54 cm.');
  expect(said).toContain('4 × 110 cm + 32 cm = 472 cm.');
  expect(said).toContain('By the rule, one repeat more472 cm: too little');
  expect(said).toContain('the second piece is cut single');
  type('How many those are', '2');
  expect(await answer()).toContain('32 cm ÷ 2 = 16 cm.');
});

test('where a second piece begins, and what is lost', () => {
  const { headline, workings, lines } = answerTo(repeat, { kind: 'match' });
  expect(headline.number).toMatchObject({ whole: '88' });
  expect(workings[0]?.formula).toBe('12 cm + 3 × 32 cm − 20 cm = 88 cm. 88 cm − 70 cm = 18 cm.');
  expect(lines).toContainEqual({ label: 'Cloth lost', value: '18 cm' });
  // It begins 88 past a line, two repeats and 24: to the next one are 8.
  expect(lines).toContainEqual({ label: 'Its upper edge to the first line', value: '8 cm' });
  expect(answerTo(repeat, { kind: 'match', below: '12', free: '64' }).lines).toContainEqual({
    label: 'Its upper edge to the first line',
    value: 'it lies on a line',
  });
  // 110 are three repeats and 14.
  expect(answerTo(repeat, {}).lines).toContainEqual({
    label: 'Last line to each lower edge',
    value: '14 cm',
  });
  const before = answerTo(repeat, { kind: 'match', first: '90', free: '0' });
  expect(before.workings[0]?.formula).toContain('90 cm − 2 × 32 cm − 20 cm = 6 cm.');
});

test('the centre on a line or between; a repeat that runs one way can’t match both sides', () => {
  const set = { kind: 'centre', span: '10', wide: '45' };
  expect(answerTo(repeat, set).workings[0]?.formula).toBe('45 cm ÷ 2 − 2 × 10 cm = 2.5 cm.');
  // Half of 45.04 less two repeats: both edges are cut, and neither may come out short.
  const odd = answerTo(repeat, { ...set, wide: '45.04' });
  expect(odd.headline.number).toMatchObject({ whole: '2', decimals: '6' });
  const between = answerTo(repeat, { ...set, on: 'between', way: 'one' });
  expect(between.workings[0]?.formula).toBe('45 cm ÷ 2 − 5 cm − 1 × 10 cm = 7.5 cm.');
  expect(between.warnings[0]).toContain('its edges don’t');
});

test('a slanted seam: the repeat along each edge, and how far lines part', () => {
  const { workings, warnings } = answerTo(repeat, { kind: 'slant', one: '0', other: '60' });
  expect(workings[0]?.formula).toBe(
    '32 cm ÷ cos 0° = 32 cm. 32 cm ÷ cos 60° = 64 cm. 60 cm × (cos 0° − cos 60°) = 30 cm.',
  );
  expect(warnings[0]).toContain('slant alike');
});

test('outputs: as many panels as were begun stay; what is lost follows where it was cut', () => {
  expect(givenBy(repeatOutputs, {})).toMatchObject({
    ...{ repeat: 320, cloth: 4940, extra: 540, places: [0, 1280, 2560, 3840] },
    ...{ start: 'absent by kind', inside: 'absent by kind', drift: 'absent by kind' },
  });
  const begun = givenBy(repeatOutputs, {}, { counts: { places: 2 } });
  expect(begun.places).toEqual([0, 1280]);
  const match = { kind: 'match' };
  expect(givenBy(repeatOutputs, match, { steps: { start: mm(900) } })).toMatchObject({ lost: 200 });
  const fixed = repeatOutputs.outputs.flatMap(({ key, step }) =>
    step?.undoable === false ? [`${key} ${step.stage}`] : [],
  );
  expect(fixed).toEqual(['places cut', 'start cut', 'inside cut']);
});

test('each kind is drawn to scale with its numbers', () => {
  const drawn = (set: Record<string, string>) =>
    repeatDrawing
      .draw({ ...repeat.start(benchOf()), ...set }, benchOf())
      ?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(drawn({})).toEqual([
    ...['cloth 494 cm', 'panels 4 panels', 'long 110 cm', 'span 32 cm', 'repeats 1 repeat'],
  ]);
  expect(drawn({ kind: 'match' })).toEqual(expect.arrayContaining(['start 88 cm', 'lost 18 cm']));
  expect(drawn({ kind: 'centre' })).toEqual(expect.arrayContaining(['inside 5.5 cm']));
  expect(drawn({ kind: 'slant' })).toEqual(expect.arrayContaining(['seam 60 cm']));
});

test.each<[string, Record<string, string>, string[]]>([
  ['no repeat', { span: '0' }, ['span']],
  ['none measured', { repeats: '0' }, ['repeats']],
  ['no panel', { panels: '0' }, ['panels']],
  ['no line on the piece', { kind: 'centre', on: 'between', wide: '30' }, ['wide']],
  ['along the stripe', { kind: 'slant', one: '90' }, ['one']],
])('%s: the field is named', (_, set, fields) => {
  const work = workOn(repeat, set);
  expect(work.ok ? [] : work.faults.map(({ field }) => field)).toEqual(fields);
});
