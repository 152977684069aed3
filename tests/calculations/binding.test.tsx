import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { bias } from '../../src/calculations/bias/bias.ts';
import { binding } from '../../src/calculations/binding/binding.ts';
import { bindingDrawing } from '../../src/calculations/binding/drawing.ts';
import { bindingOutputs } from '../../src/calculations/binding/outputs.ts';
import { mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type, workOn } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

// Common practice, no source (17.9): four finished widths. An invented place mat of 45 × 30 cm.
test('opens with a worked answer: how wide the strip is cut, and how long round a place mat', async () => {
  open(binding, {});
  const said = await answer();
  expect(said).toMatch(/^4 cm wide to cut/);
  expect(said).toContain('4 × 1 cm = 4 cm.');
  expect(said).toContain('How long159.7 cm');
  expect(said).toContain('Corner 1 takes2 cm');
  expect(said).toContain('2 × 1 cm × cos 45° ÷ sin 45° = 2 cm.');
  expect(said).toContain('150 cm + 2 cm + 2 cm + 2 cm + 2 cm + 1.697 cm = 159.697 cm.');
  expect(said).toContain('Stop as far before a corner as the binding is wide');
});

test('round straight parts with corners between, each pleat has its place on the strip', () => {
  const [row] = answerTo(binding, {}).runs;
  expect(row?.name).toContain('from the join in the middle of the first straight part');
  expect(givenBy(bindingOutputs, {})['corner-pleats']).toEqual([
    233.485281, 553.485281, 1023.485281, 1343.485281,
  ]);
  expect(givenBy(bindingOutputs, { corners: '' })['corner-pleats']).toBe('absent by corners');
  expect(answerTo(binding, { ends: 'open' }).runs).toEqual([]);
});

test('what thickness takes is added to the rule, and never taken off it', async () => {
  open(binding, { thickness: '0.3 mm', edgeThick: '1 mm' });
  const said = await answer();
  expect(said).toMatch(/^4\.1 cm wide to cut/);
  expect(said).toContain('By the rule alone4 cm');
  type('Edge thick, all layers', '0');
  expect(await answer()).toContain('less: the rule is kept');
});

// Clothing for Women, 1916 (17.11): a band of 2 in is cut 4 1/2; a bound seam of 5/8 in takes 7/8 (3.8).
test('a band and a bound seam by their sources', () => {
  const inch = benchOf({ unit: 'in' });
  expect(answerTo(binding, { finish: 'band', width: '2' }, inch).workings[0]?.formula).toBe(
    '2 × 2 in + 1/2 in = 4 1/2 in.',
  );
  expect(answerTo(binding, { finish: 'seam' }, inch).workings[0]?.formula).toBe(
    '5/8 in + 1/4 in = 7/8 in.',
  );
});

// Derived (17.12): a cord of 6 mm, 15 of seam: 48.8 mm. Eight cords (17.13) leave little of so thin a one.
test('piping round a cord, with what the trade’s rules leave for its seams', async () => {
  open(binding, { finish: 'cord', straight: '100', corners: '', ends: 'open', endTurn: '0' });
  const said = await answer();
  expect(said).toMatch(/^4\.9 cm wide to cut/);
  expect(said).toContain('3.14159 × 0.6 cm + 2 × 1.5 cm = 4.885 cm.');
  expect(said).toContain('4.8 cm, leaves 1.458 cm for each seam');
  expect(said).toContain('How long100 cm');
  type('Cord, through it', '3');
  expect(await answer()).toContain('too narrow to go round');
});

test('curves: outward the edge, inward the stitch line; a tight one is doubted', () => {
  const set = { straight: '', corners: '', ends: 'open', endTurn: '0' };
  const found = answerTo(binding, {
    ...set,
    outLong: '30',
    outRadius: '8',
    inLong: '20',
    inRadius: '10',
  });
  const lines = Object.fromEntries(found.lines.map(({ label, value }) => [label, value]));
  expect(lines['Curves, as they are cut']).toBe('52 cm');
  expect(lines['The fold stretches outward']).toBe('14.3 % at the tightest curve');
  expect(lines['The fold eases inward']).toBe('9.1 % at the tightest curve');
  expect(found.warnings[0]).toContain('more than a tenth');
  expect(answerTo(binding, { corners: '30' }).warnings[0]).toContain('sharper than 45°');
  expect(answerTo(binding, set).warnings[0]).toContain('Give the edges');
});

test('goes on to bias strips with its width and its length, both no less', () => {
  const bench = benchOf();
  const [beside] = binding.beside ?? [];
  const draft = beside?.carry?.(binding.start(bench), bench);
  expect([beside?.id, draft]).toEqual(['bias', { width: '4 cm', need: '159.7 cm' }]);
  expect(answerTo(bias, draft ?? {}).headline.after).toBe('of cloth, along the selvedge');
});

test('outputs: the strip is a material as long as its edge', () => {
  expect(givenBy(bindingOutputs, { join: '0' })).toEqual({
    ...{ long: 1580, strip: 40, stitch: 10, finished: 10, stretch: 0, ease: 0 },
    'corner-pleats': [225, 545, 1015, 1335],
  });
  expect(givenBy(bindingOutputs, { straight: '' })).toMatchObject({ long: 'absent by straight' });
  expect(givenBy(bindingOutputs, { finish: 'seam' })).toMatchObject({
    strip: 21.35,
    stitch: 3.175,
  });
  const steps = bindingOutputs.outputs.flatMap(({ key, step }) =>
    step ? [[key, step.stage, step.undoable]] : [],
  );
  expect(steps).toEqual([
    ['strip', 'cut', false],
    ['corner-pleats', 'edge', true],
    ['stitch', 'edge', true],
    ['finished', 'edge', true],
  ]);
  const made = { steps: { stitch: mm(12) } };
  expect(givenBy(bindingOutputs, {}, made)).toMatchObject({ finished: 12, strip: 40 });
});

test('the drawing is the strip across', () => {
  const drawn = bindingDrawing.draw(binding.start(benchOf()), benchOf());
  expect(drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '))).toEqual([
    'width 1 cm',
    'strip 4 cm',
  ]);
});

test.each<[string, Record<string, string>, string[]]>([
  ['no width', { width: '0' }, ['width']],
  ['a curve without its radius', { outLong: '10; 20', outRadius: '8' }, ['outRadius']],
  ['a curve with no stitch line', { outLong: '10', outRadius: '1' }, ['outRadius']],
  ['a corner that is none', { corners: '90; 0' }, ['corners']],
  ['a cord of nothing', { finish: 'cord', cord: '0', straight: '0' }, ['cord', 'straight']],
])('%s: the field is named', (_, set, fields) => {
  const work = workOn(binding, set);
  expect(work.ok ? [] : work.faults.map(({ field }) => field)).toEqual(fields);
});
