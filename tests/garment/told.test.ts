import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin, type State, withKnown } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Fact, Garment } from '../../src/garment/record/record.ts';
import type { Known } from '../../src/garment/work-out/seen-work.ts';
import { workOut } from '../../src/garment/work-out/work-out.ts';
import { mm } from '../../src/lengths/length.ts';
import { CUTS } from './trial/cuts.ts';
import { garmentOf, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { HOLES, waistcoat } from './trial/waistcoat.ts';

const tape = mm(1);
const fact = (home: string, at: number, set: Partial<Fact> = {}): Fact => ({
  ...{ home, shown: mm(at), plan: mm(at), tape, rule: 1, read: '', when: 1 },
  ...set,
});

const known: Known = new Map([...KNOWN, [CUTS.id, CUTS]]);
const [NEAR, LEAST, MOST, PRESS] = ['near', 'least', 'most', 'press'].map((key) =>
  homeOf('cuts', '', key),
) as [string, string, string, string];
const cuts = (length: string, turn = '1') =>
  garmentOf({
    works: {
      cuts: {
        ...{ name: 'Cuts', calculation: 'cuts', rank: 1 },
        fields: { length: typed(length, 'mm'), turn: typed(turn) },
      },
    },
  });
const overs = (record: Garment, home: string, at: number, set: Partial<Garment> = {}) =>
  workOut({ ...record, facts: { f: fact(home, at) }, ...set }, known).conflicts.map(({ over }) =>
    over === undefined ? undefined : Math.round((10 * over) / mm(1)) / 10,
  );

test('rounded to the tape is as asked: to the nearest, or the way its step is rounded', () => {
  const asked = cuts('620.4');
  // To the nearest graduation, half of one either way.
  expect([620, 621, 619.9].map((at) => overs(asked, NEAR, at))).toEqual([[], [0.6], []]);
  expect(overs(cuts('620.7'), NEAR, 620)).toEqual([-0.7]);
  // No less: up to the graduation above, and not a whole one.
  expect([621, 619.8, 621.4].map((at) => overs(asked, LEAST, at))).toEqual([[], [-0.6], [1]]);
  expect(overs(cuts('620.7'), LEAST, 620)).toEqual([-0.7]);
  // No more: down to the one below.
  expect([620, 621, 619.4].map((at) => overs(cuts('620.7'), MOST, at))).toEqual([[], [], [-1.3]]);
  expect(overs(cuts('620.7'), MOST, 619.7)).toEqual([-1]);
  expect(overs(asked, MOST, 621)).toEqual([0.6]);
});

test('where nothing is asked nothing is made otherwise', () => {
  expect(overs(cuts(''), NEAR, 620)).toEqual([]);
});

test('noted is what is said so: of this fact, at what was asked then, and as far off as was let', () => {
  const asked = cuts('600');
  const said = (set: object) => {
    const decision = { way: 'noted', facts: ['f'], asked: mm(600), tolerance: 0, ...set };
    return overs(asked, NEAR, 610, { decisions: { [NEAR]: decision } });
  };
  expect(said({})).toEqual([]);
  expect(said({ asked: mm(600.5) })).toEqual([]);
  expect(said({ asked: mm(601) })).toEqual([10]);
  expect(said({ facts: ['other'] })).toEqual([10]);
  expect(said({ way: 'asked' })).toEqual([10]);
  expect(said({ way: 'asked', allow: mm(20) })).toEqual([10]);
  expect(said({ asked: { count: 1, points: [[0, 0]] } })).toEqual([10]);
  expect(said({ facts: [], allow: mm(10) })).toEqual([]);
  expect(said({ facts: [], allow: mm(9) })).toEqual([10]);
});

const after = (state: State, ...actions: readonly object[]) =>
  actions.reduce<State>(
    (so, one) => act(so, { now: 1, tape, ...one } as unknown as Action).state,
    state,
  );
const newer = (id: string): Known => {
  const was = known.get(id);
  return new Map([...known, [id, typeof was === 'object' ? { ...was, rule: 2 } : 'missing']]);
};

test('a rule that changed is said of what was made by another; alone, where it read the same', () => {
  const made = after(begin(cuts('620'), known), {
    do: 'make',
    home: NEAR,
    id: 'f',
    measured: mm(630),
  });
  const ruleOf = ({ answer }: State) => answer.conflicts.map(({ rule }) => rule);
  expect(ruleOf(made)).toEqual([undefined]);
  const ruled = withKnown(made, newer('cuts'));
  expect(ruleOf(ruled)).toEqual(['only']);
  const place = { work: 'cuts', field: 'length' };
  const longer = after(ruled, { do: 'choose', place, parts: typed('640', 'mm') });
  expect(ruleOf(longer)).toEqual(['changed']);
  // Of what it read is nothing known.
  const { f } = made.record.facts as Record<string, Fact>;
  const unread = { ...made.record, facts: { f: { ...f, read: '' } } };
  expect(ruleOf(begin(unread, newer('cuts')))).toEqual(['changed']);
});

test('of a row it is said where one mark is of another rule, and alone where all of them read the same', () => {
  const row = after(
    begin(waistcoat, known),
    { do: 'make', home: HOLES, id: 'a' },
    { do: 'make', home: HOLES, id: 'b', measured: mm(20) },
  );
  const ruled = newer('toy-strip');
  const told = (facts: Record<string, object>) => {
    const all = row.record.facts as Record<string, object>;
    const set = Object.entries(all).map(([id, one]) => [id, { ...one, ...facts[id] }] as const);
    const { conflicts } = workOut({ ...row.record, facts: Object.fromEntries(set) }, ruled);
    return conflicts.map(({ home, rule }) => [home, rule]);
  };
  const newest = { rule: 2 };
  expect(told({ a: newest, b: newest })).toEqual([[HOLES, undefined]]);
  expect(told({})).toEqual([[HOLES, 'only']]);
  expect(told({ a: newest })).toEqual([[HOLES, 'only']]);
  expect(told({ a: { read: 'other' } })).toEqual([[HOLES, 'changed']]);
  expect(told({ b: { read: 'other' } })).toEqual([[HOLES, 'changed']]);
});

test('a work of which nothing can be worked out is told, unless it is taken off', () => {
  const work = (calculation: string, rank: number, set: object = {}) => ({
    ...{ name: calculation, calculation, rank, fields: {} },
    ...set,
  });
  const works = {
    a: work('later', 1),
    b: work('gone', 2),
    c: work('unheard-of', 3),
    d: work('cuts', 4),
    e: work('gone', 5, { off: true }),
    f: { ...work('toy-hem', 6), fields: { turned: typed('thrice') } },
  };
  const some: Known = new Map([...known, ['later', 'awaited'], ['gone', 'missing']]);
  expect(workOut(garmentOf({ works }), some).troubles).toMatchObject([
    { work: 'a', why: 'awaited', unknown: [] },
    { work: 'b', why: 'missing', unknown: [] },
    { work: 'c', why: 'newer', unknown: [] },
    { work: 'f', why: 'newer', unknown: [{ field: 'turned' }] },
  ]);
});

test('a fact stands at its number, and is of an earlier plan where that isn’t asked for any more', () => {
  const earlier = (record: Garment) =>
    workOut(record, known).earlier.map(({ fact, home }) => [fact, home]);
  const before = (home: string) => ({ home, before: true, when: 1 });
  const row = after(begin(waistcoat, known), { do: 'make', home: HOLES, id: 'h', upTo: 2 }).record;
  expect(earlier(row)).toEqual([]);
  const facts = {
    m: fact('front||', 463),
    f: fact(NEAR, 620),
    b: before(LEAST),
    p: fact(PRESS, 10),
  };
  const { front } = waistcoat.quantities as Record<string, object>;
  const coat = { ...cuts('620'), facts, quantities: { front } };
  expect(earlier(coat)).toEqual([]);
  // A turn of nothing: there is no press.
  const flat = { ...cuts('620', '0'), facts, quantities: { front } };
  expect(earlier(flat)).toEqual([['p', PRESS]]);
  const all = [
    ...[
      ['m', 'front||'],
      ['f', NEAR],
      ['p', PRESS],
      ['b', LEAST],
    ],
  ];
  expect(earlier({ ...coat, works: {}, quantities: {} })).toEqual(all);
  const off = { ...coat, works: { cuts: { ...(coat.works.cuts as object), off: true } } };
  expect(earlier(off)).toEqual(all.slice(1));
  expect(earlier({ ...row, works: {} })).toEqual(Object.keys(row.facts).map((id) => [id, HOLES]));
});

test('a step says how much of it is made, of how much, and whether it can be made', () => {
  const stepAt = ({ answer }: State, home: string) => {
    const step = answer.steps.find((one) => one.home === home);
    return step && [step.made, step.of, step.ready];
  };
  const press = begin(cuts('620'), known);
  expect([NEAR, PRESS].map((home) => stepAt(press, home))).toEqual([
    [0, 1, true],
    [0, 1, true],
  ]);
  const flat = begin(cuts('620', '0'), known).answer;
  expect(flat.steps.map(({ home }) => home)).toEqual([NEAR, LEAST, MOST]);
  // The same where the maker has moved them.
  const { works } = cuts('620', '0');
  const moved = { cut: { stage: 'join', rank: 1 } };
  const late = { cuts: { ...(works.cuts as object), moved } };
  expect(begin(garmentOf({ works: late }), known).answer.steps).toMatchObject(
    [NEAR, LEAST, MOST].map((home) => ({ home, stage: 'join' })),
  );
  expect(stepAt(begin(cuts(''), known), NEAR)).toEqual([0, 1, false]);
  const row = begin(waistcoat, known);
  expect(stepAt(row, HOLES)).toEqual([0, 78, true]);
  const two = after(row, { do: 'make', home: HOLES, id: 'h', upTo: 2 });
  expect(stepAt(two, HOLES)).toEqual([2, 78, true]);
  // Nobody has said yet how the row goes on, nor with how many, and the lace waits for it.
  const off = after(two, { do: 'make', home: HOLES, id: 'i', measured: mm(25) });
  const LACE = homeOf('lace', '', 'lace');
  expect([HOLES, LACE].map((home) => stepAt(off, home))).toEqual([
    [3, undefined, false],
    [0, 1, false],
  ]);
  // A row without a number: how many there are isn’t known, but where it was made before the app knew.
  const unknown = after(row, { do: 'choose', place: { quantity: 'armhole' }, parts: typed('') });
  expect(stepAt(unknown, HOLES)).toEqual([0, undefined, false]);
  const before = after(unknown, { do: 'make before', homes: [HOLES], id: 'b' });
  expect(stepAt(before, HOLES)).toEqual([1, 1, false]);
  // Wholly made otherwise than asked it is still made: nothing of it waits for what is said of it.
  const short = { length: typed('3'), pitch: typed('1'), end: typed('1'), fit: typed('fill') };
  const strip = { name: 'Strip', calculation: 'toy-strip', rank: 1, fields: short };
  const whole = after(
    begin(garmentOf({ works: { strip } }), known),
    { do: 'make', home: HOLES, id: 'a', measured: mm(14) },
    { do: 'decide', home: HOLES, way: 'asked' },
    { do: 'make', home: HOLES, id: 'b', measured: mm(26) },
  );
  expect(whole.answer.conflicts.map(({ home }) => home)).toEqual([HOLES]);
  expect(stepAt(whole, HOLES)).toEqual([2, 2, true]);
});
