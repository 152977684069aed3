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
import type { Outputs } from '../../src/calculation/output.ts';
import { heldOf } from '../../src/calculation/page.ts';
import { CALCULATIONS, OUTPUTS } from '../../src/calculations/list.ts';
import { withKeys } from '../../src/garment/actions/with-keys.ts';
import { readBackup } from '../../src/garment/backup/read-backup.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { listedOf } from '../../src/garment/record/listed.ts';
import { readRecord } from '../../src/garment/record/read-record.ts';
import type { Fact, Garment, Work } from '../../src/garment/record/record.ts';
import { soundOf } from '../../src/garment/record/sound.ts';
import type { Known } from '../../src/garment/work-out/seen-work.ts';
import { workOut } from '../../src/garment/work-out/work-out.ts';
import { loadList } from '../../src/storage/garment-list.ts';
import { changeGarment } from '../../src/storage/garments.ts';
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

/** Everything that was kept is a work, or a quantity, whose calculation knows every field of it. */
async function expectWhole(garment: Garment, written: Second) {
  const known = await knownOf(garment);
  const whole = withKeys(garment, known);
  const { unsound, works, quantities } = soundOf(whole);
  expect(unsound).toEqual([]);
  const calculations = [...works.values()].map(({ calculation }) => calculation);
  const lengths = [...quantities.keys()].map(() => 'convert');
  const asked = [...written.kept, ...(written.takenOff ?? [])].map((one) => one.calculation);
  expect([...lengths, ...calculations].sort()).toEqual([...asked].sort());
  for (const work of works.values()) expect(work).not.toHaveProperty('older');
  const answer = workOut(whole, known);
  // What an option takes away is no fault.
  const faults = [...answer.values].filter(
    ([, result]) => !result.ok && result.trouble.kind !== 'absent',
  );
  expect(faults).toEqual([]);
}

interface Second {
  kept: readonly { calculation: string }[];
  takenOff?: readonly { calculation: string }[];
}

async function knownOf({ works }: Garment): Promise<Known> {
  const ids = new Set(Object.values(works).map((work) => (work as Work).calculation));
  const known = await Promise.all(
    [...ids].map(async (id) => [id, (await OUTPUTS[id]?.()) as Outputs] as const),
  );
  return new Map(known);
}

describe.each(builds)('what $commit kept', (build) => {
  const written = build.records.flatMap(([key, record]) =>
    key.startsWith('garment:') ? [record as Second] : [],
  );

  test('is listed, and read whole', async () => {
    const store = await phoneOf(build);
    const list = await loadList(store);
    expect(list.setAside).toEqual([]);
    expect(list.garments.map(({ name }) => name)).toEqual(['Invented coat']);
    const { garments } = await loadGarments(store);
    for (const [i, garment] of garments.entries()) {
      await expectWhole(garment, written[i] ?? { kept: [] });
    }
  });

  test('holds what was measured, at the mark it was measured at', async () => {
    const [garment] = (await loadGarments(await phoneOf(build))).garments;
    const whole = withKeys(garment as Garment, await knownOf(garment as Garment));
    const facts = Object.values(whole.facts) as Fact[];
    const [id] = Object.entries(whole.works).find(
      ([, work]) => (work as Work).calculation === 'closures',
    ) ?? [''];
    const hooks = facts.filter(({ home }) => home === homeOf(id, '', 'marks'));
    expect(hooks).toMatchObject([{ measured: 156 * 8000, mark: { rank: 2, of: 7 } }]);
  });

  test('is written as version 3 once it is changed, and says the same', async () => {
    const store = await phoneOf(build);
    const [garment] = (await loadGarments(store)).garments as [Garment];
    const known = await knownOf(garment);
    const { record } = await changeGarment(store, garment.id, ({ record: old, log }) => ({
      record: withKeys(old, known),
      log,
    }));
    const raw = await store.load(`garment:${garment.id}`);
    expect(raw).toEqual(record);
    expect(raw).toMatchObject({ version: 3, edits: garment.edits });
    await expectWhole(readBack(raw), written[0] ?? { kept: [] });
    expect((await loadList(store)).garments).toMatchObject([listedOf(record)]);
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
  test('is read whole, and every calculation of it works out', async () => {
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
    const written = JSON.parse(fixtureText(name)) as { garments: Second[] };
    for (const [i, garment] of garments.entries()) {
      await expectWhole(garment, written.garments[i] ?? { kept: [] });
    }
  });
});

function readBack(raw: unknown): Garment {
  const read = readRecord(raw);
  if (!read.ok) throw new Error(JSON.stringify(read.damage));
  return read.value;
}
