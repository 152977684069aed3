import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { cord } from '../../src/calculations/cord/cord.ts';
import { cordOutputs } from '../../src/calculations/cord/outputs.ts';
import { mm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

// Row 23.19, arithmetic on row 9.5.
test('a channel of 80 with 14 free at each end: 108 of cord, and how it was got', async () => {
  open(cord);
  const said = await answer();
  expect(said).toMatch(/^108 cm of cord to cut/);
  expect(said).toContain('80 cm + 2 × 14 cm = 108 cm.');
  expect(said).toContain('0.5 cm + 0.635 cm = 1.135 cm.');
  expect(said).toContain('can catch and strangle');
  type('Cord thick', '2');
  expect(await answer()).toContain('3.1416 × 2 cm ÷ 2 = 3.142 cm.');
});

// Rows 9.3 and 9.5, as laboratories give them.
test('for a child both limits, the shorter first; over one it is said, and never that it is allowed', async () => {
  open(cord, { who: 'child' });
  const said = await answer();
  expect(said).toContain('Limits for children, each end7.5 cm (United States), 14 cm (Europe)');
  expect(said).toContain('Cord that keeps to them95 cm; 108 cm');
  expect(said).toContain('For a child each end is longer than 7.5 cm');
  expect(said).not.toContain('each end is longer than 14 cm');
  // 9.4: EN 14682:2007, as a laboratory gives it.
  expect(said).toContain('At the hood or neck of a child: no cord.');
  expect(said).toContain('ask a qualified tester');
  expect(said).not.toMatch(/allowed|is safe to/);
  type('Knot, each end', '3');
  const knotted = await answer();
  expect(knotted).toContain('no knots or toggles');
  expect(knotted).toContain('each end is longer than 14 cm');
});

// 7.5 cm are 2.953 in: 2 15/16 in is the last sixteenth that isn't over.
test('a limit is said on a tape of inches as what is never over it', () => {
  const bench = benchOf({ unit: 'in' });
  const { warnings } = answerTo(cord, { who: 'child', free: '5 1/2' }, bench);
  expect(warnings).toContain(
    'For a child each end is longer than 2 15/16 in: it can catch and strangle. Shorten it.',
  );
});

test('a header above the cord: two lines to stitch, and so much more to turn down', () => {
  const { lines, workings } = answerTo(cord, { header: '2' });
  expect(lines).toContainEqual({ label: 'Stitch line, from the fold', value: '2 cm and 3.2 cm' });
  expect(workings[0]?.formula).toContain('0.5 cm + 2 cm + 1.135 cm + 0.2 cm = 3.835 cm.');
  expect(givenBy(cordOutputs, { header: '2' })).toMatchObject({ header: 20, allowance: 38.35 });
  expect(givenBy(cordOutputs, {}).header).toBe('absent by header');
});

test('between the lines to stitch the cord has its room on any tape', () => {
  for (const [header, ...said] of [
    ['2', '2 cm and 3.2 cm'],
    ['2.04', '2 cm and 3.2 cm'],
    ['2.07', '2 cm and 3.3 cm'],
  ] as const) {
    const { lines } = answerTo(cord, { header });
    expect(lines.find(({ label }) => label.startsWith('Stitch line'))?.value).toBe(said[0]);
  }
  const bounds = cordOutputs.outputs.flatMap(({ key, step }) =>
    step?.bound ? [[key, step.bound]] : [],
  );
  expect(bounds).toEqual([
    ['allowance', 'least'],
    ['header', 'most'],
    ['stitch', 'least'],
    ['cut', 'most'],
  ]);
});

test('the cord that is there: what is free, or that it slips in', () => {
  expect(answerTo(cord, { by: 'there', there: '100' }).sentence).toMatch(/^10 cm is free/);
  expect(answerTo(cord, { by: 'there', there: '78' }).sentence).toContain('its ends slip in');
});

test('the cord is cut last, never longer than it is; cut 4 cm long each end has 2 more', () => {
  const cut = cordOutputs.outputs.find(({ key }) => key === 'cut')?.step;
  expect(cut).toMatchObject({ stage: 'close', undoable: false, bound: 'most' });
  expect(cut?.caution).toContain('strangle');
  expect(givenBy(cordOutputs, {})).toMatchObject({
    cut: 1080,
    free: 140,
    turn: 5,
    allowance: 18.35,
  });
  expect(givenBy(cordOutputs, {}, { steps: { cut: mm(1120) } })).toMatchObject({ free: 160 });
  expect(givenBy(cordOutputs, { turn: '0' }).turn).toBe('absent by turn');
});

test.each<[string, Record<string, string>, RegExp]>([
  ['no channel', { widest: '0' }, /Channel, widest: give more than nothing/],
  ['no cord', { thick: '0' }, /Cord thick: give more than nothing/],
])('%s: the field and the mend are named', async (_, set, said) => {
  open(cord, set);
  expect(await answer()).toMatch(said);
});
