import { expect, test } from 'vitest';
import type { Stage } from '../../src/calculation/output.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Work } from '../../src/garment/record/record.ts';
import { comparePlaces, inWorkOrder, stepPlaces } from '../../src/garment/work-out/step-order.ts';

const work = (rank: number, set: Partial<Work> = {}): Work => ({
  ...{ name: 'Work', calculation: 'toy-piece', rank, fields: {} },
  ...set,
});
const all = (...stages: Stage[]) => new Set(stages);
const places = (...given: Parameters<typeof stepPlaces>) =>
  Object.fromEntries(stepPlaces(...given));

test('each stage stands at the rank of its work, unless it was moved', () => {
  expect(places(work(3), all('edge', 'cut'))).toEqual({
    cut: { stage: 'cut', rank: 3 },
    edge: { stage: 'edge', rank: 3 },
  });
  const moved = { edge: { stage: 'join', rank: 1.5 } } as const;
  expect(places(work(3, { moved }), all('cut', 'edge'))).toEqual({
    cut: { stage: 'cut', rank: 3 },
    edge: { stage: 'join', rank: 1.5 },
  });
});

test('no stage stands before an earlier one of its work: moved too far forward it stands with that', () => {
  const moved = { join: { stage: 'cut', rank: 1 } } as const;
  expect(places(work(3, { moved }), all('cut', 'join', 'edge'))).toEqual({
    cut: { stage: 'cut', rank: 3 },
    join: { stage: 'cut', rank: 3 },
    edge: { stage: 'edge', rank: 3 },
  });
  const back = { cut: { stage: 'close', rank: 9 } } as const;
  expect(places(work(3, { moved: back }), all('cut', 'join', 'edge'))).toEqual({
    cut: { stage: 'close', rank: 9 },
    join: { stage: 'close', rank: 9 },
    edge: { stage: 'edge', rank: 3 },
  });
});

test('a side that is made apart stands where it was moved to, and else with the others', () => {
  const sides = {
    moved: { edge: { stage: 'join', rank: 2 } },
    movedSides: { right: { edge: { stage: 'cut', rank: 8 } } },
  } as const;
  expect(places(work(3, sides), all('edge'), 'right')).toEqual({ edge: { stage: 'cut', rank: 8 } });
  expect(places(work(3, sides), all('edge'), 'left')).toEqual({ edge: { stage: 'join', rank: 2 } });
});

test('a place is earlier by its stage, then by its rank', () => {
  const [cut, later, join] = [
    { stage: 'cut', rank: 2 },
    { stage: 'cut', rank: 3 },
    { stage: 'join', rank: 1 },
  ] as const;
  for (const [one, other] of [
    [cut, later],
    [later, join],
    [cut, join],
  ] as const) {
    expect(comparePlaces(one, other)).toBeLessThan(0);
    expect(comparePlaces(other, one)).toBeGreaterThan(0);
  }
  expect(comparePlaces(cut, { ...cut })).toBe(0);
});

const step = (id: string, stage: Stage) => ({ home: homeOf(id, '', stage), stage });

test('of one place those of one work stay together, as their own stages follow, whatever comes first', () => {
  const joined = { moved: { join: { stage: 'cut', rank: 2 } } } as const;
  const works = new Map(
    [work(1), work(2, joined), work(2, joined), work(2)].map((one, i) => [`w${i}`, { work: one }]),
  );
  const wanted = [
    ...[step('w0', 'cut'), step('w1', 'cut'), step('w1', 'join')],
    ...[step('w2', 'cut'), step('w2', 'join'), step('w3', 'cut')],
  ];
  const made = [...wanted.map((one) => ({ ...one, stage: 'cut' as const }))];
  for (const given of [
    wanted,
    [...wanted].reverse(),
    [...wanted.slice(3), ...wanted.slice(0, 3)],
  ]) {
    expect(inWorkOrder(given, works)).toEqual(made);
  }
});

test('steps of one work and one stage stay as they are declared', () => {
  const works = new Map([['w', { work: work(1) }]]);
  const given = ['b', 'c', 'a'].map((key) => ({
    home: homeOf('w', '', key),
    stage: 'cut' as const,
  }));
  expect(inWorkOrder(given, works)).toEqual(given);
});
