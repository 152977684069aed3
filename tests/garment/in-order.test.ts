import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inOrder } from '../../src/garment/work-out/order.ts';

/** What each number can reach by what it reads, one step at least: looked for plainly. */
function reach(sources: readonly (readonly number[])[]): Set<number>[] {
  return sources.map((own) => {
    const met = new Set(own);
    for (const one of met) for (const next of sources[one] ?? []) met.add(next);
    return met;
  });
}

const sorted = (group: readonly number[]) => [...group].sort((a, b) => a - b);

test('what is read comes first, whatever stands first', () => {
  expect(inOrder([])).toEqual([]);
  expect(inOrder([[], [], []])).toEqual([[0], [1], [2]]);
  expect(inOrder([[1], [2], []])).toEqual([[2], [1], [0]]);
  expect(inOrder([[1, 2], [3], [3], []])).toEqual([[3], [1], [2], [0]]);
  expect(inOrder([[0], [0]])).toEqual([[0], [1]]);
});

test('those that read each other, by any way round, are one group; what only reads them is another', () => {
  expect(inOrder([[1], [0]]).map(sorted)).toEqual([[0, 1]]);
  // Two rings that share the number 2, and one that reads the first of them.
  const rings = [[1], [2], [0, 3], [4], [2], [0]];
  expect(inOrder(rings).map(sorted)).toEqual([[0, 1, 2, 3, 4], [5]]);
  // Two rings of which one reads the other.
  expect(inOrder([[1], [0, 2], [3], [2]]).map(sorted)).toEqual([
    [2, 3],
    [0, 1],
  ]);
  // A number that is done is no way back, though it lies under a ring that is still open.
  expect(inOrder([[1, 2], [], [1, 0]]).map(sorted)).toEqual([[1], [0, 2]]);
});

test('a chain may be as long as a record', () => {
  const long = 20_000;
  const chain = Array.from({ length: long }, (_, i) => (i + 1 < long ? [i + 1] : []));
  expect(inOrder(chain).join()).toBe(chain.map((_, i) => long - 1 - i).join());
});

test('law: each number is in one group, with those it reaches and is reached by, after all it reads', () => {
  const graphs = fc
    .integer({ min: 1, max: 9 })
    .chain((many) =>
      fc.array(fc.array(fc.nat(many - 1), { maxLength: 3 }), { minLength: many, maxLength: many }),
    );
  fc.assert(
    fc.property(graphs, (sources) => {
      const groups = inOrder(sources);
      expect(sorted(groups.flat())).toEqual(sources.map((_, i) => i));
      const to = reach(sources);
      const done = new Set<number>();
      for (const group of groups) {
        const [first = -1] = group;
        const alike = sources.flatMap((_, i) =>
          i === first || (to[first]?.has(i) && to[i]?.has(first)) ? [i] : [],
        );
        expect(sorted(group)).toEqual(alike);
        for (const one of group) done.add(one);
        expect(group.flatMap((one) => sources[one] ?? []).every((one) => done.has(one))).toBe(true);
      }
    }),
    { numRuns: 200 },
  );
});
