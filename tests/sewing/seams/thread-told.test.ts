import { describe, expect, test } from 'vitest';
import { exactLength, type Length, mm, ZERO } from '../../../src/lengths/length.ts';
import {
  handThreads,
  sizesOf,
  spoolsFor,
  type Thread,
  type ThreadInput,
  threadFor,
} from '../../../src/sewing/seams/thread.ts';
import { type RatioInput, threadRatio, waysFor } from '../../../src/sewing/seams/thread-ratio.ts';
import type { StitchKind } from '../../../src/sewing/sources/thread.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

// Counted and added up here; the tables themselves are held to what is published in thread.test.ts.

const METRE = mm(1000);
const used = (needle: number | undefined, other: number | undefined, all = 0): Thread => {
  const long = (metres: number) => exactLength(metres * METRE);
  const share = (metres: number | undefined) => (metres === undefined ? undefined : long(metres));
  return {
    ...{ ratio: 3, needle: undefined, least: undefined, each: [] },
    all: long((needle ?? 0) + (other ?? 0) + all),
    ...{ byNeedle: share(needle), byOther: share(other) },
  };
};

describe('spools of 100 m', () => {
  const spools = (stitch: StitchKind, thread: Thread) =>
    solved(spoolsFor(stitch, thread, mm(100_000)));

  test.each<[string, StitchKind, Thread, number]>([
    ['a bobbin is filled from the needle’s spool', 'zigzag', used(30, 40), 1],
    ['so it is of a lockstitch', 'lock', used(75, 20), 1],
    ['of one thread all is from one spool after the other', 'single', used(150, 0), 2],
    ['a looper has its own: 60 and 90', 'chain', used(60, 90), 2],
    ['a looper that takes most: 10 and 140', 'chain', used(10, 140), 3],
    ['a needle that takes most: 250 and 10', 'chain', used(250, 10), 4],
    ['none of the needle’s is a spool all the same', 'chain', used(0, 150), 3],
    ['nobody says who takes how much', 'chain', used(undefined, undefined, 150), 3],
    ['three threads, whatever is said of the needle', 'over3', used(50, 100), 4],
    ['nothing sewn', 'over3', used(0, 0), 0],
  ])('%s', (_, stitch, thread, count) => {
    expect(spools(stitch, thread)).toBe(count);
  });
});

describe('ratios', () => {
  const at = (set: Partial<RatioInput>) => threadRatio({ stitch: 'lock', by: 'table', ...set });
  const needles = (stitch: StitchKind, by: RatioInput['by']) => solved(at({ stitch, by })).needle;

  test('a zigzag 3 long and 4 wide in cloth of 1 goes 5 across and 1 through, twice each 3', () => {
    const zigzag = { stitch: 'zigzag', by: 'formula', stitchLong: mm(3), zigWide: mm(4) } as const;
    expect(solved(at({ ...zigzag, thickness: mm(1) }))).toEqual({
      ...{ ratio: 4, needle: 2, least: undefined },
    });
  });

  test('the needle takes all of one thread, half of a lockstitch, two fifths of a chainstitch', () => {
    expect([needles('single', 'table'), needles('blind', 'guide')]).toEqual([4, 4.5]);
    expect([needles('lock', 'table'), needles('zigzag', 'table')]).toEqual([1.25, 3.5]);
    expect(needles('chain', 'table')).toBeCloseTo(5.5 * 0.4, 12);
    expect(needles('over3', 'table')).toBeUndefined();
  });

  test('the least is told only of a lockstitch by its formula', () => {
    const formula = { by: 'formula', thickness: mm(1), stitchLong: mm(2) } as const;
    expect(solved(at(formula)).least).toBeDefined();
    expect(solved(at({ ...formula, stitch: 'chain' })).least).toBeUndefined();
    expect(solved(at({})).least).toBeUndefined();
  });

  test('which ways there are', () => {
    const all = ['formula', 'table', 'guide', 'sample'];
    expect([waysFor('lock'), waysFor('single'), waysFor('chain'), waysFor('zigzag')]).toEqual([
      ...[all, all, all, all],
    ]);
  });
});

describe('what is asked, and told', () => {
  const formula = (set: Partial<RatioInput>) =>
    threadRatio({ stitch: 'lock', by: 'formula', thickness: mm(1), stitchLong: mm(2), ...set });

  test('a formula asks for cloth and stitch, of a zigzag for its width, a table for nothing', () => {
    const nothing = { thickness: undefined, stitchLong: undefined };
    expect(fieldsOf(formula(nothing))).toEqual(['thickness', 'stitchLong']);
    expect(fieldsOf(formula({ stitch: 'zigzag' }))).toEqual(['zigWide']);
    expect(fieldsOf(formula({ ...nothing, by: 'table' }))).toEqual([]);
  });

  test('a stitch of a tenth of a millimetre, and none under it', () => {
    const stitch = (of: number) => formula({ stitchLong: of as Length });
    expect(boundTold(stitch, 10, 'stitchLong', 'least')).toBe(mm(0.1));
    expect(stitch(0)).toMatchObject({ problems: [{ kind: 'not-positive', field: 'stitchLong' }] });
  });

  test('of a sample the other threads, where there are others', () => {
    const sample = (stitch: StitchKind, sampleOther: Length | undefined) =>
      threadRatio({
        ...{ stitch, by: 'sample', sampleSeam: mm(100), sampleNeedle: mm(300), sampleOther },
      });
    expect(solved(sample('lock', mm(200))).ratio).toBe(5);
    expect(solved(sample('lock', undefined)).ratio).toBe(3);
    expect(fieldsOf(sample('lock', mm(-1)))).toEqual(['sampleOther']);
    expect(fieldsOf(sample('single', mm(-1)))).toEqual([]);
  });

  test('waste from nothing to as much again', () => {
    const seam: Omit<ThreadInput, 'waste'> = {
      ...{ stitch: 'lock', by: 'table', seams: [METRE], passes: 1, end: ZERO },
    };
    const wasted = (waste: number) => threadFor({ ...seam, waste });
    expect([0, 100].map((waste) => solved(wasted(waste)).all)).toEqual([2.5 * METRE, 5 * METRE]);
    expect([-1, 100.5].map((waste) => fieldsOf(wasted(waste)))).toEqual([['waste'], ['waste']]);
  });

  test('by hand more than what is left over of each', () => {
    const working = (of: number) => handThreads(used(1, 0), of as Length, mm(100));
    expect(boundTold(working, mm(50), 'working', 'over')).toBe(mm(100));
    expect(fieldsOf(handThreads(used(1, 0), ZERO, mm(-1)))).toEqual(['working', 'tail']);
  });

  test('a tex of 1 to 1000', () => {
    const ticket = (tex: number) => solved(sizesOf(tex)).ticket;
    expect([ticket(1), ticket(1000)]).toEqual([3000, 3]);
    expect([fieldsOf(sizesOf(0.9)), fieldsOf(sizesOf(1001))]).toEqual([['tex'], ['tex']]);
  });
});
