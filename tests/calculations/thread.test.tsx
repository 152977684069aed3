import { cleanup } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { threadDrawing } from '../../src/calculations/thread/drawing.ts';
import { threadOutputs } from '../../src/calculations/thread/outputs.ts';
import { thread } from '../../src/calculations/thread/thread.ts';
import { benchOf } from '../controls/helpers.ts';
import { answer, answerTo, open, type, workOn } from '../screens/helpers.tsx';
import { givenBy } from './given.ts';

afterEach(cleanup);

const inch = benchOf({ unit: 'in' });

// A thread maker's bulletin on estimating consumption, archived 2008 (4.1): 42 in of chainstitch, 8 to
// the inch, 0.075 in thick: 5.20 times, with 15 % 7.00 yd; of 42 in unrounded 6.98.
test('opens with a worked answer: how much thread, by its formula, with waste', async () => {
  open(thread, {}, inch);
  const said = await answer();
  expect(said).toMatch(/^7 yd of thread, ends and waste in it/);
  expect(said).toContain('5.2 times the seam');
  expect(answerTo(thread, {}, inch).workings[0]?.formula).toBe('4 + 2 × 0.075 in ÷ 1/8 in = 5.2.');
  expect(said).toContain('5.2 × 42 in × 1.15 = 251.16 in.');
  expect(said).toContain('By the tables5.5 and 5: they differ');
  expect(said).toContain('Foot off the pedal');
});

test('seams, ends and passes go into it, and the whole is said for each', async () => {
  open(thread, { stitch: 'lock', by: 'table', seams: '100; 60', end: '2.5', waste: '0' });
  type('Times sewn over', '2');
  const said = await answer();
  expect(said).toMatch(/^8.5 m of thread.*That is850 cm/);
  expect(said).toContain('2.5 × 2 × (100 cm + 60 cm + 4 × 2.5 cm) = 850 cm.');
  expect(said).toContain('Seam 1525 cm');
  expect(said).toContain('Of it the bobbin’s425 cm');
});

test('an own sample: a short one is doubted', async () => {
  open(thread, { by: 'sample', sampleSeam: '5', sampleNeedle: '15', sampleOther: '13' });
  const said = await answer();
  expect(said).toContain('(15 cm + 13 cm) ÷ 5 cm = 5.6.');
  expect(said).toContain('unpick ten centimetres at least');
});

test('spools and bobbins: how many, and that more threads are the most there can be', async () => {
  open(thread, { stitch: 'lock', by: 'table', seams: '50 m', waste: '0', spool: '100 m' });
  type('Thread on a bobbin', '20 m');
  const said = await answer();
  expect(said).toContain('Spools to have2');
  expect(said).toContain('Bobbins to wind4');
  expect(said).toContain('12500 cm ÷ 10000 cm = 1.25, so 2.');
  cleanup();
  open(thread, { stitch: 'over3', by: 'table', seams: '10', spool: '100 m' });
  const over = await answer();
  expect(over).toContain('at most 3, 3 threads each from its own');
  expect(over).toContain('so many spools do however they share it');
});

test('by hand: how many threads, of what is worked with; ticket of its tex', async () => {
  open(thread, { stitch: 'hand', sampleSeam: '10', sampleNeedle: '30', seams: '40', waste: '0' });
  type('Thread, tex', '30');
  const said = await answer();
  expect(said).toContain('Threads to cut3');
  expect(said).toContain('120 cm ÷ (50 cm − 10 cm) = 3, so 3.');
  expect(said).toContain('Ticket number, about100');
  expect(said).toContain('Cotton ticket, about59Denier, about270Metres to a gram, about33.3');
  expect(said).not.toContain('pedal');
});

test('of a lockstitch the least is beside it, and no seam takes none', () => {
  const lock = answerTo(thread, { stitch: 'lock', thickness: '1 mm', stitchLong: '2.5 mm' });
  expect(lock.lines).toContainEqual({ label: 'Round instead of rectangular', value: '2.3' });
  expect(lock.lines).toContainEqual({ label: 'Thread to seam', value: '2.8' });
  expect(answerTo(thread, { seams: '' }).sentence).toContain('nothing to buy');
});

test('a way there is not for the stitch gives way to the first there is', () => {
  expect(answerTo(thread, { stitch: 'over3', by: 'formula' }).workings[0]?.formula).toBe(
    'Ratio of the table: 14.',
  );
});

test('outputs: thread as a material, its parts, what is wound', () => {
  const lock = { stitch: 'lock', by: 'table', seams: '100', waste: '0', bobbin: '10' };
  expect(givenBy(threadOutputs, lock)).toEqual({
    ...{ thread: 2500, ratio: 2.5, needle: 1250, other: 1250, fills: 13 },
    ...{ spools: 'absent by spool', hand: 'absent by stitch' },
  });
  expect(givenBy(threadOutputs, { stitch: 'over3', by: 'table', seams: '10' })).toMatchObject({
    ...{ ratio: 14, needle: 'absent by by', other: 'absent by by', fills: 'absent by stitch' },
  });
  const material = threadOutputs.outputs.find(({ key }) => key === 'thread')?.material;
  expect(material?.kind).toBe('thread');
  // Of a lockstitch the bobbin is filled from the needle's spool; three threads of an overlock each have their own.
  const fed = ['lock', 'single', 'chain', 'over3', 'none of ours'].map((stitch) =>
    material?.fed?.(() => stitch),
  );
  expect(fed).toEqual([1, 1, 2, 3, 1]);
});

test('the drawing has the seams, and the thread they take at the same scale', () => {
  const draft = { ...thread.start(benchOf()), stitch: 'lock', by: 'table', seams: '10; 20' };
  const drawn = threadDrawing.draw({ ...draft, waste: '0' }, benchOf());
  expect(drawn?.dimensions.map(({ by, text }) => [...Object.values(by), text].join(' '))).toEqual([
    ...['seams 10 cm', 'seams 20 cm', 'needle 37.5 cm', 'other 37.5 cm', 'thread 75 cm'],
  ]);
});

test.each<[string, Record<string, string>, string[]]>([
  ['a seam of nothing', { seams: '10; 0' }, ['seams']],
  ['a stitch of nothing', { stitchLong: '0' }, ['stitchLong']],
  ['more waste than thread', { waste: '120' }, ['waste']],
  ['all of a thread left over', { stitch: 'hand', tail: '50' }, ['working']],
  ['no spool', { spool: '0', tex: '0' }, ['spool', 'tex']],
])('%s: the field is named', (_, set, fields) => {
  const work = workOn(thread, set);
  expect(work.ok ? [] : work.faults.map(({ field }) => field)).toEqual(fields);
});
