import { expect, test } from 'vitest';
import { keepAgain, keepNew, type PageParts, partsOf } from '../../src/garment/actions/keep.ts';
import { isMeasuredTwice, isThere } from '../../src/garment/actions/keep-asks.ts';
import { written } from '../../src/garment/actions/state.ts';
import type { Typed } from '../../src/garment/record/from-second.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Fact, Garment, Kept } from '../../src/garment/record/record.ts';
import type { Known } from '../../src/garment/work-out/seen-work.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 5;
/** Invented: hooks on a page, of which the third is at 158 instead of 153, as said on its label. */
const hooks = (made: Readonly<Record<string, string>> = {}, name = 'Hooks'): Typed => ({
  ...{ name, calculation: 'closures' },
  draft: { u: 'cm', opening: '46.3', count: '3', top: '1.2', bottom: '2.5' },
  runs: [{ planned: { 1: mm(12), 2: mm(83), 3: mm(153) }, made }],
});
const edge: Typed = {
  ...{ name: 'Edge', calculation: 'convert', draft: { u: 'in', length: '18' }, runs: [] },
};
const parts = (page: Typed, more: { mark?: ','; side?: string; known?: Known } = {}): PageParts =>
  partsOf(page, 'k', { known: KNOWN, now, ...more });
const HOME = homeOf('k', '', 'marks');
const madeAt = (facts: Kept) =>
  Object.entries(facts as Readonly<Record<string, Fact>>).map(([id, one]) => [
    ...[id, one.home, one.mark?.rank, one.measured],
  ]);

test('a length for itself becomes a quantity, as typed, and nothing else', () => {
  const { quantities, works, facts, begun } = parts(edge);
  expect(quantities).toStrictEqual({
    k: { name: 'Edge', kind: 'length', rank: 0, parts: typed('18', 'in') },
  });
  expect([works, facts, begun]).toEqual([{}, {}, {}]);
  expect(parts(edge, { mark: ',' }).quantities).toEqual({
    k: { name: 'Edge', kind: 'length', rank: 0, parts: [{ text: '18', unit: 'in', mark: ',' }] },
  });
});

test('another page becomes a work: what was typed, and else what a field begins with', () => {
  const { quantities, works } = parts(hooks());
  expect(quantities).toEqual({});
  expect(works).toStrictEqual({
    k: {
      ...{ name: 'Hooks', calculation: 'closures', rank: 0 },
      fields: expect.objectContaining({ opening: typed('46.3'), ends: typed('given') }),
    },
  });
  expect(parts(hooks(), { mark: ',' }).works).toMatchObject({
    k: { fields: { opening: [{ text: '46.3', unit: 'cm', mark: ',' }] } },
  });
  // Where its calculation couldn’t be fetched, that is done another time.
  expect(parts(hooks({ 1: '' }), { known: new Map() })).toMatchObject({
    ...{ works: { k: { older: 2 } }, facts: { 'k-0-1': { home: homeOf('k', '', '#0') } } },
  });
});

test('what was measured on the page is a fact of its mark, with what the row began as', () => {
  const { facts, begun } = parts(hooks({ 1: '', 3: '15.8 cm' }));
  expect(madeAt(facts)).toEqual([
    ['k-0-1', HOME, 0, undefined],
    ['k-0-2', HOME, 2, mm(158)],
  ]);
  const row = {
    count: 3,
    points: [
      [0, mm(12)],
      [1, mm(83)],
      [2, mm(158)],
    ],
    by: {},
  };
  expect(begun).toEqual({ [HOME]: row });
  const left = parts(hooks({ 3: '15.8 cm' }), { side: 'left' });
  const there = homeOf('k', 'left', 'marks');
  expect(madeAt(left.facts)).toEqual([['k-0-1-left', there, 2, mm(158)]]);
  expect(left.facts['k-0-1-left']).toMatchObject({ shown: mm(153), tape: 8000 });
  expect(left.begun).toEqual({ [there]: row });
  expect(left.works).toEqual(parts(hooks()).works);
});

const kept = (record: Garment, page: PageParts, again = false) => {
  const next = (again ? keepAgain : keepNew)(written(record), page, now);
  if ('why' in next) throw new Error(next.why);
  return next;
};

test('kept for the first time it is the last of the garment, and one change', () => {
  const { rank: _, ...unranked } = { ...(parts(hooks()).works.k as object), rank: 0 };
  const record = garmentOf({
    quantities: { a: { name: 'a', kind: 'length', rank: 4, parts: typed('1') } },
    works: { b: { ...unranked, rank: 2.5 }, broken: 7, none: null, unranked },
  });
  const { record: next, log } = kept(record, parts(hooks({ 1: '' })));
  expect(next.works).toMatchObject({ ...record.works, k: { name: 'Hooks', rank: 5 } });
  expect(next.quantities).toBe(record.quantities);
  expect(next.facts).toStrictEqual(parts(hooks({ 1: '' })).facts);
  expect(Object.keys(next.begun)).toEqual([HOME]);
  expect(next).toMatchObject({ changed: now, edits: 1 });
  expect(log).toMatchObject([{ what: 'add', press: false }]);
  expect(kept(record, parts(edge)).record.quantities).toMatchObject({ k: { rank: 5 } });
  expect(kept(garmentOf({}), parts(edge)).record.quantities).toMatchObject({ k: { rank: 1 } });
  // A garment that begins below nothing has room above it, too.
  const below = garmentOf({ works: { b: { ...unranked, rank: -3 } } });
  expect(kept(below, parts(edge)).record.quantities).toMatchObject({ k: { rank: 1 } });
});

