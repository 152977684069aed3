import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  countMade,
  type FollowedMark,
  type FollowedRun,
  isBeingKept,
  markBefore,
  nextToMake,
} from '../../src/garment/following.ts';
import { type Garment, type Kept, newGarment } from '../../src/garment/garment.ts';

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

test('one back within a run is the mark before it there, made or not', () => {
  const runs = [of('12', ''), of('abc', 'b')];
  expect(markBefore(runs, { run: 1, mark: 2 })).toEqual({ run: 1, mark: 1 });
  expect(markBefore(runs, { run: 1, mark: 1 })).toEqual({ run: 1, mark: 0 });
});

test('law: stepping back from the end comes by every mark, the last one first', () => {
  const sizes = fc.array(fc.nat(4), { maxLength: 5 });
  fc.assert(
    fc.property(sizes, (all) => {
      const runs = all.map((size) => of('abcd'.slice(0, size), 'b'));
      const marks = all.flatMap((size, run) =>
        Array.from({ length: size }, (_, mark) => ({ run, mark })),
      );
      const visited: FollowedMark[] = [];
      let at = markBefore(runs, undefined);
      for (const _ of marks) {
        if (!at) break;
        visited.unshift(at);
        at = markBefore(runs, at);
      }
      expect(visited).toEqual(marks);
      // The first stays itself.
      expect(at).toEqual(marks[0]);
    }),
  );
});

const hooks: Kept = {
  id: 'k1',
  name: 'Hooks',
  stage: 'close',
  calculation: 'closures',
  draft: {},
  runs: [
    { planned: {}, made: { '1': '' } },
    { planned: {}, made: { '2': '16 cm' } },
  ],
};

test('a mark is being kept while the garment on the disk says something else of it', () => {
  const coat = newGarment('coat', 'Coat', 1);
  const buttons = { ...hooks, id: 'k0', runs: [{ planned: {}, made: { '1': '9 cm' } }] };
  const on: Garment = { ...coat, kept: [buttons, hooks] };
  const off: Garment = { ...coat, kept: [buttons], takenOff: [hooks] };
  for (const stored of [on, off]) {
    expect(isBeingKept(stored, hooks, 0, '1')).toBe(false);
    expect(isBeingKept(stored, hooks, 1, '2')).toBe(false);
    // Not made here nor there.
    expect(isBeingKept(stored, hooks, 0, '7')).toBe(false);
    expect(isBeingKept(stored, hooks, 4, '1')).toBe(false);
    const now = {
      ...hooks,
      runs: [
        { planned: {}, made: { '1': '1 cm', '3': '' } },
        { planned: {}, made: {} },
      ],
    };
    expect(isBeingKept(stored, now, 0, '1')).toBe(true);
    expect(isBeingKept(stored, now, 0, '3')).toBe(true);
    expect(isBeingKept(stored, now, 1, '2')).toBe(true);
  }
  // Kept for the first time, and not there yet.
  expect(isBeingKept(coat, hooks, 0, '1')).toBe(true);
  expect(isBeingKept(coat, hooks, 0, '2')).toBe(false);
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
