import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { placketDrawing } from '../../src/calculations/placket/drawing.ts';
import { placketOutputs } from '../../src/calculations/placket/outputs.ts';
import { placket } from '../../src/calculations/placket/placket.ts';
import { mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type, workOn } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

// Row 18.4: a sewing book of 1944, quoted on a page; the opening is what a hand needs to pass (20.35).
test('opens with a worked answer: a cuff that a hand has to pass, and the strip round its slit', async () => {
  open(placket);
  const said = await answer();
  expect(said).toMatch(/^10\.6 cm of strip, one round both edges/);
  expect(said).toContain('The opening is 4 cm.');
  expect(said).toContain('(24 cm + 2 cm − 18 cm) ÷ 2 = 4 cm.');
  expect(said).toContain('2 × 4 cm + 2 × 1.3 cm = 10.6 cm. 2 × 2 cm + 2 × 0.6 cm = 5.2 cm.');
  expect(said).toContain('a little longer than twice the opening');
  expect(said).toContain('1 mm (1/32 in) short of the end');
});

// Row 20.50: a neckline of 40, a head of 57.4, 2 to spare.
test('20.50: the opening for a head is 9.7 cm', async () => {
  open(placket, { way: 'strips' });
  type('What passes', '57.4');
  type('Edge all round', '40');
  const said = await answer();
  expect(said).toContain('Opening, at least9.7 cm');
  expect(said).toContain('Facing cut wide3.2 cm');
});

// Derived here (`sewing/wearer/least-slit.ts`): 70 round at the waist, 100 at 20 below, hips of 98 want 18.7.
test('from what passes, it is said that a waist which widens slowly wants more', () => {
  const hips = answerTo(placket, { way: 'zip', body: '98', edge: '70', ease: '0' });
  expect(hips.lines).toContainEqual({ label: 'Opening, at least', value: '14 cm' });
  expect(hips.warnings[0]).toContain('as from waist to hip, it would jam');
  expect(hips.warnings[0]).toContain('“Does it pass: head, hand, hips”');
  expect(answerTo(placket, { way: 'zip', by: 'given', open: '18.7' }).warnings).toEqual([]);
});

// Rows 18.2 and 1.22; 18.1 (extension circular of 1973): a zip takes 5/8 in of seam, else it is extended.
test('a zip: the trade’s pair that is surely long enough, or the one there is, shortened', () => {
  const set = { way: 'zip', by: 'given', open: '20' };
  const bought = answerTo(placket, set);
  expect(bought.headline).toEqual({ number: '8 in (20 cm)', after: 'zip' });
  expect(bought.workings[0]?.formula).toBe(
    'A zip of 8 in or 20 cm is surely 20 cm. 20 cm − 20 cm = 0 cm.',
  );
  const there = answerTo(placket, { ...set, zip: '25', allow: '1.2' });
  expect(there.sentence).toContain('only then cut the zip');
  expect(there.lines).toContainEqual({ label: 'New stop, from the top stop', value: '20 cm' });
  expect(there.warnings[0]).toContain('extend it');
  expect(answerTo(placket, { ...set, open: '70' }).warnings[0]).toContain('off a reel');
  expect(answerTo(placket, { ...set, zip: '22' }).lines).toContainEqual({
    label: 'Zip below the opening',
    value: '2 cm, left unstitched from outside',
  });
});

// Row 18.3: one third above the waist, two thirds below.
test('at a dress’s side a third of it lies above the waist', () => {
  const side = answerTo(placket, { way: 'zip', by: 'given', open: '30', split: 'waist' });
  expect(side.lines.at(-1)).toEqual({
    label: 'Above and below the waist',
    value: '10 cm and 20 cm',
  });
  expect(side.workings.at(-1)?.formula).toBe('30 cm ÷ 3 = 10 cm.');
});

test('outputs: strips follow the slit as it was cut; a zip is shortened last', () => {
  const lap = { by: 'given', open: '10', split: 'waist' };
  expect(givenBy(placketOutputs, lap)).toMatchObject({
    ...{ slit: 100, strip: 226, wide: 52, width: 20, facing: 'absent by way' },
    ...{ zip: 'absent by way', above: 33.333333 },
  });
  expect(givenBy(placketOutputs, lap, { steps: { slit: mm(104) } })).toMatchObject({ strip: 234 });
  const zip = { way: 'zip', by: 'given', open: '20', zip: '25' };
  expect(givenBy(placketOutputs, zip)).toMatchObject({
    ...{ open: 200, zip: 250, left: 50, stop: 200, cut: 215, row: 6, slit: 'absent by way' },
  });
  expect(givenBy(placketOutputs, { ...zip, zip: '' })).toMatchObject({ stop: 'absent by zip' });
  const fixed = placketOutputs.outputs.flatMap(({ key, step }) =>
    step?.undoable === false ? [key] : [],
  );
  expect(fixed).toEqual(['slit', 'wide', 'strip', 'facing', 'cut']);
});

test('the drawing has opening and strip, or opening and zip, to scale', () => {
  const drawn = (set: Record<string, string>) =>
    placketDrawing
      .draw({ ...placket.start(benchOf()), ...set }, benchOf())
      ?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '));
  expect(drawn({})).toEqual(
    expect.arrayContaining(['slit 4 cm', 'strip 10.6 cm', 'wide 5.2 cm', 'extra 1.3 cm']),
  );
  expect(drawn({ way: 'zip', by: 'given', open: '20', zip: '25' })).toEqual(
    expect.arrayContaining(['open 20 cm', 'zip 25 cm', 'left 5 cm', 'cut 21.5 cm', 'row 0.6 cm']),
  );
});

test.each<[string, Record<string, string>, string[]]>([
  ['an edge that passes closed', { edge: '27' }, ['edge']],
  ['a strip of nothing', { width: '0' }, ['width']],
  ['no opening', { by: 'given', open: '0' }, ['open']],
  ['a zip too short', { way: 'zip', by: 'given', open: '20', zip: '18' }, ['zip']],
  ['stitched past the seam', { way: 'zip', row: '2', allow: '1.5' }, ['row']],
])('%s: the field is named', (_, set, fields) => {
  const work = workOn(placket, set);
  expect(work.ok ? [] : work.faults.map(({ field }) => field)).toEqual(fields);
});
