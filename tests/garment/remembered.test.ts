import { expect, test } from 'vitest';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Fact, Garment, Quantity, Work } from '../../src/garment/record/record.ts';
import type { Known } from '../../src/garment/work-out/seen-work.ts';
import { type Answer, type Memory, workOut } from '../../src/garment/work-out/work-out.ts';
import { mm } from '../../src/lengths/length.ts';
import { alike } from './trial/compare.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { YES_NO, yesTo } from './trial/yes-no.ts';

const LONG = homeOf('long');
const [CUT, WIDTH, FINISHED] = ['cut-length', 'cut-width', 'finished-length'].map((key) =>
  homeOf('back', '', key),
) as [string, string, string];
const FACING = homeOf('facing', '', 'cut-length');
const HOLES = homeOf('strip', '', 'holes');

/** Invented: a back, a facing as long as it is finished, and a strip of five holes. */
const coat = garmentOf({
  quantities: { long: { name: 'Back', kind: 'length', rank: 1, parts: typed('60') } },
  works: {
    back: {
      ...{ name: 'Back', calculation: 'toy-piece', rank: 1 },
      fields: { length: [quantity('long')], width: typed('40'), bottom: typed('2') },
    },
    facing: {
      ...{ name: 'Facing', calculation: 'toy-piece', rank: 2 },
      fields: { length: [output('back', 'finished-length')] },
    },
    strip: {
      ...{ name: 'Strip', calculation: 'toy-strip', rank: 3 },
      fields: { length: typed('20'), pitch: typed('4'), end: typed('2'), fit: typed('fill') },
    },
  },
});

const fact = (home: string, at: number, set: Partial<Fact> = {}): Fact => ({
  ...{ home, shown: mm(at), plan: mm(at), tape: 8000, rule: 1, read: '', when: 1 },
  ...set,
});
const hole = (rank: number, at: number, asked = at) =>
  fact(HOLES, at, { mark: { rank, of: 5, asked: mm(asked) } });
const before = (home: string) => ({ home, before: true, when: 1 });
const points = (...at: number[]) => at.map((place, i) => [i, mm(place)]);
const begun = { [HOLES]: { count: 5, by: {}, points: points(20, 60, 100, 140, 180) } };
const moved = { h1: hole(0, 20), h2: hole(1, 66, 60) };
const decided = (way: string) => ({
  [HOLES]: { way, facts: ['h1', 'h2'], asked: begun[HOLES], tolerance: 8000 },
});

type Of = (answer: Answer) => unknown;
const valueAt =
  (key: string): Of =>
  ({ values }) => {
    const result = values.get(key);
    if (!result?.ok) return result?.trouble.kind;
    return typeof result.value === 'number'
      ? result.value
      : result.value.marks.map(({ at }) => Math.round(at));
  };
const stateAt =
  (key: string): Of =>
  ({ values }) => {
    const result = values.get(key);
    return result?.ok && result.state;
  };
const endsAt =
  (key: string): Of =>
  ({ values }) => {
    const result = values.get(key);
    return result?.ok && Object.keys(result.ends);
  };
const madeAt =
  (key: string): Of =>
  ({ values }) => {
    const result = values.get(key);
    return result?.ok && result.made;
  };
const byC = [madeAt(HOLES), Array(5).fill('c')] as const;
const row = (...at: number[]) => at.map((place) => mm(place));

type Set = Partial<Garment>;
const one = (name: string, was: Set, now: Set, of: Of, is: unknown) =>
  [name, was, now, of, is] as const;
