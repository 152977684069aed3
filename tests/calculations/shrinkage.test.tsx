import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { shrinkageDrawing } from '../../src/calculations/shrinkage/drawing.ts';
import { shrinkageOutputs } from '../../src/calculations/shrinkage/outputs.ts';
import { shrinkage } from '../../src/calculations/shrinkage/shrinkage.ts';
import { mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type, workOn } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

// Derived (21.12): 60 × 40 cm at 3 % and 1 % is cut 61.86 × 40.40.
test('opens with a worked answer: what is cut each way, rounded up, and how it was got', async () => {
  open(shrinkage, {});
  const said = await answer();
  expect(said).toMatch(/^61\.9 cm long to cut/);
  expect(said).toContain('loses 3 % along the grain, loses 1 % across it');
  expect(said).toContain('Cut wide40.5 cm');
  expect(said).toContain('(50 cm − 48.5 cm) ÷ 50 cm = 3 %.');
  expect(said).toContain('60 cm ÷ (1 − 3 %) = 61.856 cm.');
  expect(said).toContain('40 cm ÷ (1 − 1 %) = 40.404 cm.');
  expect(said).toContain('loses 3 %, give or take 0.28 %');
  expect(said).toContain('One reading each way: measure at three places');
  expect(said).toContain('Sew the marks in');
});

test('a sample that was only steamed is measured by the same fields, and steam after a wash is one treatment more', async () => {
  open(shrinkage, {});
  type('After wash or steam, along', '49.5');
  const said = await answer();
  expect(said).toContain('loses 1 % along the grain');
  expect(said).toContain('Wash, dry, steam and press the sample as the garment will be');
  // 1 − 0.99 × 0.98, by hand.
  type('Then lost along, %', '2');
  expect(await answer()).toContain('loses 2.98 % along the grain');
});

// A quilters' forum, thread 159122 (7.15): 36 × 42 in came out 35 × 41: of the area 5.09 %, not 5.16.
test('of the area both shares together, which is not their sum', () => {
  const inch = answerTo(shrinkage, {}, benchOf({ unit: 'in' }));
  expect(inch.lines).toContainEqual({ label: 'Of its area', value: 'loses 5.09 %' });
  expect(inch.sentence).toContain('loses 2.78 % along the grain, loses 2.38 % across it');
});

test('readings are averaged, and further treatments multiply', async () => {
  open(shrinkage, { alongAfter: '48.4; 48.5; 48.6', acrossAfter: '49.5; 49.5' });
  type('Then lost along, %', '2; 1');
  const said = await answer();
  expect(said).toContain('(48.4 cm + 48.5 cm + 48.6 cm) ÷ 3 = 48.5 cm.');
  expect(said).toContain('1 − (1 − 3 %) × (1 − 2 %) × (1 − 1 %) = 5.8906 %.');
  expect(said).not.toContain('One reading');
  cleanup();
  open(shrinkage, { alongAfter: '48.4; 48.5; 48.6' });
  expect(await answer()).toContain('One reading across it: measure at three places');
});

test('what grows is cut as wanted, unless asked otherwise: said both ways', async () => {
  open(shrinkage, { alongAfter: '51' });
  const said = await answer();
  expect(said).toMatch(/^60 cm long to cut/);
  expect(said).toContain('It grows along the grain: let it hang a day');
  expect(said).toContain('It is cut as it is wanted, no smaller.');
  cleanup();
  open(shrinkage, { alongAfter: '51', growth: 'smaller' });
  const smaller = await answer();
  expect(smaller).toMatch(/^58\.9 cm long to cut/);
  expect(smaller).toContain('60 cm ÷ (1 + 2 %) = 58.824 cm.');
});

test('without a size wanted the share comes first; across only where it was measured', () => {
  const alone = answerTo(shrinkage, { long: '', acrossBefore: '' });
  expect(alone.headline).toEqual({ number: '3 %', after: 'lost along the grain' });
  expect(alone.lines.map(({ label }) => label)).toEqual(['Along the grain']);
  expect(answerTo(shrinkage, { long: '' }).headline.after).toBe('wide to cut');
});

test('what is there comes out rounded down, and an interfacing that loses more is said', () => {
  const { lines } = answerTo(shrinkage, { there: '70', other: '5' });
  const found = Object.fromEntries(lines.map(({ label, value }) => [label, value]));
  expect(found['What is there, long afterwards']).toBe('67.9 cm');
  expect(found['Interfacing against cloth, over the length']).toBe(
    'it loses 1.2 cm more: it puckers the cloth',
  );
});

test('too much, and too little to be measured, are doubted', () => {
  const much = answerTo(shrinkage, { alongAfter: '30', acrossAfter: '49.95' });
  expect(much.warnings.join(' ')).toContain('Over 30 % along the grain');
  expect(much.warnings.join(' ')).toContain('across it is less than two readings may be off');
});

test('outputs: by the marks as they were sewn in and as they measure when washed', () => {
  const near = (many: number) => expect.closeTo(many, 9) as number;
  expect(givenBy(shrinkageOutputs, { there: '70' })).toMatchObject({
    ...{ 'marks-along': 500, 'washed-along': 485 },
    ...{ along: near(3), across: near(1), area: near(3.97) },
    ...{ 'cut-along': 618.556701, 'cut-across': 404.040404, 'after-along': 679 },
    ...{ 'after-across': 'absent by thereWide', differs: 'absent by other' },
  });
  const made = { steps: { 'washed-along': mm(480) } };
  expect(givenBy(shrinkageOutputs, {}, made)).toMatchObject({ along: near(4), 'cut-along': 625 });
  const sewn = { steps: { 'marks-along': mm(400), 'washed-along': mm(390) } };
  expect(givenBy(shrinkageOutputs, {}, sewn)).toMatchObject({ along: near(2.5) });
});

test('marks come first, what is washed cannot be undone, and the cut comes last', () => {
  const steps = shrinkageOutputs.outputs.flatMap(({ key, step }) =>
    step ? [[key, step.stage, step.undoable]] : [],
  );
  expect(steps).toEqual([
    ['marks-along', 'measure', true],
    ['washed-along', 'measure', false],
    ['marks-across', 'measure', true],
    ['washed-across', 'measure', false],
    ['cut-along', 'cut', false],
    ['cut-across', 'cut', false],
  ]);
});

test('the drawing has the sample and the piece, each before and after', () => {
  const drawn = shrinkageDrawing.draw(shrinkage.start(benchOf()), benchOf());
  expect(drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '))).toEqual([
    ...['alongBefore 50 cm', 'alongAfter 48.5 cm', 'acrossBefore 50 cm', 'acrossAfter 49.5 cm'],
    ...['cut-along 61.856 cm', 'long 60 cm', 'cut-across 40.404 cm', 'wide 40 cm'],
  ]);
});

test.each<[string, Record<string, string>, string[]]>([
  ['no reading', { alongAfter: '', acrossAfter: '' }, ['alongAfter', 'acrossAfter']],
  ['nothing left', { alongAfter: '48; 0' }, ['alongAfter']],
  ['marks on each other', { alongBefore: '0' }, ['alongBefore']],
  ['a treatment that takes nearly all', { moreAlong: '95' }, ['moreAlong']],
  ['nothing wanted', { long: '0', thereWide: '-1' }, ['long', 'thereWide']],
  ['an interfacing that loses all', { other: '100' }, ['other']],
])('%s: the field is named', (_, set, fields) => {
  const work = workOn(shrinkage, set);
  expect(work.ok ? [] : work.faults.map(({ field }) => field)).toEqual(fields);
});
