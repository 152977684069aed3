import { expect, test } from 'vitest';
import { seamOutputs } from '../../src/calculations/seam/outputs.ts';
import { inches } from '../../src/lengths/length.ts';
import { lookUpIn } from './given.ts';

const seam = lookUpIn(seamOutputs);
const french = {
  what: 'finish',
  finish: 'french',
  given: '5/8 in',
  first: '3/8 in',
  trim: '1/8 in',
  second: '1/4 in',
};
const felled = {
  what: 'finish',
  finish: 'felled',
  given: '5/8 in',
  under: '1/8 in',
  turn: '3/8 in',
};

// enleedesigns.com, French seams (a trade page): 3/8 + 1/4 = 5/8, trimmed to 1/8 in.
test('a French seam gives its two rows, and both are what it takes', () => {
  const all = seam(french);
  expect(all.inches('first-row', 'trim-first', 'second-row', 'sewn')).toEqual([
    3 / 8,
    1 / 8,
    1 / 4,
    5 / 8,
  ]);
  expect(all.of('stitch-line')).toEqual({ state: 'absent', by: 'finish' });
  expect(all.of('spare')).toEqual({ state: 'absent', by: 'given' });
  expect(seam({ ...french, given: '3/4 in' }).inches('spare')).toEqual([1 / 8]);
  // By hand: a first row sewn at 7/16 in makes it 1/16 in more.
  const steps = { 'first-row': inches(7 / 16) };
  expect(seam(french, { steps }).inches('sewn', 'second-row')).toEqual([11 / 16, 1 / 4]);
});

// bellaonline.com, art60164 (a trade page): 5/8 allowance, under layer 1/8, turned under 3/8,
// stitched 1/4 in from the seam.
test('a felled seam gives its trimming, its fold and its stitching, as the seam is sewn', () => {
  const rows = ['trim-under', 'fold', 'fold-stitch'];
  expect(seam(felled).inches('sewn', 'stitch-line', ...rows)).toEqual([
    5 / 8,
    5 / 8,
    1 / 8,
    1 / 4,
    1 / 4,
  ]);
  // By hand: sewn 1/16 in deeper, the fold comes that much further from the line.
  const deeper = { 'stitch-line': inches(11 / 16) };
  const sewn = seam(felled, { steps: deeper });
  expect(sewn.inches('sewn', ...rows)).toEqual([11 / 16, 1 / 8, 5 / 16, 5 / 16]);
  const pressed = seam(felled, { steps: { ...deeper, fold: inches(9 / 32) } });
  expect(pressed.inches('fold-stitch')).toEqual([9 / 32]);
});

// By hand: both layers are cut with 5/8; or the under one with its 1/8 alone, laid 1/2 in from the other’s edge.
test('each side of a felled seam has the allowance its piece is cut with', () => {
  expect(seam(felled).inches('upper', 'lower')).toEqual([5 / 8, 5 / 8]);
  const inset = { ...felled, laid: 'inset' };
  expect(seam(inset).inches('upper', 'lower', 'sewn', 'fold')).toEqual([
    5 / 8,
    1 / 8,
    5 / 8,
    1 / 4,
  ]);
  expect(seam(inset).of('trim-under')).toEqual({ state: 'absent', by: 'laid' });
  const deeper = { steps: { 'stitch-line': inches(11 / 16) } };
  expect(seam(inset, deeper).inches('upper', 'lower')).toEqual([11 / 16, 3 / 16]);
  expect(seam(french).of('lower')).toEqual({ state: 'absent', by: 'finish' });
});

// wikisum.wiki, French seam (a trade page): strip = allowance + 1/4 in: 5/8 → 7/8. bellaonline.com,
// art60164: mock French on 5/8 presses to 5/16. Goodheart-Willcox, Apparel (2012), p. 451: 1/4 in.
test('bound, mock French and graded', () => {
  const of = (finish: string) => seam({ what: 'finish', given: '5/8 in', finish });
  expect(of('bound').inches('strip', 'sewn')).toEqual([7 / 8, 5 / 8]);
  expect(of('mock-french').inches('fold', 'fold-stitch')).toEqual([5 / 16, 5 / 16]);
  expect(of('graded').inches('trim-outer')).toEqual([1 / 4]);
  const narrow = seam({ what: 'finish', finish: 'graded', given: '1/4 in' });
  expect(narrow.of('trim-outer')).toEqual({ state: 'absent', by: 'given' });
});

// By hand: 15 − 10 is 5 to trim, on two edges of each of 4 seams 40 wider if it isn't.
test('another allowance is trimmed or added, and changes the girth where it isn’t', () => {
  const change = { what: 'change', given: '15 mm', wanted: '10 mm', seams: '4' };
  const less = seam(change);
  expect(less.mm('trim-edge', 'girth', 'sewn')).toEqual([5, 40, 10]);
  expect(less.of('add-edge')).toEqual({ state: 'absent', by: 'wanted' });
  const more = seam({ ...change, wanted: '20 mm' });
  expect(more.mm('add-edge', 'girth', 'sewn')).toEqual([5, -40, 20]);
  expect(more.of('trim-edge')).toEqual({ state: 'absent', by: 'wanted' });
});

// By hand: 16 mm over 4 seams are 2 mm on each of their edges.
test('letting out moves each edge by its part, and leaves the rest of the allowance', () => {
  const girth = { what: 'girth', allowance: '20 mm', change: '16 mm', seams: '4', finish: 'plain' };
  expect(seam({ ...girth, way: 'out' }).mm('moved', 'sewn', 'stitch-line')).toEqual([2, 18, 18]);
  expect(seam({ ...girth, way: 'in' }).mm('moved', 'sewn')).toEqual([-2, 22]);
});

// Goodheart-Willcox, Apparel (2012), p. 452: a clip every 1/4 to 1/2 in. sewingsupport.com (a
// teaching page): stop about 1/8 in short of the stitching. 12 in at 1/2 in are 24 spaces.
test('clips are a run where the curve’s length is known, and keep the number they were begun with', () => {
  const curve = { what: 'curve', radius: '4 in', allowance: '1/2 in', opening: '1/16 in' };
  const plain = seam(curve);
  expect(plain.inches('clip-space', 'clip-deep', 'sewn')).toEqual([1 / 2, 3 / 8, 1 / 2]);
  expect(plain.of('clips')).toEqual({ state: 'absent', by: 'along' });
  const along = seam({ ...curve, along: '12 in' });
  expect(along.number('clip-count')).toBe(23);
  expect(along.inches('edge-differs')).toEqual([1.5]);
  expect(seam({ ...curve, along: '12 in' }, { counts: { clips: 20 } }).number('clip-count')).toBe(
    20,
  );
});

test('what is trimmed, cut or clipped can’t be undone, and says so', () => {
  const cuts = seamOutputs.outputs.filter(({ step }) => step && !step.undoable);
  expect(cuts.map(({ key }) => key)).toEqual([
    'trim-edge',
    'spare',
    'trim-first',
    'trim-under',
    'strip',
    'trim-outer',
    'trim-inner',
    'clips',
  ]);
  for (const { step } of cuts) expect(step?.caution).toMatch(/never cut towards it/);
});
