import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { lacing } from '../../src/calculations/lacing/lacing.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type, workOn } from '../screens/helpers.tsx';

afterEach(cleanup);

test('the lace to cut, rounded up, with its tails; beside it what is published', async () => {
  open(lacing);
  const said = await answer();
  // 3 + 49 × 20.434 + 200 = 1204.3 mm (derived here): 120.5 cm on a tape in millimetres.
  expect(said).toMatch(/^120\.5 +cm *of lace to cut/);
  expect(said).toContain('In one piece. A tail of 10 cm at each end is in it.');
  expect(said).toContain('From hole to hole, by geometry2.043 cm');
  expect(said).toContain('By geometry2.55 × the edge, 120.427 cm in all');
  // Texas 4-H L-382 and leathercircle.com: 2½ and 3½ × 39.2 cm, 3 mm through the first hole, tails.
  expect(said).toContain('Published2.5 to 3.5 × the edge, 118.3 cm to 157.5 cm in all');
  expect(said).toContain('Cut bygeometry, which lies within what is published');
  expect(said).toContain('never towards or above it');
  expect(said).toContain('local rules');
  expect(screen.getByRole('button', { name: 'Follow' })).toBeTruthy();
  expect(await screen.findByRole('img', { name: /^From the front/ })).toBeTruthy();
  expect(screen.getByRole('img', { name: 'From the back' })).toBeTruthy();
  expect(said).toContain('lies behind');
  expect(said).not.toMatch(/\bfold\b/);
});

test('every hole is a mark, the middle one named', () => {
  const { runs } = answerTo(lacing, { holes: '27' });
  expect(runs[0]?.run.marks.map(({ label }) => label).at(-1)).toBe('27');
  expect(runs[0]?.run.marks[13]?.kind).toBe('centre');
});

test('longer than is comfortable, it is cut in pieces', async () => {
  open(lacing, { kind: 'double-loop', holes: '75' });
  // 8½ × 74 × 8 + 3 + 200 = 5235 mm (leathercircle.com); 2 yd are 1828.8 mm.
  expect(await answer()).toContain('In 3 pieces of 174.5 cm, spliced 2 times');
  type('Longest piece', '2.7 m');
  expect(await answer()).toContain('In 2 pieces of 261.8 cm, spliced once');
});

test('from the middle, where the slant changes sides, on which face, and each half are said', async () => {
  open(lacing, { holes: '26', start: 'middle' });
  // 4 + 3 + 12 × 20.434 + 100 = 352.2 mm (derived here), a stitch more of an odd count.
  const said = await answer();
  expect(said).toContain(
    'Start on the back, between holes 13 and 14, with 35.3 cm of lace to each side; from there each half slants',
  );
  expect(said).toContain('Slant changes sidesbetween holes 13 and 14');
  type('Holes', '27');
  expect(await answer()).toContain(
    'with 37.3 cm of lace towards hole 1 and 35.3 cm towards the last',
  );
});

test('from the middle, a lacing without a slant has none that changes sides', async () => {
  open(lacing, { holes: '27', start: 'middle', kind: 'running' });
  const said = await answer();
  // 1.5 + 13 × 12 + 100 = 257.5 mm (1½ × the edge, as published).
  expect(said).toContain(
    'Start in hole 14, with 25.8 cm of lace to each side; from there each half goes',
  );
  expect(said).toContain('Halves beginhole 14');
  expect(said).not.toMatch(/slant/i);
});

test('from the middle in pieces, the lace to each side at the start is that of one piece', () => {
  // 2 × (4 + 3 + 49 × 20.434 + 100) = 2216.5 mm (derived here), a third of it 738.8.
  const set = { holes: '100', start: 'middle' };
  const { sentence } = answerTo(lacing, set, benchOf({ unit: 'mm' }));
  expect(sentence).toContain('In 3 pieces of 739 mm, spliced 2 times');
  expect(sentence).toContain('with 370 mm of one piece to each side');
});

test('in and out, an odd count is said to end on the other face', async () => {
  open(lacing, { kind: 'running', holes: '9' });
  expect(await answer()).toMatch(/one on the back, one on the front; .*even count/);
  type('Holes', '8');
  expect(await answer()).toContain('Ends of the laceboth on the back');
});

test('step by step: told in words, drawn up to the step chosen', async () => {
  open(lacing, { kind: 'double-loop' });
  const said = await answer();
  expect(said).toContain('Step 1on the back, out of hole 2');
  expect(said).toContain('Step 3round the edge to the front');
  expect(said).toContain('Step 4on the front to the edge at hole 1, and once round the lace');
  expect(said).toContain('Step 7through the hole to the back');
  const linesDrawn = (step: string) =>
    answerTo(lacing, { kind: 'double-loop', step }).figures?.map(
      ({ draw }) =>
        draw().filter((shape) => 'line' in shape && /stitch|behind/.test(shape.line)).length,
    );
  expect(linesDrawn('step-2')).toEqual([1, 1]);
  expect(linesDrawn('step-5')).toEqual([3, 3]);
  // Another lacing has such a step, so it's no mistake: all of this one are drawn.
  expect(linesDrawn('step-12')).toEqual(linesDrawn('all'));
});

