import { describe, expect, test } from 'vitest';
import type { Output } from '../../src/calculation/output.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Decision, Fact } from '../../src/garment/record/record.ts';
import { placesOf, pointsOf } from '../../src/garment/rows/points.ts';
import { evaluateRow } from '../../src/garment/work-out/evaluate-row.ts';
import { askedKey, type RowNode } from '../../src/garment/work-out/node.ts';
import { type Here, nothing, type Result, type Value } from '../../src/garment/work-out/result.ts';
import { exactLength, length, mm } from '../../src/lengths/length.ts';
import type { Run } from '../../src/sewing/run.ts';
import { KNOWN } from './trial/known.ts';

const HOME = homeOf('strip', '', 'holes');
const strip = KNOWN.get('toy-strip');
const holes = (typeof strip === 'object' ? strip.outputs : []).find(({ key }) => key === 'holes');

/** Invented: a row with its marks at so many millimetres. */
const run = (...places: number[]): Run => ({
  ...{ datum: 'zero', length: length(mm(1000)) },
  marks: places.map((at, i) => ({ at: exactLength(mm(at)), label: String(i + 1), kind: 'hole' })),
});
const FOUR = run(10, 20, 30, 40);
/** One that is made, as it was shown, with a tape of millimetres. */
const hole = (rank: number, at: number, of = 4, asked = 10 * (rank + 1)) => ({
  id: `m${rank}`,
  fact: {
    ...{ home: HOME, shown: mm(at), plan: mm(at), tape: mm(1), rule: 1, read: '', when: 1 },
    mark: { rank, of, asked: mm(asked) },
  } as Fact,
});
const node = (facts: RowNode['facts'], more: Partial<RowNode> = {}): RowNode => ({
  ...{ form: 'row', key: HOME, id: 'strip', side: '', kind: 'run', own: [] },
  ...{ sources: [askedKey(HOME)], output: holes as Output, facts },
  ...{ begun: undefined, decision: undefined },
  ...more,
});
const asked = (value: Value, more: Partial<Here> = {}): Result => ({
  ...{ ok: true, value, ends: {}, state: 'planned' },
  ...more,
});
const placesIn = (value: Value | null) =>
  value && (value as Run).marks.map(({ at }) => Math.round(at / 80) / 100);
const endsIn = (result: Result) =>
  result.ok &&
  Object.fromEntries(Object.entries(result.ends).map(([of, pair]) => [of, pair.map(placesIn)]));
const begun = { ...pointsOf([10, 20, 30, 40].map((at) => mm(at))), by: {} };

describe('where a row stands at both ends of a reading', () => {
  test('what is made is where it is, and the rest goes where it is asked there', () => {
    const low = run(9, 18, 27, 36);
    const row = evaluateRow(
      node([hole(0, 10), hole(1, 20)]),
      asked(FOUR, { ends: { r: [low, run(11, 22, 33, 44)] } }),
    );
    expect(endsIn(row)).toEqual({
      r: [
        [10, 20, 27, 36],
        [10, 20, 33, 44],
      ],
    });
  });

  test('by the way the maker chose, were it chosen there', () => {
    const decision: Decision = {
      ...{ way: 'spread', facts: ['m1'], tolerance: mm(0.5) },
      asked: pointsOf(FOUR.marks.map(({ at }) => at)),
    };
    const row = evaluateRow(
      node([hole(0, 10), hole(1, 26)], { decision }),
      asked(FOUR, { ends: { r: [run(10, 19, 28, 38), run(10, 21, 32, 44)] } }),
    );
    expect(row.ok && placesIn(row.value)).toEqual([10, 26, 33, 40]);
    expect(endsIn(row)).toEqual({
      r: [
        [10, 26, 32, 38],
        [10, 26, 35, 44],
      ],
    });
  });

  test('also where as many more are asked there', () => {
    const decision: Decision = {
      ...{ way: 'spread', facts: ['m1'], tolerance: mm(0.5) },
      asked: pointsOf(FOUR.marks.map(({ at }) => at)),
    };
    const row = evaluateRow(
      node([hole(0, 10), hole(1, 22)], { decision }),
      asked(FOUR, { ends: { r: [run(10, 19, 28, 37, 46), FOUR] } }),
    );
    expect(endsIn(row)).toEqual({
      r: [
        [10, 22, 30, 38, 46],
        [10, 22, 31, 40],
      ],
    });
  });

  test('of what is wholly made, or comes to the same at both, nothing is in doubt', () => {
    const whole = [0, 1, 2, 3].map((rank) => hole(rank, 10 * (rank + 1)));
    const ends = { r: [run(9, 18, 27, 36), run(11, 22, 33, 44)] as const };
    expect(endsIn(evaluateRow(node(whole), asked(FOUR, { ends })))).toEqual({});
    const first = node([hole(0, 10)]);
    expect(
      endsIn(evaluateRow(first, asked(FOUR, { ends: { r: [FOUR, run(9, 20, 30, 40)] } }))),
    ).toEqual({});
    const one = asked(FOUR, { ends: { r: [FOUR, run(10, 21, 32, 44)] } });
    expect(endsIn(evaluateRow(first, one))).toEqual({
      r: [
        [10, 20, 30, 40],
        [10, 21, 32, 44],
      ],
    });
  });

  test('there is none where none is asked, or what is asked leaves no room for it', () => {
    const two = node([hole(0, 10), hole(1, 20)]);
    const near = { ...run(5, 10, 15, 20.1), length: length(mm(20.1)) };
    const row = evaluateRow(two, asked(FOUR, { ends: { r: [null, FOUR], s: [near, FOUR] } }));
    expect(endsIn(row)).toEqual({ r: [null, [10, 20, 30, 40]], s: [null, [10, 20, 30, 40]] });
    const whole = [0, 1, 2, 3].map((rank) => hole(rank, 10 * (rank + 1)));
    expect(endsIn(evaluateRow(node(whole), asked(FOUR, { ends: { r: [null, FOUR] } })))).toEqual({
      r: [null, [10, 20, 30, 40]],
    });
  });
});

