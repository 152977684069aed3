import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { moved } from '../../src/garment/actions/rank.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { besides, nextCut, nextOf } from '../../src/garment/next/next.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { readRecord } from '../../src/garment/record/read-record.ts';
import type { Fact, Garment } from '../../src/garment/record/record.ts';
import { backOne } from './trial/back-one.ts';
import { garmentOf, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 5;
const tape = 8000;

/** Invented: pieces that are all cut in one stage. */
const pieces = (ranks: Readonly<Record<string, number>>, sides?: readonly string[]) =>
  garmentOf({
    works: Object.fromEntries(
      Object.entries(ranks).map(([id, rank]) => [
        id,
        {
          ...{ name: id, calculation: 'toy-piece', rank, ...(sides && { sides }) },
          fields: { length: typed('60'), bottom: typed('2') },
        },
      ]),
    ),
  });
const cut = (id: string, side = '') => homeOf(id, side, 'cut-length');
const order = ({ answer }: State) => [
  ...new Set(answer.steps.map(({ home }) => home.split('|')[0])),
];
/** Invented: two rows of two hooks. */
const rows = garmentOf({
  works: Object.fromEntries(
    ['a', 'b'].map((id, i) => [
      id,
      {
        ...{ name: id, calculation: 'closures', rank: i },
        fields: {
          ...{ opening: typed('10'), count: typed('2'), top: typed('1'), bottom: typed('1') },
          ...{ by: typed('count'), ends: typed('given') },
        },
      },
    ]),
  ),
});
const row = (id: string) => homeOf(id, '', 'marks');
const after = (state: State, ...actions: readonly Action[]) =>
  actions.reduce((so, action) => act(so, action).state, state);
const move = (state: State, id: string, by: -1 | 1): Action => {
  const to = moved(state, id, by);
  if (!to) throw new Error(`${id} can't be moved`);
  return { do: 'rank', ...to, now };
};

test('a work is moved by its own rank alone, the key follows, and it is taken back', () => {
  const state = begin(pieces({ a: 1, b: 2, c: 3 }), KNOWN);
  const earlier = after(state, move(state, 'c', -1));
  expect(order(earlier)).toEqual(['a', 'c', 'b']);
  expect(earlier.log.at(-1)?.edits.map(({ slot }) => slot)).toEqual([['works', 'c', 'rank']]);
  const first = after(earlier, move(earlier, 'c', -1));
  expect(nextOf(first.answer)).toMatchObject({ step: { home: cut('c') } });
  const last = after(first, move(first, 'c', 1), move(earlier, 'c', 1));
  expect(order(last)).toEqual(['a', 'b', 'c']);
  expect(order(after(first, { do: 'undo', change: first.log.at(-1)?.id ?? 0, now }))).toEqual([
    'a',
    'c',
    'b',
  ]);
  expect(moved(state, 'a', -1)).toBeUndefined();
  expect(moved(state, 'c', 1)).toBeUndefined();
});

test('works of one rank, as after a merge, are in order of id, and can be moved past each other', () => {
  const state = begin(pieces({ a: 1, b: 1, c: 1 }), KNOWN);
  expect(order(state)).toEqual(['a', 'b', 'c']);
  const earlier = after(state, move(state, 'c', -1));
  expect(order(earlier)).toEqual(['a', 'c', 'b']);
  expect(order(after(earlier, move(earlier, 'a', 1)))).toEqual(['c', 'a', 'b']);
});

test('where works are numbered anew, steps that were moved stay before and behind the same ones', () => {
  // Invented: four works of one rank, and steps of two that were moved among the cuts.
  const record = pieces({ a: 1, b: 1, c: 1, d: 1 });
  const strip = (rank: number, to: number) => ({
    ...{ name: 'Strip', calculation: 'toy-strip', rank },
    ...{ moved: { edge: { stage: 'cut', rank: to } } },
    fields: Object.fromEntries(
      Object.entries({ length: '6', pitch: '2', end: '1', fit: 'keep', rows: 'one' }).map(
        ([key, text]) => [key, typed(text)],
      ),
    ),
  });
  const works = { ...record.works, bb: strip(1, 1), e: strip(7, 40), f: strip(0, 1.5) };
  const state = begin({ ...record, works } as Garment, KNOWN);
  const homes = ({ answer }: State, but: string) =>
    answer.steps.map(({ home }) => home).filter((home) => !home.startsWith(`${but}|`));
  for (const [id, by] of [
    ['d', -1],
    ['a', 1],
    ['b', 1],
    ['bb', -1],
  ] as const) {
    const to = moved(state, id, by);
    expect(to?.room).toBeDefined();
    const after = act(state, move(state, id, by)).state;
    expect(homes(after, id)).toEqual(homes(state, id));
    expect(after.answer.sound.works.get(id)?.rank).not.toBe(state.answer.sound.works.get(id)?.rank);
    const undone = act(after, { do: 'undo', change: after.log.at(-1)?.id ?? 0, now }).state;
    expect(undone.record.works).toEqual(state.record.works);
  }
  // Moved back in another tab meanwhile, it is given no place.
  const earlier = move(state, 'd', -1);
  const without = act(state, {
    ...{ do: 'move', work: 'f', stage: 'edge', to: undefined, now },
  } as Action).state;
  const { record: both } = act(without, earlier).state;
  expect((both.works as Record<string, object>).f).not.toHaveProperty('moved');
});

test('moved to and fro a thousand times the order is what was asked for', () => {
  let state = begin(pieces({ a: 1, b: 2, c: 3 }), KNOWN);
  for (let i = 0; i < 1000; i++) {
    const [, second = ''] = order(state);
    const wanted = [...order(state)];
    [wanted[0], wanted[1]] = [wanted[1], wanted[0]];
    state = after(state, move(state, second, -1));
    expect(order(state)).toEqual(wanted);
  }
});

test('two tabs move two works, and what both did is done', () => {
  const state = begin(pieces({ a: 1, b: 2, c: 3, d: 4 }), KNOWN);
  const [one, other] = [move(state, 'd', -1), move(state, 'b', -1)];
  const [first, second] = [after(state, one, other), after(state, other, one)];
  expect(first.record.works).toEqual(second.record.works);
  expect(order(first)).toEqual(['b', 'a', 'd', 'c']);
});

test('a step is passed over in the record: the key goes past it, also after a reload, until nothing else is left', () => {
  const state = begin(rows, KNOWN);
  const over = after(state, { do: 'pass', home: row('a'), over: true, now });
  const kept = JSON.parse(JSON.stringify(over.record)) as Garment;
  expect(readRecord(kept)).toEqual({ ok: true, value: kept });
  const again = begin(kept, KNOWN);
  expect(again.answer.steps[0]).toMatchObject({ home: row('a'), passed: true });
  for (const inHand of [undefined, row('a'), row('b')]) {
    expect(nextOf(again.answer, inHand)).toMatchObject({ step: { home: row('b') } });
  }
  const made = after(again, { do: 'make', home: row('b'), id: 'f', tape, now, upTo: 2 });
  expect(nextOf(made.answer)).toMatchObject({ step: { home: row('a'), passed: true } });
  const all = after(made, { do: 'make', home: row('a'), id: 'g', tape, now, upTo: 2 });
  expect(nextOf(all.answer).kind).toBe('all made');
  // Made, it is passed over no more, and leaves no list behind.
  expect(all.record).not.toHaveProperty('passed');
  expect(act(all, backOne(all, now)).state.record.passed).toEqual({ [row('a')]: true });
});

test('what was passed over is taken up again, and passing over is a change like others', () => {
  const state = begin(rows, KNOWN);
  const over = after(state, { do: 'pass', home: row('a'), over: true, now });
  const up = after(over, { do: 'pass', home: row('a'), over: false, now });
  expect(nextOf(up.answer)).toMatchObject({ step: { home: row('a') } });
  const {
    changed: _,
    edits: __,
    ...undone
  } = after(over, { do: 'undo', change: over.log[0]?.id ?? 0, now }).record;
  const { changed: ___, edits: ____, ...before } = state.record;
  expect(undone).toEqual(before);
  expect(act(state, { do: 'pass', home: 'none||x', over: true, now }).refused).toMatchObject({
    why: 'not there',
  });
});

test('left and right that are alike are made with one press, each a fact, all taken back at once', () => {
  const state = begin(pieces({ a: 1 }, ['left', 'right']), KNOWN);
  const next = nextOf(state.answer);
  if (next.kind !== 'step') throw new Error(next.kind);
  const others = besides(state.answer, next, (value) => value).map(({ home }) => home);
  expect(others).toEqual([cut('a', 'right')]);
  const press = {
    do: 'make',
    home: next.step.home,
    id: 'f',
    tape,
    shown: next.value,
    now,
  } as const;
  const made = act(state, { ...press, also: others });
  expect(made.refused).toBeUndefined();
  const facts = Object.values(made.state.record.facts) as Fact[];
  expect(facts.map(({ home }) => home)).toEqual([cut('a', 'left'), cut('a', 'right')]);
  expect(act(made.state, backOne(made.state, now)).state.record.facts).toEqual({});
});

test('a side with another number is not made along with it', () => {
  const record = pieces({ a: 1 }, ['left', 'right']);
  const work = { ...(record.works.a as object), own: { right: { length: typed('61') } } };
  const state = begin({ ...record, works: { a: work } }, KNOWN);
  const next = nextOf(state.answer);
  if (next.kind !== 'step') throw new Error(next.kind);
  expect(besides(state.answer, next, (value) => value)).toEqual([]);
  const press = {
    do: 'make',
    home: next.step.home,
    id: 'f',
    tape,
    shown: next.value,
    now,
  } as const;
  const made = act(state, { ...press, also: [cut('a', 'right')] });
  expect(made.refused?.why).toBe('stale');
  expect(made.state.record.facts).toEqual({});
});

test('the next cut after the step in hand is known', () => {
  const state = begin(pieces({ a: 1, b: 2 }), KNOWN);
  expect(nextCut(state.answer, nextOf(state.answer))?.home).toMatch(/^b\|/);
});
