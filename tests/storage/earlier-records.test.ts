/**
 * What earlier builds kept on a phone and wrote into backups, as it was: the whole store of a
 * browser in which each build was used, and the files it handed over (`tests/fixtures`, by the
 * commit of the build; all invented). Records of the first and the second version are among them.
 */
import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import { loadLast, openingDraft } from '../../src/app/start/last.ts';
import { readRoute } from '../../src/app/start/route.ts';
import { checkBench } from '../../src/app/start/settings.ts';
import { heldOf } from '../../src/calculation/page.ts';
import { CALCULATIONS } from '../../src/calculations/list.ts';
import type { Garment } from '../../src/garment/garment.ts';
import { draftFor, marksOf } from '../../src/garment/plan.ts';
import { readBackup } from '../../src/garment/read-backup.ts';
import { loadList } from '../../src/storage/garment-list.ts';
import { openStore } from '../../src/storage/store.ts';
import { fixture, fixtures, fixtureText } from '../fixtures/fixture.ts';
import { loadGarments } from './all-garments.ts';

interface Build {
  commit: string;
  records: readonly (readonly [key: string, record: unknown])[];
}

const builds = fixtures('store-').map((name) => fixture<Build>(name));
const bench = checkBench(undefined);

/** A phone on which a build was used, opened by this one. */
async function phoneOf({ commit, records }: Build) {
  const store = openStore(`of-${commit}`);
  for (const [key, record] of records) await store.change(key, () => record);
  return store;
}

/** What had no marks when it was kept, and has some now: by the commit that gave it some. */
const MARKS_SINCE: Readonly<Record<string, string>> = {
  crossing: 'f95a6bb: the new holes of a crossing are a run of marks',
};

/** Everything kept gives an answer, whose marks are where they were planned. */
async function expectSamePlans({ kept }: Garment) {
  for (const one of kept) {
    const calculation = await CALCULATIONS[one.calculation]?.();
    if (!calculation) throw new Error(`no ${one.calculation} any more`);
    const work = calculation.work(draftFor(calculation, one, bench).draft, bench);
    if (!work.ok) throw new Error(`${one.calculation} gives no answer any more`);
    const now = work.answer.runs.map((named) =>
      Object.fromEntries(marksOf(named).map(({ label, at }) => [label, Math.round(at)])),
    );
    const planned = one.runs.map((run) =>
      Object.fromEntries(Object.entries(run.planned).map(([label, at]) => [label, Math.round(at)])),
    );
    if (!planned.some(hasAny) && MARKS_SINCE[one.calculation] !== undefined) continue;
    expect(now.filter(hasAny), one.calculation).toEqual(planned.filter(hasAny));
  }
}
const hasAny = (marks: object) => Object.keys(marks).length > 0;

describe.each(builds)('what $commit kept', (build) => {
  test('is listed, and read whole', async () => {
    const store = await phoneOf(build);
    const list = await loadList(store);
    expect(list.setAside).toEqual([]);
    expect(list.garments.map(({ name }) => name)).toEqual(['Invented coat']);
    const { garments } = await loadGarments(store);
    const written = build.records.flatMap(([key, record]) =>
      key.startsWith('garment:') ? [record as { kept: readonly { calculation: string }[] }] : [],
    );
    const ids = (all: readonly { kept: readonly { calculation: string }[] }[]) =>
      all.map(({ kept }) => kept.map(({ calculation }) => calculation));
    expect(ids(garments)).toEqual(ids(written));
    for (const garment of garments) await expectSamePlans(garment);
  });

  test('holds what was measured', async () => {
    const { garments } = await loadGarments(await phoneOf(build));
    const closures = garments[0]?.kept.find(({ calculation }) => calculation === 'closures');
    expect(closures?.runs[0]?.made).toEqual({ '3': '15.6 cm' });
  });

  test('opens with what was typed last', async () => {
    const last = await loadLast(await phoneOf(build));
    expect(Object.keys(last).length).toBeGreaterThan(0);
    for (const [id, query] of Object.entries(last)) {
      const calculation = await CALCULATIONS[id]?.();
      if (!calculation) throw new Error(`no ${id} any more`);
      const state = openingDraft(calculation, {}, query, bench);
      expect(heldOf(state)).toMatchObject({ ...readRoute(`#/${id}?${query}`).draft });
      expect(calculation.work(state.draft, bench).ok, `${id} ${query}`).toBe(true);
    }
  });
});

describe.each(fixtures('backup-'))('%s', (name) => {
  test('is read whole, and every calculation of it gives its marks', async () => {
    const read = readBackup(fixtureText(name));
    if (!read.ok) throw new Error(read.fault);
    const { rejected, damaged, lacks, garments, setAside } = read;
    expect({ rejected, damaged: [...damaged], lacks }).toEqual({
      rejected: [],
      damaged: [],
      lacks: undefined,
    });
    expect(garments.map((one) => one.name)).toEqual(['Invented coat']);
    expect(setAside.map(({ key }) => key)).toEqual(name.includes('aside') ? ['garment:bad'] : []);
    for (const garment of garments) await expectSamePlans(garment);
  });
});