describe('a decision behind it', () => {
  test('that is open leaves what is under way undecided, and what is wholly made as it is', () => {
    const open = asked(FOUR, { undecided: true });
    const facts = [0, 1, 2, 3].map((rank) => hole(rank, 10 * (rank + 1)));
    expect(evaluateRow(node(facts.slice(0, 2)), open)).toHaveProperty('undecided', true);
    expect(evaluateRow(node(facts.slice(0, 2)), asked(FOUR))).not.toHaveProperty('undecided');
    expect(evaluateRow(node(facts), open)).not.toHaveProperty('undecided');
  });
});

describe('what stands where nothing is asked', () => {
  const SAID = { conflict: [], fewer: false };

  test('is nothing where what it is of was taken away', () => {
    const absent = nothing({ kind: 'absent', field: 'rows' });
    expect(evaluateRow(node([hole(0, 10)], { begun }), absent)).toEqual(absent);
  });

  test('is the row as it was begun, with what is made where it is', () => {
    const facts = [hole(0, 10), hole(1, 21)];
    for (const none of [undefined, nothing({ kind: 'circle', path: [] })]) {
      const row = evaluateRow(node(facts, { begun }), none);
      expect(row).toMatchObject({ ok: true, state: 'partly made', undecided: true, row: SAID });
      expect(row.ok && placesIn(row.value)).toEqual([10, 21, 31, 41]);
    }
  });

  test('is whole only by marks of as many as there are', () => {
    const row = evaluateRow(node([hole(0, 10), hole(1, 40, 2, 40)], { begun }), undefined);
    expect(row).toMatchObject({ ok: true, state: 'partly made' });
    expect(row.ok && placesIn(row.value)).toEqual([10, 20, 30, 40]);
    expect(
      evaluateRow(node([hole(0, 10, 2), hole(1, 40, 2, 40)], { begun }), undefined),
    ).toMatchObject({
      ...{ ok: true, state: 'made' },
    });
  });

  test('waits for what is asked where it isn’t known how it was begun', () => {
    const waits = { kind: 'waits', field: '', for: askedKey(HOME), root: askedKey(HOME) };
    const one = node([hole(0, 10)]);
    expect(evaluateRow(one, undefined)).toEqual({ ok: false, trouble: waits, row: SAID });
    expect(evaluateRow(one, nothing({ kind: 'undecided' }))).toMatchObject({ trouble: waits });
    const behind = nothing({ kind: 'waits', field: 'length', for: 'sum||', root: 'long||' });
    expect(evaluateRow(one, behind)).toMatchObject({ trouble: { ...waits, root: 'long||' } });
  });

  test('is undecided where more is made than it was begun with', () => {
    const facts = [hole(0, 10), hole(1, 20), hole(2, 30)];
    const two = { ...pointsOf([mm(10), mm(20)]), by: {} };
    expect(placesOf(two)).toHaveLength(2);
    expect(evaluateRow(node(facts, { begun: two }), undefined)).toEqual({
      ...{ ok: false, trouble: { kind: 'undecided' }, row: SAID },
    });
  });
});
