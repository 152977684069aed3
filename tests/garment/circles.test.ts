import { describe, expect, test } from 'vitest';
import { circlesOf } from '../../src/garment/work-out/circles.ts';

/** Of each number of these sources its circle, by a search of its own: the length of the shortest. */
function shortestRound(of: number, sources: readonly (readonly number[])[]): number {
  let met = new Set([of]);
  for (let long = 1; long <= sources.length; long++) {
    met = new Set([...met].flatMap((one) => sources[one] ?? []));
    if (met.has(of)) return long;
  }
  return 0;
}

const found = (group: readonly number[], sources: readonly (readonly number[])[]) =>
  Object.fromEntries(circlesOf(group, sources));

describe('the way round through each number', () => {
  test('begins with itself, goes from what reads to what is read, and is shared by all on it', () => {
    expect(found([2, 0, 1], [[1], [2], [0]])).toEqual({
      0: [0, 1, 2],
      1: [1, 2, 0],
      2: [2, 0, 1],
    });
    expect(found([3], [[], [], [], [3]])).toEqual({ 3: [3] });
  });

  test('stays in its group, and is the shortest, of several the one used first', () => {
    // 4 and 5 lead back as well, but are of no group with these.
    expect(found([0, 1], [[4, 1], [0], [], [], [5], [0]])).toEqual({ 0: [0, 1], 1: [1, 0] });
    expect(found([0, 1, 2], [[1, 2], [2], [0]])).toEqual({ 0: [0, 2], 1: [1, 2, 0], 2: [2, 0] });
    expect(found([0, 1, 2], [[2, 1], [0], [0]])[0]).toEqual([0, 2]);
  });

  test('is that of the first number with one, whichever is looked at first', () => {
    const sources = [[1], [0, 2], [1]];
    const each = { 0: [0, 1], 1: [1, 0], 2: [2, 1] };
    for (const group of [
      [0, 1, 2],
      [2, 1, 0],
      [1, 2, 0],
    ])
      expect(found(group, sources)).toEqual(each);
  });

  test('of one that lies on no circle found before is the shortest of its own', () => {
    // By hand: 0 goes round by 1, 5 and 6; 2 by 4 alone, though it also lies between 1 and 3.
    const sources = [[1], [2, 5], [3, 4], [1], [2], [6], [0]];
    const all = found([0, 1, 2, 3, 4, 5, 6], sources);
    expect(all).toMatchObject({ 0: [0, 1, 5, 6], 1: [1, 5, 6, 0], 2: [2, 4], 4: [4, 2] });
    for (const of of [0, 2, 3, 4]) expect(all[of]).toHaveLength(shortestRound(of, sources));
  });

  test('is the number alone where a made-up record holds too much to look through', () => {
    const through = (links: number) => found([0, 1], [Array<number>(links).fill(1), [0]]);
    expect(through(299_999)).toEqual({ 0: [0, 1], 1: [1, 0] });
    // What was looked at for one number isn't there to be looked at for the next.
    expect(through(300_000)).toEqual({ 0: [0], 1: [1] });
  });
});
