import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { pocketDrawing } from '../../src/calculations/pocket/drawing.ts';
import { pocketOutputs } from '../../src/calculations/pocket/outputs.ts';
import { pocket } from '../../src/calculations/pocket/pocket.ts';
import { mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type, workOn } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

// Rows 18.10 and 18.7, in inches: a teaching page, and A Complete Course in Dressmaking 2 (about 1922).
test('opens with a worked answer: two thirds of what the pocket leaves, the same on both fronts', () => {
  const { headline, workings, lines, cautions } = answerTo(pocket, {}, benchOf({ unit: 'in' }));
  expect(headline.number).toMatchObject({ whole: '4', fraction: { over: 5, under: 16 } });
  expect(headline.after).toContain('on both fronts');
  const said = workings.map(({ formula }) => formula).join(' ');
  expect(said).toContain('(12 1/2 in − 6 in) ÷ 3 × 2 = 4.333 in.');
  expect(said).toContain('6 in + 2 × 3/8 in = 6 3/4 in. 6 3/4 in + 1 in + 2 × 3/8 in = 8 1/2 in.');
  expect(lines).toContainEqual({
    label: 'Corners',
    value: 'trim within 1/4 in of the finished corner',
  });
  expect(cautions[0]).toContain('put the hand in before you sew');
});

test('typed in place, slanted: as long along its opening as it is wide', async () => {
  open(pocket, { kind: 'slash', place: 'given' });
  type('Farther end lower by', '9');
  const said = await answer();
  expect(said).toMatch(/^10 cm from the centre line/);
  expect(said).toContain('12 cm × 12 cm + 9 cm × 9 cm = 15 cm × 15 cm.');
  expect(said).toContain('Centre line to its farther edge22 cm');
  expect(said).toContain('From the waist to its farther end18 cm');
  // The New Dressmaker, 1921: 1/2 in beyond each end.
  expect(said).toContain('15 cm + 2 × 1.27 cm = 17.54 cm.');
  expect(said).toContain('Cut the slash last');
});

// Row 18.9: 5 to 6 1/2 in, from 3 to 6 in below the waist.
test('18.9: in the seam, from the waist; a hand that doesn’t slip in is said', () => {
  const inches = benchOf({ unit: 'in' });
  const seam = answerTo(pocket, { kind: 'seam', width: '5', down: '3', hand: '9 1/4' }, inches);
  expect(seam.headline.after).toContain('where it opens');
  expect(seam.workings[0]?.formula).toBe('3 in + 5 in = 8 in.');
  expect(seam.workings[0]?.source).toContain('5 to 6 1/2 in, from 3 to 6 in below the waist');
  expect(seam.warnings[0]).toContain('at least 5 3/8 in');
});

test('a pocket over a dart or a hem is said before it is cut', () => {
  expect(answerTo(pocket, { to: '24' }).warnings).toEqual([
    'It reaches 2 cm past what is free: move it up, or make it less deep, before it is cut.',
  ]);
  expect(answerTo(pocket, { to: '26' }).warnings).toEqual([]);
});

test('outputs: cut first, marked from the centre and the waist; the slash is cut last', () => {
  expect(givenBy(pocketOutputs, { place: 'given' })).toMatchObject({
    ...{ wide: 170, deep: 215, hem: 25, near: 100, far: 250, down: 90 },
    ...{ 'down-far': 'absent by slant', ends: 'absent by kind', slit: 'absent by kind', hand: 125 },
  });
  const made = { steps: { near: mm(103), down: mm(88) } };
  expect(givenBy(pocketOutputs, { place: 'given', slant: '9' }, made)).toMatchObject({
    ...{ far: 223, 'down-far': 178 },
  });
  expect(givenBy(pocketOutputs, { kind: 'seam' }, made)).toMatchObject({ ends: 238 });
  expect(givenBy(pocketOutputs, { hem: '0' })).toMatchObject({ hem: 'absent by hem' });
  const slash = givenBy(pocketOutputs, { kind: 'slash' });
  expect(slash).toMatchObject({ 'facing-wide': 76.2, 'facing-long': 175.4, slit: 150 });
  const fixed = pocketOutputs.outputs.flatMap(({ key, step }) =>
    step?.undoable === false ? [`${key} ${step.stage}`] : [],
  );
  expect(fixed).toEqual([
    ...['wide cut', 'deep cut', 'facing-wide cut', 'facing-long cut', 'slit join'],
  ]);
});

test('the drawing has the front with its pocket, the mirror image, and the patch as cut', () => {
  const set = { place: 'given', to: '30' };
  const drawn = pocketDrawing.draw({ ...pocket.start(benchOf()), ...set }, benchOf());
  expect(drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '))).toEqual([
    ...['front 32 cm', 'near 10 cm', 'width 15 cm', 'deep 17 cm', 'down 9 cm', 'to 30 cm'],
    ...['wide 17 cm', 'deep 21.5 cm', 'seam 1 cm', 'hem 2.5 cm'],
  ]);
  const styles = drawn?.shapes.flatMap((shape) => ('line' in shape ? [shape.line] : []));
  expect(styles).toContain('behind');
});

test.each<[string, Record<string, string>, string[]]>([
  ['as wide as the front', { width: '32' }, ['width']],
  ['past its side', { place: 'given', near: '20' }, ['near']],
  ['steeper than it is long', { slant: '16' }, ['slant']],
  ['no depth', { deep: '0' }, ['deep']],
  ['no hand', { hand: '0' }, ['hand']],
])('%s: the field is named', (_, set, fields) => {
  const work = workOn(pocket, set);
  expect(work.ok ? [] : work.faults.map(({ field }) => field)).toEqual(fields);
});
