import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Action, act } from '../../../src/garment/actions/act.ts';
import { copyAsNewStart } from '../../../src/garment/actions/copy.ts';
import { begin, type State } from '../../../src/garment/actions/state.ts';
import { writeBackup } from '../../../src/garment/backup/backup.ts';
import { previewOf } from '../../../src/garment/backup/backup-preview.ts';
import { readBackup } from '../../../src/garment/backup/read-backup.ts';
import { type Materials, materialsOf } from '../../../src/garment/materials/materials.ts';
import { materialsIn } from '../../../src/garment/record/material.ts';
import { readRecord } from '../../../src/garment/record/read-record.ts';
import type { Garment, Work } from '../../../src/garment/record/record.ts';
import { sharedGarment } from '../../../src/garment/share/shared.ts';
import { workOut } from '../../../src/garment/work-out/work-out.ts';
import { damaged, renamed } from '../trial/changed-records.ts';
import { frozen, plain } from '../trial/compare.ts';
import { type Dice, dice } from '../trial/dice.ts';
import { KNOWN } from '../trial/known.ts';
import { randomAction } from '../trial/random-action.ts';
import { randomGarment } from '../trial/random-garment.ts';
import { garment, materials, work } from './garments.ts';

/** In the gate; `npm run laws` tries as many as it is asked to. */
const GARMENTS = { numRuns: 15, seed: 1560 };
const seeds = fc.nat(1_000_000);
const now = 9;

const cut = (width: string, length: string, count: string) =>
  work('piece', `width=${width}&length=${length}&count=${count}`);

/** A garment that takes of everything, beside what the trials have. */
function laden(seed: number): State {
  const { works, ...rest } = randomGarment(seed);
  const more = garment({
    a1: work('closures', 'opening=46.3&count=7&top=1.2&bottom=2.5'),
    a2: cut('40', '60', '2'),
    a3: cut('30', '50', '3'),
    a4: work('edging', 'length=62.4&width=1.2', { sides: ['left', 'right'] }),
    a5: work('lacing'),
    a6: work('seam', 'what=finish&given=1.5&finish=bound'),
  });
  const own = Object.entries(more.record.works).map(([id, one], i) => [
    id,
    { ...(one as Work), rank: 1000 + i },
  ]);
  return begin(frozen({ ...rest, works: { ...works, ...Object.fromEntries(own) } }), KNOWN);
}

const IDS = ['cloth', 'closure|a1||count', 'lace|a5||lace-all', 'bias|a6||strip', 'n1', 'n2'];
const NEEDS = ['a1||count', 'a2||count', 'a4||cut-strip', 'a6||strip', 'gone||x'];

function saying(d: Dice): Action {
  const id = d.of(IDS);
  const need = d.of(NEEDS);
  const does = { do: 'material', id, now } as const;
  const number = d.of([undefined, d.int(1, 5000), 8000 * d.int(1, 3000)]);
  switch (d.int(1, 6)) {
    case 1:
      return { ...does, add: { kind: d.of(['cloth', 'other', 'tape'] as const), name: 'New' } };
    case 2:
      return { ...does, forget: true };
    case 3:
      return { ...does, need, serves: d.of([true, false, undefined]) };
    case 4:
      return { ...does, need, long: number };
    default: {
      const key = d.of(['width', 'unit', 'there', 'more', 'spare', 'shrinksAlong'] as const);
      return { ...does, set: { [key]: number } };
    }
  }
}

test('along walks: only what is named changes, undo undoes, nothing of the numbers moves', () => {
  let said = 0;
  fc.assert(
    fc.property(seeds, (seed) => {
      const d = dice(seed * 7919);
      let state = laden(seed);
      for (let k = 0; k < 20; k++) {
        const before = state;
        const action = d.chance(0.7) ? saying(d) : randomAction(d, before);
        const { state: next, refused } = act(before, action);
        state = next;
        frozen(state.record);
        materials(state);
        if (action.do !== 'material') {
          if (action.do === 'undo') continue;
          expect(state.record.materials).toBe(before.record.materials);
          continue;
        }
        const change = state.log.at(-1);
        if (refused || !change || before.log.includes(change)) continue;
        said += 1;
        if (before.record.pending) continue;
        expect(state.answer.values).toEqual(before.answer.values);
        const { materials: _, ...rest } = plain(state.record) as Garment;
        const { materials: __, ...was } = plain(before.record) as Garment;
        expect(rest).toEqual(was);
        const undone = act(state, { do: 'undo', change: change.id, now });
        expect(undone.refused).toBeUndefined();
        expect(plain(undone.state.record)).toEqual(plain(before.record));
      }
    }),
    GARMENTS,
  );
  expect(said).toBeGreaterThan(100);
});

test('what two tabs say of different things commutes', () => {
  const state = laden(1);
  fc.assert(
    fc.property(seeds, (seed) => {
      const d = dice(seed * 13);
      const [one, other] = [saying(d), saying(d)];
      const place = (action: Action) => {
        if (action.do !== 'material') return [];
        if ('set' in action) return Object.keys(action.set).map((key) => `${action.id} ${key}`);
        return 'need' in action ? [`${action.id} ${action.need} ${'long' in action}`] : ['all'];
      };
      const shared = place(one).some((at) => place(other).includes(at));
      if (shared || [...place(one), ...place(other)].includes('all')) return;
      const [first, second] = [
        act(act(state, one).state, other),
        act(act(state, other).state, one),
      ];
      expect(plain(first.state.record)).toEqual(plain(second.state.record));
    }),
    { ...GARMENTS, numRuns: 100 },
  );
});

