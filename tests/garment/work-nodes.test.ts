import { expect, test } from 'vitest';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Fact, Garment, Parts } from '../../src/garment/record/record.ts';
import type { Known } from '../../src/garment/work-out/seen-work.ts';
import { workOut } from '../../src/garment/work-out/work-out.ts';
import { mm } from '../../src/lengths/length.ts';
import { CUTS } from './trial/cuts.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const known: Known = new Map([...KNOWN, [CUTS.id, CUTS]]);
const at = (id: string, key: string, side = '') => homeOf(id, side, key);
const fact = (home: string, at: number, set: Partial<Fact> = {}): Fact => ({
  ...{ home, shown: mm(at), plan: mm(at), tape: mm(1), rule: 1, read: '', when: 1 },
  ...set,
});
const before = (home: string) => ({ home, before: true, when: 1 });
const work = (
  calculation: string,
  rank: number,
  fields: Record<string, Parts>,
  set: object = {},
) => ({
  ...{ name: calculation, calculation, rank, fields },
  ...set,
});
/** How a number stands, and where. */
const seen = (record: Garment, key: string) => {
  const result = workOut(record, known).values.get(key);
  if (!result?.ok) return result?.trouble.kind;
  const { value, state } = result;
  return [state, typeof value === 'number' ? value : value.marks.length];
};
const earlier = (record: Garment) => workOut(record, known).earlier.map((one) => one.fact);

const back = work('toy-piece', 1, { length: typed('60'), bottom: typed('2') });
const strip = work('toy-strip', 2, {
  ...{ length: typed('20'), pitch: typed('4'), end: typed('2'), fit: typed('fill') },
});
const coat = garmentOf({ works: { back, strip } });
const [CUT, FINISHED, HOLES] = [
  ...[at('back', 'cut-length'), at('back', 'finished-length'), at('strip', 'holes')],
] as [string, string, string];

test('what no hand makes isn’t made, whatever a record says', () => {
  for (const one of [before(FINISHED), fact(FINISHED, 500)]) {
    const record = { ...coat, facts: { b: one } };
    expect(seen(record, FINISHED)).toEqual(['planned', mm(600)]);
    expect(earlier(record)).toEqual(['b']);
  }
});

test('a mark of a row is of no single number, and a number without a mark of no row', () => {
  const mark = { rank: 0, of: 5, asked: mm(20) };
  const facts = { a: fact(CUT, 500, { mark }), b: fact(HOLES, 25) };
  const record = { ...coat, facts };
  expect([CUT, FINISHED, HOLES].map((home) => seen(record, home))).toEqual([
    ['planned', mm(620)],
    // Nothing is cut that it could go by.
    ['planned', mm(600)],
    ['planned', 5],
  ]);
  expect(earlier(record)).toEqual(['a', 'b']);
});

test('what a row kept when it was begun counts only while something of it is made', () => {
  const points = [0, 1, 2].map((rank) => [rank, mm(20 + 80 * rank)]);
  const begun = { [HOLES]: { count: 3, by: {}, points } };
  expect(seen({ ...coat, begun }, HOLES)).toEqual(['planned', 5]);
  const facts = { h: fact(HOLES, 20, { mark: { rank: 0, of: 3, asked: mm(20) } }) };
  expect(seen({ ...coat, begun, facts }, HOLES)).toEqual(['partly made', 3]);
});

test('a step that is there no more bends nothing, made or made before', () => {
  const hem = (turned: string) => work('toy-hem', 1, { depth: typed('2'), turned: typed(turned) });
  const [first, allowance] = [at('hem', 'first-turn'), at('hem', 'allowance')];
  const stands = (turned: string, one: object) =>
    seen(garmentOf({ works: { hem: hem(turned) }, facts: { f: one } }), allowance);
  expect(stands('twice', fact(first, 15))).toEqual(['partly made', mm(35)]);
  expect(stands('twice', before(first))).toEqual(['made before', mm(40)]);
  expect(stands('once', fact(first, 15))).toEqual(['planned', mm(20)]);
  expect(stands('once', before(first))).toEqual(['planned', mm(20)]);
});

test('nor does one that a number takes away, whoever asks first', () => {
  const folded = (turn: string) => {
    const works = {
      // It comes before what it takes.
      facing: work('toy-piece', 1, { length: [output('cuts', 'folded')] }),
      cuts: work('cuts', 2, { length: typed('60'), turn: typed(turn) }),
    };
    const facts = { p: fact(at('cuts', 'press'), 15) };
    const record = garmentOf({ works, facts });
    return [seen(record, at('cuts', 'folded')), seen(record, at('facing', 'cut-length'))];
  };
  expect(folded('1')).toEqual([
    ['partly made', mm(585)],
    ['planned', mm(585)],
  ]);
  expect(folded('0')).toEqual([
    ['planned', mm(600)],
    ['planned', mm(600)],
  ]);
});

test('where a field can’t be read that is said, though its number would also go round', () => {
  const round = (turn: string) => {
    const hem = (of: string, rank: number, turn: string) =>
      work('toy-hem', rank, {
        ...{ depth: [output(of, 'allowance')], turned: typed('twice'), turn: typed(turn) },
      });
    return garmentOf({ works: { a: hem('b', 1, turn), b: hem('a', 2, '1') } });
  };
  const [a, b] = [at('a', 'allowance'), at('b', 'allowance')];
  expect([a, b].map((key) => seen(round('1'), key))).toEqual(['circle', 'circle']);
  expect([a, b].map((key) => seen(round('one'), key))).toEqual(['reading', 'waits']);
  const answer = workOut(round('one'), known);
  expect([answer.sources(a), answer.sources(b)]).toEqual([[], [a]]);
  expect(answer.sources('none||')).toEqual([]);
});

