import { describe, expect, test } from 'vitest';
import { exactLength, type Length, mm, toMm } from '../../../src/lengths/length.ts';
import type { Fit, Kept, StripInput } from '../../../src/sewing/edging/strip.ts';
import { stripHoles } from '../../../src/sewing/edging/strip-holes.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';
import { A_STRIP } from './a-strip.ts';

const stripOf = (set: Partial<StripInput>) => stripHoles({ ...A_STRIP, ...set });
const countsOf = (set: Partial<StripInput>) => solved(stripOf(set)).rows.map(({ count }) => count);
const keptOf = (row: number, count: number, side = 0): { kept: Kept } => ({
  kept: { row, side, count },
});

describe('holes that are decided stay as many, the other row follows', () => {
  // Counted on a drawing: from 4 on, each 8, the second row 4 further and no nearer to the end than 4.
  test.each([
    ['level, of the first', { rows: 'level' as const, ...keptOf(0, 40) }, [40, 40]],
    ['level, of the second', { rows: 'level' as const, ...keptOf(1, 40) }, [40, 40]],
    ['staggered, of the first', { rows: 'staggered' as const, ...keptOf(0, 40) }, [40, 40]],
    [
      'staggered, of the second, with room at the ends',
      { rows: 'staggered' as const, ...keptOf(1, 40) },
      [40, 40],
    ],
    [
      'staggered and filled, of the first',
      { rows: 'staggered' as const, fit: 'fill' as const, ...keptOf(0, 40) },
      [40, 39],
    ],
    [
      'staggered and filled, of the second',
      { rows: 'staggered' as const, fit: 'fill' as const, ...keptOf(1, 40) },
      [41, 40],
    ],
    [
      'staggered round a loop, of the second',
      { rows: 'staggered' as const, fit: 'loop' as const, ...keptOf(1, 40) },
      [40, 40],
    ],
  ])('%s', (_, set, counts) => {
    expect(countsOf(set)).toEqual(counts);
  });

  test('where as many have no room, one more have none either', () => {
    const set = { rows: 'staggered' as const, fit: 'fill' as const };
    expect(fieldsOf(stripOf({ ...set, ...keptOf(1, 500) }))).toEqual(['length']);
  });
});

describe('with the count decided', () => {
  test('a length that takes just so many is told, and will do', () => {
    const filled = { fit: 'fill', rows: 'staggered', ...keptOf(0, 40) } as const;
    const long = (of: number) => stripOf({ ...filled, length: of as Length });
    // 39 spaces of 4 at the least, and 4 at both ends.
    expect(boundTold(long, mm(100), 'length', 'needed')).toBe(mm(39 * 4 + 8));
  });

  // One punched while the pitch was kept, two while the strip was open: refused, they’d be in it still.
  test('it is kept, also where so few would not be planned', () => {
    const placed = (fit: Fit, count: number) => {
      const [row] = solved(stripOf({ fit, ...keptOf(0, count) })).rows;
      return row?.runs[0]?.marks.map(({ at }) => toMm(at));
    };
    expect(placed('split', 1)).toEqual([200]);
    expect(placed('fill', 1)).toEqual([4]);
    expect(placed('fill', 2)).toEqual([4, 396]);
    expect(placed('loop', 2)).toEqual([100, 300]);
  });

  test('a second row of one hole lies between two of the first', () => {
    // 16 long: from 4, two holes 8 apart, and one midway; a first row of one would have none beside it.
    const short = { length: mm(16), fit: 'fill', rows: 'staggered' } as const;
    expect(countsOf({ ...short, ...keptOf(1, 1) })).toEqual([2, 1]);
  });
});

describe('holes decided on a side before a corner', () => {
  // 5 in: the corner's hole is at 195 of 200, the first at 4. 60 holes have 59 spaces in 191,
  // and half of 8 is the least: 236, so the side is to be 200 + 45 (worked out here).
  const at = (corner: number, kept: Kept, set: Partial<StripInput> = {}) =>
    stripOf({ length: mm(corner + 200), corners: [mm(corner)], kept, ...set });
  const sixty = { row: 0, side: 0, count: 60 };

  test('too many for it are refused with the length it takes, which will do', () => {
    expect(at(200, sixty)).toMatchObject({
      ok: false,
      problems: [{ kind: 'does-not-fit', field: 'corners', room: mm(200), needed: mm(245) }],
    });
    expect(at(245, sixty).ok).toBe(true);
    expect(at(244.9, sixty).ok).toBe(false);
  });

  test('of a row or a side that isn’t there nothing is decided, nor of another row', () => {
    const free = solved(at(200, { row: 1, side: 0, count: 7 })).rows;
    expect(free).toEqual(solved(at(200, { row: 0, side: 5, count: 7 })).rows);
    expect(free[0]?.runs[0]?.marks).not.toHaveLength(7);
    const level = { rows: 'level' as const };
    const [decided, other] = solved(at(200, { row: 0, side: 0, count: 30 }, level)).rows;
    const [, alone] = solved(at(200, { row: 5, side: 0, count: 30 }, level)).rows;
    expect(decided?.runs[0]?.marks).toHaveLength(30);
    expect(other).toEqual(alone);
  });

  test('of the second row and the second side likewise, and fewer are no trouble', () => {
    // 15 in on the second row: 4 to 185, 181 for 59 spaces of 4.
    const level = { rows: 'level' as const };
    expect(at(200, { ...sixty, row: 1 }, level)).toMatchObject({
      problems: [{ room: mm(200), needed: mm(255) }],
    });
    expect(at(300, { ...sixty, side: 1 })).toMatchObject({
      problems: [{ room: mm(200), needed: mm(245) }],
    });
    const { rows } = solved(at(200, { row: 0, side: 0, count: 30 }));
    expect(rows[0]?.runs[0]?.marks).toHaveLength(30);
    expect(toMm(rows[0]?.pitches[0] as Length)).toBeCloseTo(191 / 29, 6);
  });
});

