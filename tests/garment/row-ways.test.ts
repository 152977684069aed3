import { expect, test } from 'vitest';
import { placesOf, pointsOf } from '../../src/garment/rows/points.ts';
import { priceOf, spacesIn } from '../../src/garment/rows/price.ts';
import { leastApart, type MadeMark, placesIn, runAt } from '../../src/garment/rows/row.ts';
import { type RowAsked, rowNow, waysOut } from '../../src/garment/rows/row-now.ts';
import { rowBy, type Way } from '../../src/garment/rows/ways.ts';
import { ranksOf } from '../../src/garment/rows/which-mark.ts';
import { exactLength, length } from '../../src/lengths/length.ts';
import type { MarkKind, Run } from '../../src/sewing/run.ts';

// Small rows of whole units, worked out by hand.

const run = (places: readonly number[], kinds: Record<number, MarkKind> = {}): Run => ({
  datum: 'zero',
  length: length(50),
  marks: places.map((at, rank) => ({
    ...{ at: exactLength(at), label: String(rank + 1), kind: kinds[rank] ?? 'hole' },
  })),
});
const made = (id: string, at: number, rank: number, of: number, more: object = {}): MadeMark => ({
  ...{ id, at, plan: at, rank, of, asked: at, slack: 0.5 },
  ...more,
});
const FOUR = [0, 10, 20, 30];

test.each<[readonly number[], readonly (readonly [number, number])[]]>([
  [[], []],
  [[5], [[0, 5]]],
  // Even marks need their ends alone, and what bends is kept.
  [
    [0, 10, 20],
    [
      [0, 0],
      [2, 20],
    ],
  ],
  [
    [0, 10, 20, 25, 30],
    [
      [0, 0],
      [2, 20],
      [4, 30],
    ],
  ],
  [
    [5, 15, 25.0005],
    [
      [0, 5],
      [2, 25.0005],
    ],
  ],
  [
    [0, 10, 20.002, 30],
    [
      [0, 0],
      [1, 10],
      [2, 20.002],
      [3, 30],
    ],
  ],
])('the places %o are kept as the points %o', (places, points) => {
  expect(pointsOf(places)).toEqual({ count: places.length, points });
  expect(placesOf({ count: places.length, points })).toHaveLength(places.length);
});

test.each<[string, readonly MadeMark[], readonly number[], readonly number[]]>([
  ['two of one rank', [made('a', 0, 1, 4), made('b', 12, 1, 4)], FOUR, [0, 1]],
  ['made for other counts', [made('a', 0, 0, 3), made('b', 10, 1, 4)], [0, 5, 10, 14], [0, 2]],
  ['the last of two', [made('b', 20, 1, 2)], [0, 10, 20], [2]],
  ['a wider space below', [made('m', 12, 1, 3)], [10, 13, 16, 19], [1]],
  ['a wider space above', [made('m', 18, 1, 3)], [10, 13, 16, 19], [2]],
  ['nothing above', [made('m', 0, 1, 3)], FOUR, [0]],
  ['nothing to come above', [made('a', 5, 0, 3), made('b', 10, 1, 3)], [0, 4, 8, 12], [0, 1]],
  ['nothing to come at all', [made('a', 0, 0, 2), made('b', 10, 1, 2)], [0, 10, 30], [0, 2]],
  ['one alone', [made('a', 0, 0, 1)], [0, 10], [0]],
  ['more than are asked', [made('a', 0, 0, 3), made('b', 10, 1, 3)], [0], [0, 1]],
  [
    'two spaces as wide',
    [made('a', 0, 0, 9), made('b', 10, 4, 9), made('c', 20, 8, 9)],
    [0, 7, 14, 20],
    [0, 2, 3],
  ],
])('which marks made ones are: %s', (_, marks, places, ranks) => {
  expect(ranksOf(marks, places)).toEqual(ranks);
});

const by = (way: Way, asked: Run, marks: readonly MadeMark[], begun = placesIn(asked)) => {
  const row = rowBy(way, { asked, made: marks, begun: pointsOf(begun) });
  return row && placesIn(row.run);
};
const shifted = made('b', 12, 1, 4, { plan: 10 });