/** What is said of it, without the words that only the record holds. */
const told = (all: Materials) => JSON.parse(JSON.stringify(all)) as unknown;

test('the same whatever works are called, and in whatever order they are kept', () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const { record } = laden(seed);
      // Names of works as the trial renames them.
      const alike = JSON.parse(JSON.stringify(record).replace(/\ba(\d)\b/g, 'w77$1')) as Garment;
      const { record: other, name } = renamed(alike, dice(seed * 3));
      const [one, two] = [alike, other].map((each) => materialsOf(each, workOut(each, KNOWN)));
      const sorted = (all: unknown) =>
        (all as Materials).all.map((each) => JSON.stringify(each)).sort();
      const expected = JSON.parse(name(JSON.stringify(told(one as Materials))));
      expect(sorted(told(two as Materials))).toEqual(sorted(expected));
    }),
    GARMENTS,
  );
});

test('no damage makes it throw, and what can’t be read is kept and told', () => {
  const begun = laden(1);
  let unsound = 0;
  fc.assert(
    fc.property(seeds, (seed) => {
      const d = dice(seed * 5);
      let state = begun;
      for (let k = 0; k < 8; k++) state = act(state, saying(d)).state;
      const { materials: kept = {} } = state.record;
      const bad = damaged({ ...state.record, works: {}, quantities: {} }, d) as Garment;
      const read = readRecord({ ...state.record, materials: bad?.materials ?? kept });
      if (!read.ok) return;
      const found = materialsOf(read.value, workOut(read.value, KNOWN));
      unsound += found.unsound.length;
      expect(read.value.materials).toEqual(bad?.materials ?? kept);
      for (const { buy, have, lacks } of found.all) {
        expect([buy, have, lacks].every((one) => one >= 0)).toBe(true);
      }
    }),
    { ...GARMENTS, numRuns: 60 },
  );
  expect(unsound).toBeGreaterThan(5);
});

test('a map of materials that is none is damage, told by its name', () => {
  const { record } = garment({});
  expect(readRecord({ ...record, materials: [] })).toEqual({
    ok: false,
    damage: { kind: 'damaged', part: 'materials' },
  });
  expect(readRecord(record)).toEqual({ ok: true, value: record });
});

test('what a newer build says of a material is not written over', () => {
  const state = garment({}, { cloth: 'rolled' });
  const done = act(state, { do: 'material', id: 'cloth', set: { width: 8000 }, now });
  expect(done).toEqual({ state, refused: { why: 'not there', what: 'work' } });
  const twice = garment({}, { n1: { kind: 'other' } });
  const again = act(twice, { do: 'material', id: 'n1', add: { kind: 'tape' }, now });
  expect(again.refused).toEqual({ why: 'id taken' });
});

test('a backup carries it, and a copy begins with nothing bought', async () => {
  const cloth = { width: 8000, there: 16_000, later: 'kept' };
  const { record } = garment({ a: cut('40', '60', '1') }, { cloth, y: 7 });
  const found = readBackup(writeBackup([record]));
  expect(found).toMatchObject({ ok: true });
  expect(JSON.stringify(found)).toContain(JSON.stringify(record.materials));
  const copy = copyAsNewStart(record, 'other', 'Second', now);
  expect(copy.materials).toEqual({ cloth: { width: 8000, later: 'kept' }, y: 7 });
  expect(materialsIn(record).said.get('cloth')).toBe(cloth);
});

test('a restore tells by name which materials would come, change and be lost', () => {
  const of = (materials: Readonly<Record<string, unknown>>) => garment({}, materials).record;
  const here = of({
    n1: { kind: 'tape', name: 'Elastic' },
    n2: { name: 'Zip' },
    cloth: { width: 8 },
  });
  const there = of({ n2: { name: 'Zip', there: 1 }, n3: { name: 'Thread' } });
  expect(previewOf(here, there, false)).toMatchObject({
    ...{ state: 'differs', added: ['Thread'], changed: ['Zip'], lost: ['Elastic'] },
  });
});

test('handed on it is without what was paid and what is there, unless another goes on with it', () => {
  const cloth = { width: 8000, there: 16_000, price: { cents: 1250, per: 8_000_000 }, later: 'x' };
  const state = garment({ a: cut('40', '60', '1') }, { cloth });
  const wish = { bodies: false, notes: false, times: false, goOn: false, knownOnly: false };
  const handed = (set: Partial<typeof wish>) =>
    sharedGarment(state, { ...wish, ...set }, 'other', () => '').materials;
  expect(handed({})).toEqual({ cloth: { width: 8000, later: 'x' } });
  expect(handed({ knownOnly: true })).toEqual({ cloth: { width: 8000 } });
  const { later: _, ...known } = cloth;
  expect(handed({ goOn: true, knownOnly: true })).toEqual({ cloth: known });
});