test('what is a side’s own is in doubt by itself, and what all share is so once', () => {
  const keys = (own: unknown) => {
    const sides = { sides: ['left', 'right'], own };
    const works = { hem: work('toy-hem', 1, { depth: typed('2 ± 0.1 cm') }, sides) };
    const { values } = workOut(garmentOf({ works }), known);
    return ['left', 'right'].map((side) => {
      const result = values.get(at('hem', 'allowance', side));
      return result?.ok ? Object.keys(result.ends) : [];
    });
  };
  const shared = [['r:hem||:depth:0'], ['r:hem||:depth:0']];
  for (const none of [undefined, {}, { right: 7 }, { right: { turn: typed('1') } }]) {
    expect(keys(none)).toEqual(shared);
  }
  expect(keys({ right: { depth: typed('3 ± 0.1 cm') } })).toEqual([
    ...[shared[0], ['r:hem|right|:depth:0']],
  ]);
});

test('a number of the garment is planned, or made; a row of it is never made by one number', () => {
  const row = { name: 'Row', kind: 'run', rank: 1, parts: [output('strip', 'holes')] };
  const long = { name: 'Long', kind: 'length', rank: 2, parts: typed('60') };
  const sum = { ...long, rank: 3, parts: [quantity('long'), ...typed(' + 1')] };
  const record = garmentOf({ quantities: { row, long, sum }, works: { strip } });
  expect(['row', 'long', 'sum'].map((id) => seen(record, homeOf(id)))).toEqual([
    ...[
      ['planned', 5],
      ['planned', mm(600)],
      ['planned', mm(610)],
    ],
  ]);
  const facts = { r: fact(homeOf('row'), 20), l: fact(homeOf('long'), 610) };
  const measured = { ...record, facts };
  expect(['row', 'long', 'sum'].map((id) => seen(measured, homeOf(id)))).toEqual([
    ...[
      ['planned', 5],
      ['made', mm(610)],
      ['planned', mm(620)],
    ],
  ]);
  expect(earlier(measured)).toEqual(['r']);
  const answer = workOut(measured, known);
  expect(['row', 'long', 'sum'].map((id) => answer.sources(homeOf(id)))).toEqual([
    ...[[HOLES], [], [homeOf('long')]],
  ]);
  // It stands by itself: beside it nothing is asked.
  expect(answer.nodes.get(homeOf('sum'))).toMatchObject({ form: 'plan', asked: false });
  const unread = {
    ...record,
    quantities: { ...record.quantities, sum: { ...sum, parts: typed('x') } },
  };
  expect(workOut(unread, known).sources(homeOf('sum'))).toEqual([]);
});

test('what goes round is told the way through itself, and what reads itself is its own way', () => {
  const hem = (of: string, rank: number) =>
    work('toy-hem', rank, { depth: [output(of, 'allowance')], turned: typed('once') });
  const works = { a: hem('b', 1), b: hem('a', 2), c: hem('c', 3), d: hem('c', 4) };
  const { values } = workOut(garmentOf({ works }), known);
  const [a, b, c, d] = ['a', 'b', 'c', 'd'].map((id) => at(id, 'allowance'));
  const troubleAt = (key = '') => {
    const result = values.get(key);
    return result?.ok === false && result.trouble;
  };
  expect([a, b, c].map(troubleAt)).toEqual([
    { kind: 'circle', path: [a, b] },
    { kind: 'circle', path: [b, a] },
    { kind: 'circle', path: [c] },
  ]);
  expect(troubleAt(d)).toMatchObject({ kind: 'waits', for: c });
});

test('what is made stands where it is, though what is asked of it goes round through itself', () => {
  const hem = (of: string, rank: number) =>
    work('toy-hem', rank, { depth: [output(of, 'allowance')], turned: typed('once') });
  const hems = { a: hem('b', 1), b: hem('a', 2) };
  const [a, b] = [at('a', 'allowance'), at('b', 'allowance')];
  const made = garmentOf({ works: hems, facts: { f: fact(a, 35) } });
  expect([a, b].map((key) => seen(made, key))).toEqual([
    ['made', mm(35)],
    ['planned', mm(35)],
  ]);
  expect([a, b].map((key) => workOut(made, known).sources(key))).toEqual([[], [a]]);
  // Said to be made before, it has no number to stand by.
  const said = garmentOf({ works: hems, facts: { f: before(a) } });
  expect([a, b].map((key) => seen(said, key))).toEqual(['circle', 'circle']);

  const cut = {
    name: 'Cut',
    kind: 'length',
    rank: 1,
    parts: [output('strip', 'last'), ...typed(' + 2')],
  };
  const ring = { ...strip, fields: { ...strip.fields, length: [quantity('cut')] } };
  const points = [0, 1, 2, 3, 4].map((rank) => [rank, mm(20 + 40 * rank)]);
  const row = garmentOf({
    ...{ quantities: { cut }, works: { strip: ring } },
    facts: { h: fact(HOLES, 20, { mark: { rank: 0, of: 5, asked: mm(20) } }) },
    begun: { [HOLES]: { count: 5, by: {}, points } },
  });
  expect([HOLES, at('strip', 'last')].map((key) => seen(row, key))).toEqual([
    ['partly made', 5],
    ['planned', mm(180)],
  ]);
  expect(workOut(row, known).sources(HOLES)).toEqual([]);
});