test('as begun, the rest moves with the made mark before it, up to what is fixed', () => {
  expect(by('as-begun', run(FOUR), [shifted])).toEqual([2, 12, 22, 32]);
  const third = made('c', 21, 2, 4, { plan: 20 });
  expect(by('as-begun', run(FOUR), [shifted, third])).toEqual([2, 12, 21, 31]);
  const five = [...FOUR, 40];
  const fourth = made('d', 33, 3, 5, { plan: 30 });
  expect(by('as-begun', run(five, { 1: 'corner' }), [fourth])).toEqual([0, 10, 23, 33, 43]);
  expect(by('as-begun', run(FOUR, { 2: 'corner' }), [shifted])).toEqual([2, 12, 20, 30]);
  // A row that wasn't begun, or with another number of marks, doesn't go on so.
  expect(by('as-begun', run(FOUR), [shifted], [0, 10, 20])).toBeUndefined();
  const none = { asked: run(FOUR), made: [shifted], begun: undefined };
  expect(rowBy('as-begun', none)).toBeUndefined();
});

test('spread, the rest is even; a mark made as shown counts as lying at its exact place', () => {
  const ends = (at: number) => by('spread', run(FOUR), [made('b', at, 1, 4, { plan: 10 })]);
  expect(ends(12)).toEqual([0, 12, 21, 30]);
  expect(ends(10.3)).toEqual([0, 10.3, 20, 30]);
  expect(ends(10.505)).toEqual([0, 10.505, 20, 30]);
  expect(by('spread', run(FOUR, { 2: 'sewn' }), [shifted])).toEqual([0, 12, 20, 30]);
});

test('what is made is where it is; what is to come is on the run, in order and not too near', () => {
  expect(by('asked', run(FOUR), [made('a', -5, 0, 4)])).toEqual([-5, 10, 20, 30]);
  expect(by('asked', run(FOUR), [made('d', 60, 3, 4)])).toEqual([0, 10, 20, 60]);
  const near = [made('b', 10, 1, 4), made('c', 12, 2, 4)];
  expect(by('asked', run(FOUR), near)).toEqual([0, 10, 12, 30]);
  expect(by('asked', run(FOUR), [made('b', 5, 1, 4)])).toEqual([0, 5, 20, 30]);
  expect(by('asked', run(FOUR), [made('b', 4.9, 1, 4)])).toBeUndefined();
  expect(by('asked', run(FOUR), [made('b', 16, 1, 4)])).toBeUndefined();
  const above = made('b', 8, 1, 4, { plan: 10 });
  expect(by('as-begun', run([1, 10, 20, 30]), [above])).toBeUndefined();
  const below = made('b', 14, 1, 4, { plan: 10 });
  expect(by('as-begun', run([0, 10, 20, 47]), [below])).toBeUndefined();
  expect(by('asked', run([0]), [made('a', 0, 0, 2), made('b', 9, 1, 2)])).toBeUndefined();
  expect(by('asked', run([]), [])).toBeUndefined();
  expect(leastApart(run([5]))).toBe(0);
  expect(leastApart(run([0, 10, 14]))).toBe(2);
});

test('a row of another number of marks is numbered anew, of the kind that may lie anywhere', () => {
  const marksAt = (asked: Run, places: readonly number[]) => runAt(asked, places, []).run;
  const corner = run([0, 10], { 0: 'corner' });
  expect(marksAt(corner, [0, 10, 55.2])).toEqual({
    ...{ datum: 'zero', length: 56 },
    marks: [0, 10, 55.2].map((at, i) => ({ at, label: String(i + 1), kind: 'hole' })),
  });
  const [first] = marksAt(run([0, 10], { 0: 'corner', 1: 'mitre' }), [3]).marks;
  expect(first).toEqual({ at: 3, label: '1', kind: 'corner' });
  expect(marksAt(run([]), [3]).marks).toEqual([{ at: 3, label: '1', kind: 'measure' }]);
  const [same, moved] = marksAt(corner, [0, 12]).marks;
  expect(same).toBe(corner.marks[0]);
  expect(moved).toEqual({ at: 12, label: '2', kind: 'hole' });
});

test('the spaces that are told have a mark still to come at one of their ends', () => {
  const spaces = (...ids: (string | undefined)[]) =>
    priceOf({ run: run([0, 10, 30]), made: ids }).spaces;
  expect(spaces('a', undefined, undefined)).toEqual({ least: 10, most: 20 });
  expect(spaces('a', 'b', undefined)).toEqual({ least: 20, most: 20 });
  expect(spaces('a', 'b', 'c')).toBeUndefined();
  expect(spacesIn([0, 10, 30])).toEqual({ least: 10, most: 20 });
});

const THREE = run([0, 10, 20]);
const even = (count: number) => run(Array.from({ length: count }, (_, i) => i * 5));
const given = (marks: readonly MadeMark[], more: Partial<RowAsked> = {}): RowAsked => ({
  ...{ asked: THREE, made: marks, begun: pointsOf([0, 10, 20]), decision: undefined },
  ...{ doubt: () => 0, askFor: (count) => even(count ?? 6) },
  ...more,
});
const decided = (way: string, more: object = {}) => ({
  decision: {
    ...{ way, facts: ['b'], asked: pointsOf([0, 10, 20]), tolerance: 0.5 },
    ...more,
  },
});
const says = (one: RowAsked) => {
  const { row, ...told } = rowNow(one);
  return { ...told, at: row && placesIn(row.run) };
};
const off = made('b', 12, 1, 3, { plan: 10, asked: 10 });