const first = (page: Typed, more: object = {}): Garment => ({
  ...kept(garmentOf({}), parts(page)).record,
  ...more,
});

test('kept again only what is otherwise is written: the same text is what is there, whoever put it there', () => {
  const record = first(hooks({ 1: '' }));
  const { works: before } = record;
  expect(kept(record, parts(hooks({ 1: '' }), { mark: ',' }), true)).toEqual(written(record));
  const other: Typed = { ...hooks({ 1: '' }, 'Eyes'), draft: { u: 'cm', opening: '46.8' } };
  const { record: next, log } = kept(record, parts(other), true);
  expect(next.works.k).toMatchObject({ name: 'Eyes', rank: 1, fields: { opening: typed('46.8') } });
  expect(next).toMatchObject({ changed: now, edits: 2 });
  expect(log).toMatchObject([{ what: 'keep', press: false }]);
  const slots = log.flatMap(({ edits }) => edits.map(({ slot }) => slot.join(' ')));
  expect(slots).toContain('works k name');
  expect(slots).not.toContain('works k fields ends');
  expect(before).toBe(record.works);
  const length = first(edge);
  const typedOn = { ...edge, name: 'Rim', draft: { u: 'in', length: '19' } };
  expect(kept(length, parts(typedOn), true).record.quantities).toStrictEqual({
    k: { name: 'Rim', kind: 'length', rank: 1, parts: typed('19', 'in') },
  });
});

test('kept again each mark is made once: measured anew, or measured no more, or one more', () => {
  const record = first(hooks({ 2: '8.5 cm' }));
  const again = (made: Readonly<Record<string, string>>, of = record) =>
    kept(of, parts(hooks(made)), true).record;
  expect(madeAt(again({ 2: '8.4 cm' }).facts)).toEqual([['k-0-1', HOME, 1, mm(84)]]);
  expect(again({ 2: '' }).facts).toStrictEqual(parts(hooks({ 2: '' })).facts);
  const both = again({ 1: '', 2: '8.5 cm' });
  expect(madeAt(both.facts)).toEqual([
    ['k-0-1', HOME, 1, mm(85)],
    ['k-0-1+', HOME, 0, undefined],
  ]);
  // What the row began as stays; what is said of it for the first time is written.
  expect(both.begun).toBe(record.begun);
  expect(again({ 1: '' }, first(hooks())).begun).toEqual(parts(hooks({ 1: '' })).begun);
});

test('a mark of another row, of another count, or of nothing that can be read is not that mark', () => {
  const page = parts(hooks({ 2: '8.4 cm' }));
  const fact = page.facts['k-0-1'] as Fact;
  const { mark: _, ...whole } = fact;
  const others: Kept = {
    ...{ broken: null, whole, elsewhere: { ...fact, home: homeOf('x', '', 'marks') } },
    ...{ ofFour: { ...fact, mark: { ...fact.mark, of: 4 } } },
    third: { ...fact, mark: { ...fact.mark, rank: 2 } },
  };
  const { facts } = kept(first(hooks(), { facts: others }), page, true).record;
  expect(facts).toStrictEqual({ ...others, 'k-0-1': fact });
});

test('a mark that was measured elsewhere meanwhile is asked about: not the same place, nor one that was seen', () => {
  const record = first(hooks({ 1: '', 2: '8.5 cm' }));
  const twice = (made: Readonly<Record<string, string>>, ...opened: string[]) =>
    isMeasuredTwice(record, parts(hooks(made)), opened);
  expect(twice({ 2: '8.4 cm' })).toBe(true);
  expect(twice({ 2: '85 mm' })).toBe(false);
  expect(twice({ 2: '8.4 cm' }, '8.5 cm')).toBe(false);
  expect(twice({ 2: '8.4 cm' }, '8.3 cm')).toBe(true);
  // Taken to be as asked, where it was measured.
  expect(twice({ 2: '' })).toBe(true);
  // Beside another that nobody measured, or that is made here alone.
  expect(twice({ 1: '1.3 cm' })).toBe(false);
  expect(twice({ 3: '15.8 cm' })).toBe(false);
  expect(twice({ 1: '', 2: '8.4 cm', 3: '' })).toBe(true);
  expect(twice({})).toBe(false);
});

test('the same under the same name is there already: not taken off, nor typed otherwise', () => {
  const [page, length] = [parts(hooks()), parts(edge)];
  const there = (one: PageParts, set: Partial<Pick<Garment, 'works' | 'quantities'>>) =>
    isThere(garmentOf(set), one);
  const { k: work } = page.works as Record<string, object>;
  const { k: number } = length.quantities as Record<string, object>;
  expect(there(page, {})).toBe(false);
  expect(there(page, { works: { a: 7, b: work } })).toBe(true);
  expect(there(page, { works: { b: { ...work, off: true } } })).toBe(false);
  expect(there(page, { works: { b: { ...work, name: 'Eyes' } } })).toBe(false);
  expect(there(page, { works: { b: { ...work, calculation: 'x' } } })).toBe(false);
  expect(there(page, { works: { b: { ...work, fields: { opening: typed('46') } } } })).toBe(false);
  expect(there(length, { works: { b: work }, quantities: { a: null, b: number } })).toBe(true);
  expect(there(length, { quantities: { b: { ...number, name: 'Rim' } } })).toBe(false);
  expect(there(length, { quantities: { b: { ...number, parts: typed('19', 'in') } } })).toBe(false);
});
