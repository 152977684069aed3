import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  countMade,
  type FollowedMark,
  type FollowedRun,
  markBefore,
  nextToMake,
} from '../../src/garment/following.ts';

const of = (labels: string, made: string): FollowedRun => ({
  labels: [...labels],
  kept: { planned: {}, made: Object.fromEntries([...made].map((label) => [label, ''])) },
});

test('from the last mark of one run to the first of the next, over what is made', () => {
  const runs = [of('12', '1'), of('abc', 'b'), of('12', '')];
  expect(nextToMake(runs)).toEqual({ run: 0, mark: 1 });
  expect(nextToMake(runs, { run: 0, mark: 1 })).toEqual({ run: 1, mark: 0 });
  expect(nextToMake(runs, { run: 1, mark: 0 })).toEqual({ run: 1, mark: 2 });
  expect(nextToMake(runs, { run: 2, mark: 1 })).toBeUndefined();
  expect(markBefore(runs, { run: 1, mark: 0 })).toEqual({ run: 0, mark: 1 });
  expect(markBefore(runs, { run: 0, mark: 0 })).toEqual({ run: 0, mark: 0 });
  expect(markBefore(runs, undefined)).toEqual({ run: 2, mark: 1 });
  expect(countMade(runs)).toEqual({ marks: 7, made: 2 });
});

test('without marks there is nothing to make', () => {
  expect(nextToMake([])).toBeUndefined();
  expect(markBefore([of('', '')], undefined)).toBeUndefined();
  expect(countMade([])).toEqual({ marks: 0, made: 0 });
});

test('law: following leads once to each mark that is not made, in order', () => {
  const runs = fc.array(
    fc
      .tuple(fc.subarray([...'abcde']), fc.subarray([...'abcde']))
      .map(([labels, made]): FollowedRun => of(labels.join(''), made.join(''))),
  );
  fc.assert(
    fc.property(runs, (all) => {
      const visited: string[] = [];
      for (let at: FollowedMark | undefined = nextToMake(all); at; at = nextToMake(all, at)) {
        visited.push(`${at.run}${all[at.run]?.labels[at.mark]}`);
      }
      const left = all.flatMap(({ labels, kept }, run) =>
        labels.filter((label) => !(label in (kept?.made ?? {}))).map((label) => `${run}${label}`),
      );
      expect(visited).toEqual(left);
    }),
  );
});