test('nothing is left over where each side is filled', () => {
  expect(solved(stripOf({ corners: [mm(200)] })).over).toEqual({ start: 0, end: 0 });
});

test('each corner may take a hole more: together fewer than 2000', () => {
  // 1998 spaces of 8 and a corner; then one space more.
  const at = (spaces: number) => stripOf({ length: mm(spaces * 8), corners: [mm(4000)] });
  expect([fieldsOf(at(1998)), fieldsOf(at(1999))]).toEqual([[], ['pitch']]);
});

test('the second of staggered rows has as many where the strip goes on just half a pitch', () => {
  // Far end: the last of 50 holes is at 396; at 404 half a pitch on is 4 from the end, at 403.9 less.
  const at = (length: number) =>
    countsOf({ length: mm(length), rows: 'staggered', fit: 'far-end', end: mm(4) });
  expect([at(404), at(403.9)]).toEqual([
    [50, 50],
    [50, 49],
  ]);
});

test('rows that touch at the pitch found are refused', () => {
  // Rows 4 apart and half of 6 on: 5, a hole of 5. Wanted were 6.1, which would be 5.04.
  const at = (length: number) =>
    stripOf({
      length: mm(length),
      width: mm(14),
      hole: mm(5),
      pitch: mm(6.1),
      end: mm(3),
      rows: 'staggered',
      fit: 'fill',
    });
  expect(at(66)).toMatchObject({
    problems: [{ kind: 'overlap', field: 'margin', given: mm(5), pitch: mm(5) }],
  });
  expect(at(67).ok).toBe(true);
});

describe('marks are numbered, and the middle one is told where there is one', () => {
  const marksOf = (set: Partial<StripInput>) =>
    solved(stripOf(set)).rows.map(({ runs }) => runs[0]?.marks ?? []);

  test.each([
    ['fitted', { length: mm(40) }],
    ['followed', { length: mm(40), follow: [4, 12, 20, 28, 36].map(mm) }],
  ])('%s', (_, set) => {
    const [five = []] = marksOf(set);
    expect(five.map(({ label, kind }) => [label, kind])).toEqual([
      ['1', 'hole'],
      ['2', 'hole'],
      ['3', 'centre'],
      ['4', 'hole'],
      ['5', 'hole'],
    ]);
    const [, four = []] = marksOf({ ...set, rows: 'staggered' });
    expect(four.map(({ kind }) => kind)).toEqual(['hole', 'hole', 'hole', 'hole']);
    expect(four.map(({ at }) => toMm(at))).toEqual([8, 16, 24, 32]);
  });
});

describe('places of another strip', () => {
  const followed = (places: readonly number[], set: Partial<StripInput> = {}) =>
    stripOf({ length: mm(100), follow: places.map((at) => exactLength(mm(at))), ...set });

  test('nothing of it is left over', () => {
    expect(solved(followed([5, 15, 95])).over).toEqual({ start: 0, end: 0 });
  });

  test('one place is taken, and staggered has no second row', () => {
    const { rows } = solved(followed([50], { rows: 'staggered' }));
    expect(rows.map(({ count, pitches }) => [count, pitches])).toEqual([[1, []]]);
  });

  test('holes that touch are refused with the least step of all, and just over is not', () => {
    expect(followed([5, 20, 22, 90])).toMatchObject({
      problems: [{ kind: 'overlap', field: 'follow', given: mm(2), pitch: mm(2) }],
    });
    expect(followed([5, 20, 22.1, 90]).ok).toBe(true);
  });

  test('rows whose holes touch are refused, at the margin', () => {
    // Level 2 apart, holes of 2; a tenth further in they overlap, a tenth less they don't.
    const at = (margin: number) => followed([5, 20, 90], { rows: 'level', margin: mm(margin) });
    expect([fieldsOf(at(9)), fieldsOf(at(8.9))]).toEqual([['margin'], []]);
  });

  test('staggered rows whose holes touch are refused, at the margin', () => {
    // 3 apart across and steps of 8: midway is 4 on, 5 from both; a hole of 5 just touches.
    const at = (hole: number) =>
      followed([8, 16, 24, 32], { rows: 'staggered', margin: mm(8.5), hole: mm(hole) });
    expect(at(5)).toMatchObject({
      problems: [{ kind: 'overlap', field: 'margin', given: mm(5), pitch: mm(5) }],
    });
    expect(at(4.9).ok).toBe(true);
  });

  test('bent flat, places and steps are as long as the row is', () => {
    // Round 100: rows at 105 and 95, so that the places of the first are 1.05 times those of the
    // middle line, and half a hole from the cut end is 1.05 on it.
    const bent = { radius: mm(100), rows: 'level' as const };
    const { rows } = solved(followed([10.5, 21, 42], bent));
    expect(rows.map(({ runs }) => runs[0]?.marks.map(({ at }) => toMm(at)))).toEqual([
      [10.5, 21, 42].map((at) => expect.closeTo(at, 6)),
      [9.5, 19, 38].map((at) => expect.closeTo(at, 6)),
    ]);
    expect(rows.map(({ pitches }) => pitches.map((step) => toMm(step)))).toEqual([
      [expect.closeTo(10.5, 6), expect.closeTo(21, 6)],
      [expect.closeTo(9.5, 6), expect.closeTo(19, 6)],
    ]);
  });
});