test('a mark that is off is asked about until that is answered; then the row is placed so', () => {
  const open = { conflict: ['b'], fewer: false, undecided: true, at: [2, 12, 22] };
  const answered = { conflict: [], fewer: false, undecided: false };
  expect(says(given([off]))).toEqual(open);
  expect(says(given([off], decided('as-begun')))).toEqual({ ...answered, at: [2, 12, 22] });
  expect(says(given([off], decided('asked')))).toEqual({ ...answered, at: [0, 12, 20] });
  expect(says(given([off], decided('spread')))).toEqual({ ...answered, at: [0, 12, 20] });
  expect(says(given([off], decided('count:4')))).toMatchObject({ ...answered, at: [0, 6, 12, 15] });
  for (const way of ['lattice', 'count:4x', 'xcount:4', 'count:']) {
    expect(says(given([off], decided(way, { allow: 3 })))).toEqual(open);
  }
  // What was answered is of another row.
  for (const asked of [5, pointsOf([0, 10, 20, 30]), pointsOf([0, 10, 20.6])]) {
    expect(says(given([off], decided('asked', { asked })))).toEqual(open);
  }
  const asked = pointsOf([0, 10, 20.505]);
  expect(says(given([off], decided('asked', { asked })))).toMatchObject(answered);
  const far = decided('asked', { facts: [], asked: 5, allow: 3 });
  expect(says(given([off], far))).toMatchObject(answered);
  const unplaced = given([made('b', 3, 1, 3)], decided('spread'));
  expect(says(unplaced)).toEqual({ ...answered, undecided: true, at: undefined });
});

test('what was made as shown is not off while the same is asked, nor after an answer', () => {
  const at = (more: object) => says(given([made('b', 12, 1, 3, { asked: 10, ...more })])).conflict;
  expect(at({})).toEqual([]);
  expect(at({ asked: 12 })).toEqual(['b']);
  expect(at({ of: 4 })).toEqual(['b']);
  expect(at({ plan: 11 })).toEqual(['b']);
  const near = made('b', 10.505, 1, 3, { plan: 0 });
  expect(says(given([near])).conflict).toEqual([]);
  const after = (place: number, plan: number, more: object = {}) =>
    says(given([off, made('c', place, 2, 3, { plan, asked: 24 })], decided('asked', more)))
      .conflict;
  expect(after(24.505, 24)).toEqual([]);
  expect(after(24, 27)).toEqual(['c']);
  expect(after(24, 26.9, { allow: 3 })).toEqual([]);
});

test('of a row that is wholly made, made marks are where they are, and too many are told', () => {
  const all = [made('a', 0, 0, 3), off, made('c', 20, 2, 3)];
  const whole = { conflict: ['b'], fewer: false, undecided: true, at: [0, 12, 20] };
  expect(says(given(all))).toEqual(whole);
  const noted = { ...whole, conflict: [], undecided: false };
  expect(says(given(all, decided('noted')))).toEqual(noted);
  const two = { asked: run([0, 10]) };
  expect(says(given(all, two))).toEqual({ ...noted, fewer: true });
  expect(says(given(all, decided('count:4'))).at).toEqual([0, 6, 12, 20]);
});

test('the ways out: of a whole row it is noted, else it goes on, or has one more or fewer, or as many as today', () => {
  const names = (one: RowAsked) => waysOut(one).map(({ way }) => way);
  const all = [made('a', 0, 0, 3), off, made('c', 20, 2, 3)];
  expect(names(given(all))).toEqual(['noted']);
  const places = waysOut(given([made('a', 0, 0, 3)])).map(({ way, row }) => [
    way,
    row?.run.marks.length,
  ]);
  expect(places).toEqual([
    ...['as-begun', 'spread', 'asked'].map((way) => [way, 3]),
    ...[4, 2, 6].map((count) => [`count:${count}`, count]),
  ]);
  const first = [made('a', 0, 0, 3)];
  const askFor = (count: number | undefined) => (count === 4 ? even(5) : undefined);
  expect(names(given(first, { askFor }))).toEqual(['as-begun', 'spread', 'asked']);
  const both = [made('a', 0, 0, 3), made('b', 10, 1, 3)];
  expect(names(given(both, { askFor: () => run([0, 10]) }))).toContain('count:2');
});