const shorter = { [HOLES]: { count: 3, by: {}, points: points(20, 100, 180) } };
const counted = {
  quantities: { long: { ...(coat.quantities.long as Quantity), kind: 'count' } },
};
const off = { works: { ...coat.works, back: { ...(coat.works.back as Work), off: true } } };
const m = fact(LONG, 615);
const cut = (at: number) => ({ facts: { c: fact(CUT, at) } });
const measured = (at: number) => ({ facts: { m: fact(LONG, at) } });
const said = (id: string, home: string) => ({ facts: { [id]: before(home) } });
const wide = { w: fact(WIDTH, 400) };
const ONE_AFTER_OTHER = [
  one('a number that is linked is no length any more', {}, counted, valueAt(CUT), 'kinds'),
  one('a work that is linked is taken off', {}, off, valueAt(FACING), 'waits'),
  one('a measure is taken', {}, measured(615), valueAt(CUT), mm(635)),
  one('a measure is taken anew', measured(615), measured(611), valueAt(CUT), mm(631)),
  one('a measure is kept under another id', { facts: { m } }, { facts: { n: m } }, endsAt(CUT), [
    'f:n',
  ]),
  one('a measure is taken back', measured(615), {}, valueAt(LONG), mm(600)),
  one('a cut is measured anew', cut(610), cut(612), valueAt(CUT), mm(612)),
  one('what rests on a cut goes with it', cut(610), cut(612), valueAt(FINISHED), mm(592)),
  one('and so in another work', cut(610), cut(612), valueAt(FACING), mm(592)),
  one(
    'beside a cut another was made before',
    { facts: wide },
    { facts: { ...wide, ...said('b', CUT).facts } },
    stateAt(CUT),
    'made before',
  ),
  one('what was made before is measured', said('b', CUT), cut(610), valueAt(CUT), mm(610)),
  one('a row made before is said to be so anew', said('b', HOLES), said('c', HOLES), ...byC),
  one(
    'a hole is measured anew',
    { facts: { h: hole(0, 20) }, begun },
    { facts: { h: hole(0, 21, 20) }, begun },
    valueAt(HOLES),
    row(21, 60, 100, 140, 180),
  ),
  one(
    'a row is decided',
    { facts: moved, begun },
    { facts: moved, begun, decisions: decided('spread') },
    valueAt(HOLES),
    row(20, 66, 104, 142, 180),
  ),
  one(
    'a row is decided otherwise',
    { facts: moved, begun, decisions: decided('spread') },
    { facts: moved, begun, decisions: decided('asked') },
    valueAt(HOLES),
    row(20, 66, 100, 140, 180),
  ),
  one(
    'a row was begun with another count',
    { facts: { h: hole(0, 20) }, begun },
    { facts: { h: hole(0, 20) }, begun: shorter },
    valueAt(HOLES),
    row(20, 100, 180),
  ),
];

test.each(ONE_AFTER_OTHER)('with the answer before in mind: %s', (_, was, now, of, is) => {
  const first = workOut({ ...coat, ...was }, KNOWN);
  const record = { ...coat, ...now };
  const answer = workOut(record, KNOWN, first.memory);
  expect(of(answer)).toEqual(is);
  expect(of(first)).not.toEqual(is);
  expect(alike(answer, workOut(record, KNOWN))).toBe(true);
});

test('each number is worked out once, and again only where what it reads came out otherwise', () => {
  const first = workOut(coat, KNOWN);
  expect(first.evaluated).toBe([...first.nodes].length);
  const long = (text: string): Garment => ({
    ...coat,
    quantities: { long: { ...(coat.quantities.long as Quantity), parts: typed(text) } },
  });
  const after = (record: Garment) => workOut(record, KNOWN, first.memory);
  expect(after(structuredClone(coat)).evaluated).toBe(0);
  // The back’s length and the facing’s, cut and finished; no width, and nothing of the strip.
  expect(after(long('61')).evaluated).toBe(5);
  // It comes to the same.
  expect(after(long('59 + 1')).evaluated).toBe(1);
  const back = after(long('61'));
  expect(workOut(long('61'), KNOWN, back.memory).evaluated).toBe(0);
  expect(workOut(coat, KNOWN, back.memory).values).toEqual(first.values);
});

test('a sum is worked out anew when one of what it takes is there no more, or again', () => {
  const known: Known = new Map([[YES_NO.id, YES_NO]]);
  const sums = ['both', 'far'].map((key) => homeOf('w', '', key));
  const garments = [['first', 'second'], ['first'], ['second'], [], ['first', 'second']] as const;
  let memory: Memory | undefined;
  const seen = garments.map((chosen) => {
    const answer = workOut(garmentOf({ works: { w: yesTo(...chosen) } }), known, memory);
    memory = answer.memory;
    return sums.map((key) => valueAt(key)(answer));
  });
  expect(seen).toEqual([
    [3, 3],
    [1, 1],
    [2, 2],
    [undefined, undefined],
    [3, 3],
  ]);
});