test('fields are those of the lacing chosen', () => {
  const keys = (kind: string) => lacing.fields({ kind }).map(({ key }) => key);
  expect(keys('outside')).toContain('outside');
  expect(keys('edge')).not.toContain('outside');
  expect(keys('saddle')).not.toContain('start');
  expect(keys('own')).toContain('own');
  expect(keys('nonsense')).toEqual(keys('edge'));
  const step = lacing.fields({ kind: 'double-loop' }).find(({ key }) => key === 'step');
  expect(step?.kind === 'choice' ? step.options.map(({ label }) => label) : []).toEqual([
    'All',
    ...['2', '3', '4', '5', '6', '7'],
  ]);
});

test('one’s own steps are written as text, on the phone’s own keyboard', async () => {
  open(lacing, { kind: 'own' });
  const field = screen.getByLabelText<HTMLInputElement>(/^Steps: along/);
  expect(field.inputMode).toBe('text');
  expect(await answer()).toMatch(/^120\.5 +cm/);
  fireEvent.focus(field);
  expect(screen.queryByRole('group', { name: 'Number pad' })).toBeNull();
  type('Steps: along', '0 1 f; 0 1 f; 1 1 f; 1 1 b; 2 1 b; 2 1 f');
  expect(await answer()).toContain('Steps: along, across, face: step 2 goes nowhere');
  expect(field.value).toContain('0 1 f; 0 1 f');
  type('Steps: along', '0 1 f; 0.5 2 f; 0.5 2 b; 1 1 b; 1 1 f');
  expect(await answer()).toContain('Step 3: the lace passes through where the row has no hole');
  type('Steps: along', '0 1 f; 2 1 f; 2 1 b; 3 1 b; 3 1 f');
  type('Holes', '6');
  expect(await answer()).toContain('come 3 holes on and there are 5 stitches');
});

test('steps have the numbers they were typed with, also begun before the first hole', async () => {
  const own = '0 1 b; 0 1 f; 0.5 2 f; 0.5 2 b; 1 1 b';
  open(lacing, { kind: 'own', own, holes: '10' });
  const said = await answer();
  expect(said).toContain('Step 4: the lace passes through where the row has no hole');
  expect(said).toContain('Step 1on the back, at hole 1');
  expect(said).toContain('Step 2through the hole to the front');
  expect(said).toMatch(/Step 4through the strip to the back/);
  expect(said).toContain('Step 5on the back to hole 2');
  expect(said).not.toContain('Step 6');
  const drawn = (step: string) =>
    answerTo(lacing, { kind: 'own', own, holes: '10', step })
      .figures?.[0]?.draw()
      .filter((shape) => 'line' in shape && /stitch|behind/.test(shape.line)).length;
  expect(['step-2', 'step-3', 'step-4', 'step-5'].map(drawn)).toEqual([0, 1, 1, 2]);
});

test('steps that reach past the row are told', async () => {
  open(lacing, { kind: 'own', own: '0 1 f; 2 1 f; 2 1 b; 1 1 b; 1 1 f', holes: '10' });
  expect(await answer()).toContain('The steps reach 1 pitch past the last hole');
});

const WRONG: [string, Record<string, string>, RegExp][] = [
  ['a lacing that is no choice', { kind: 'knots' }, /Lacing: “knots” is no choice .*Own steps$/],
  ['a step no lacing has', { step: 'step-99' }, /Drawn up to step: “step-99” is no choice /],
  [
    'steps and another field at once',
    { kind: 'own', own: 'up', tail: 'x' },
    /Tail at each end: .*step 1, “up”, was not understood/,
  ],
  ['no steps', { kind: 'own', own: ' ' }, /Steps: along, across, face: write steps like 0 1 front/],
  [
    'a step that is none',
    { kind: 'own', own: '0 1 front; up' },
    /step 2, “up”, was not understood/,
  ],
  [
    'no advance',
    { kind: 'own', own: '0 1 f; 1 0 f; 1 0 b; 0 1 b; 0 1 f' },
    /no whole number of holes on/,
  ],
  ['one step', { kind: 'own', own: '0 1 f' }, /one step is no repeat/],
  [
    'too far',
    { kind: 'own', own: '0 1 f; 99 1 f; 99 1 b; 1 1 b; 1 1 f' },
    /step 2 is more than 20/,
  ],
  ['both at once', { kind: 'own', own: '0 1 f; 1 1 b; 1 1 f' }, /step 2 changes place and face/],
  ['not in a hole', { kind: 'own', own: '0 0 f; 0 0 b; 1 0 b; 1 0 f' }, /step 1 is not in a hole/],
  [
    'not again',
    { kind: 'own', own: '0 1 f; 1 1 f; 1 1 b' },
    /step 3, the last, is not step 1 again/,
  ],
  ['never through', { kind: 'own', own: '0 1 f; 1 1 f' }, /never goes from face to face/],
  ['too many steps', { kind: 'own', own: '0 1 f;'.repeat(41) }, /41 steps are more than/],
  [
    'absurd thickness',
    { thickness: '2' },
    /Thickness, all layers: 2 cm is too long; give at most 1\.6 cm/,
  ],
  ['too many holes', { holes: '2001' }, /Holes: give at least 2, at most 2000/],
  ['no pitch', { pitch: '0' }, /Hole to hole: give more than nothing/],
  ['a tail less than nothing', { tail: '1 − 2' }, /Tail at each end: −1 cm is less than nothing/],
  [
    'pieces that are all splices',
    { longest: '1 mm' },
    /0\.1 cm is too short; give at least 8\.\d+ cm/,
  ],
  ['no piece', { longest: '0' }, /Longest piece: give more than nothing/],
];

test.each(WRONG)('%s: the field and the mend are named', async (_, set, said) => {
  open(lacing, set);
  expect(await answer()).toMatch(said);
});

test('mistakes in fields and steps are said together', () => {
  const work = workOn(lacing, { kind: 'own', own: '0 1 f; up', pitch: 'wide', margin: '' });
  expect(work.ok ? [] : work.faults.map(({ field }) => field)).toEqual(['pitch', 'margin', 'own']);
});

test('under what is published, that is cut; both are said, with the reason', async () => {
  open(lacing, { kind: 'single-loop', tail: '0' });
  const said = await answer();
  // leathercircle.com: 6½ × 39.2 cm, and 3 mm through the first hole; geometry 4.25 × (derived here).
  expect(said).toMatch(/^255\.1 +cm *of lace to cut/);
  expect(said).toContain(
    'Geometry gives 4.25 × the edge, 166.9 cm in all: 35 % less than the 6.5 × that is published. The greater is what to cut, as lace cut too short is lost. Geometry takes the lace as drawn tight',
  );
  expect(said).toContain('Lace ten holes, undo them and measure');
  expect(said).toContain('Cut bywhat is published, as the greater');
  expect(said).toContain('6.5 × 39.2 cm + 0.3 cm = 255.1 cm');
});

test('over what is published, geometry is cut, and it is said: cross at 6.76 × beside 5 to 6', async () => {
  open(lacing, { kind: 'cross', margin: '9 mm' });
  expect(await answer()).toMatch(
    /Geometry gives 6\.76 × the edge, .*: 13 % more than the 5 to 6 × that is published\. .*A published factor knows nothing/,
  );
});

test('near what is published nothing is said of it', () => {
  expect(answerTo(lacing, { kind: 'running' }).warnings).toEqual([]);
  expect(answerTo(lacing, { kind: 'cross' }).warnings).toEqual([]);
});

test('two rows have a lace each, and are cut for together', async () => {
  open(lacing, { kind: 'running', holes: '51', holes2: '50', tail: '0' });
  const said = await answer();
  // 1½ × 400 + 3 and 1½ × 392 + 3 mm (Texas 4-H L-382 and others).
  expect(said).toMatch(/^119\.4 +cm *of lace to cut for both rows/);
  expect(said).toContain('Row 1: cut 60.3 cm. In one piece. Row 2: cut 59.1 cm. In one piece.');
  expect(said).toContain('Row 2: First to last hole39.2 cm');
  type('Row 2: hole to hole', '1');
  // 1½ × 490 + 3 mm.
  expect(await answer()).toContain('Row 2: cut 73.8 cm.');
  const { runs } = answerTo(lacing, { holes: '51', holes2: '50' });
  expect(runs.map(({ name, run }) => [name, run.marks.length])).toEqual([
    ['Row 1', 51],
    ['Row 2', 50],
  ]);
});

test('what is wrong with the second row names its own fields', () => {
  const wrong = (set: Record<string, string>) => {
    const work = workOn(lacing, set);
    return work.ok ? [] : work.faults.map(({ field }) => field);
  };
  expect(wrong({ holes2: '1' })).toEqual(['holes2']);
  expect(wrong({ holes2: '2000', pitch2: '600 mm' })).toEqual(['pitch2']);
  expect(wrong({ holes2: '9', pitch2: '0' })).toEqual(['pitch2']);
  expect(wrong({ holes2: 'x' })).toEqual(['holes2']);
});

test('in inches', async () => {
  open(
    lacing,
    { kind: 'running', pitch: '1/4', thickness: '1/8', holes: '73', tail: '0' },
    benchOf({ unit: 'in' }),
  );
  // kingsmerecrafts.info, page 38: 18 in take 27 in; here and the first pass, 1/8 in.
  const said = await answer();
  expect(said).toMatch(/^27 1\/8.* in of lace to cut/);
  expect(said).toContain('No tails are in it');
});
