import { expect, test } from 'vitest';
import { isLink, LONGEST_LINK, linkOf, readLink } from '../../src/app/garment/share-link.ts';
import { act } from '../../src/garment/actions/act.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { writeBackup } from '../../src/garment/backup/backup.ts';
import { readBackup } from '../../src/garment/backup/read-backup.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Garment } from '../../src/garment/record/record.ts';
import { asOwn, isHanded, readHanded } from '../../src/garment/share/read-shared.ts';
import { type ShareWish, sharedGarment } from '../../src/garment/share/shared.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { randomGarment } from './trial/random-garment.ts';
import { HOOKS, waistcoat } from './trial/waistcoat.ts';

const LEAST: ShareWish = {
  ...{ bodies: false, notes: false, times: false, goOn: false },
  knownOnly: true,
};
const say = (_: string, __: string, numbers: readonly number[]) =>
  `was made ${numbers.map((one) => one / 80_000).join(' · ')}`;

/** The front edge is a measure of someone's body, measured on Monday; something of it is noted. */
const WORN: Garment = {
  ...garmentOf({
    quantities: {
      ...waistcoat.quantities,
      front: { name: 'Front of Ada', kind: 'length', rank: 1, parts: typed('46.3'), body: true },
      sum: {
        name: 'Front and more',
        kind: 'length',
        rank: 3,
        parts: [quantity('front'), ...typed(' + 2')],
      },
    },
    works: waistcoat.works,
  }),
  notes: { [homeOf('hooks')]: { text: 'For Ada', photo: 'p1' } },
  changed: 1_700_000_000_000,
  ...{ secret: 'of a newer app' },
};

const hooked = (): State =>
  act(begin(WORN, KNOWN), {
    ...{ do: 'make', home: HOOKS, id: 'f1', tape: 8000, now: 1_700_000_000_001 },
    measured: mm(12),
  } as const).state;
const shared = (wish: Partial<ShareWish> = {}, state = hooked()) =>
  sharedGarment(state, { ...LEAST, ...wish }, 'new', say);

test('body measures, their names, notes, photos, times and what a newer app wrote stay behind', () => {
  const garment = shared();
  const text = JSON.stringify(garment);
  for (const said of ['Ada', 'p1', '17000000000', 'secret', 'front"']) {
    expect(text, said).not.toContain(said);
  }
  expect(garment.shared).toEqual({ bodies: 1, typed: 2, notes: 1, photos: 1, facts: 1 });
});

test('what hung on a measure left out is typed, with its value of today', () => {
  const { works, quantities } = shared();
  const hooks = works.hooks as { fields: Record<string, unknown> };
  expect(hooks.fields.opening).toEqual([{ text: '46.3 cm', unit: 'cm' }]);
  const sum = quantities.sum as { parts: unknown };
  expect(sum.parts).toEqual([{ text: '46.3 cm', unit: 'cm' }, ...typed(' + 2')]);
  const before = hooked().answer.values.get(HOOKS);
  const after = begin(shared({ goOn: true }), KNOWN).answer.values.get(HOOKS);
  expect(after?.ok && after.value).toEqual(before?.ok && before.value);
});

test('what is made travels as a note, or as made where another is to go on', () => {
  const noted = shared();
  expect(noted.facts).toEqual({});
  expect(noted.notes).toEqual({ [HOOKS]: { text: 'was made 1.2' } });
  const goOn = shared({ goOn: true });
  expect(Object.values(goOn.facts)).toMatchObject([{ home: HOOKS, measured: mm(12), when: 0 }]);
  expect(goOn.notes).toBeUndefined();
});

test('what is ticked goes along', () => {
  const all = shared({ bodies: true, notes: true, times: true, goOn: true });
  expect(all.quantities).toMatchObject({ front: { name: 'Front of Ada', body: true } });
  expect(all.notes).toEqual({ [homeOf('hooks')]: { text: 'For Ada' } });
  expect(all.changed).toBe(1_700_000_000_001);
  expect(all.shared).toMatchObject({ bodies: 0, typed: 0, notes: 0, photos: 1, facts: 0 });
});

test('a file holds what a newer app wrote, a link doesn’t', () => {
  expect(shared({ knownOnly: false })).toHaveProperty('secret');
});

test('a number being typed does not go along', () => {
  const typing = act(hooked(), {
    ...{ do: 'type', place: { quantity: 'armhole' }, parts: typed('99'), now: 1 },
  } as const).state;
  expect(JSON.stringify(shared({}, typing))).not.toContain('99');
});

test('a link holds all of it after the #, and opens as it was', async () => {
  const garment = shared();
  const link = await linkOf(garment);
  expect(link).toMatch(/^#\/garments\/receive\/1\.d\.[0-9a-f]{8}\.[\w-]+$/);
  expect(isLink(link)).toBe(true);
  expect(link.length).toBeLessThan(LONGEST_LINK);
  const read = await readLink(link);
  const { shared: left, ...rest } = garment;
  expect(read).toEqual({ ok: true, handed: { garment: rest, left } });
});

test('of any garment the link opens as the same, and the file, too', async () => {
  for (let seed = 1; seed <= 26; seed++) {
    const state = begin(randomGarment(seed), KNOWN);
    const garment = sharedGarment(state, { ...LEAST, goOn: seed % 2 === 0 }, 'new', say);
    const read = await readLink(await linkOf(garment));
    if (!read.ok) throw new Error(read.fault);
    expect({ ...read.handed.garment, shared: read.handed.left }).toEqual(
      JSON.parse(JSON.stringify(garment)),
    );
    const file = readBackup(writeBackup([garment]));
    if (!file.ok) throw new Error(file.fault);
    const [only] = file.garments;
    if (!only) throw new Error('no garment');
    expect(isHanded(only)).toBe(true);
    expect(readHanded(only)).toEqual(read);
    expect(file.damaged.size).toBe(0);
    const own = asOwn(read.handed, 'own', 7);
    expect(own).toMatchObject({ id: 'own', changed: 7, edits: 1 });
    expect(() => begin(own, KNOWN)).not.toThrow();
  }
});

test('the pattern of a cloth and its repeat go along, by link, file and backup; a lay is found again', async () => {
  const cloth = { width: mm(1400), repeat: mm(240), shrinksAlong: 500 };
  const lays = { cloth: { nap: true, gap: mm(10), found: { length: 1 } } };
  const state = begin({ ...waistcoat, materials: { cloth }, lays }, KNOWN);
  const garment = shared({}, state);
  const link = await readLink(await linkOf(garment));
  const file = readBackup(writeBackup([garment]));
  const backup = readBackup(writeBackup([state.record]));
  if (!link.ok || !file.ok || !backup.ok) throw new Error('not read');
  const own = [link.handed.garment, file.garments[0], backup.garments[0]];
  expect(own.map((one) => one?.materials)).toEqual([{ cloth }, { cloth }, { cloth }]);
  expect(link.handed.garment.lays).toEqual({ cloth: { nap: true, gap: mm(10) } });
  expect(backup.garments[0]?.lays).toEqual(lays);
});

test('where the browser packs nothing the link is longer, and opens all the same', async () => {
  const packs = globalThis.CompressionStream;
  try {
    Reflect.deleteProperty(globalThis, 'CompressionStream');
    const link = await linkOf(shared());
    expect(link).toContain('/1.p.');
    expect((await readLink(link)).ok).toBe(true);
  } finally {
    globalThis.CompressionStream = packs;
  }
});

test('a link of a newer app says so, in its form or in its record', async () => {
  expect(await readLink('#/garments/receive/2.zstd.what.ever')).toEqual({
    ok: false,
    fault: 'newer',
  });
  const newer = { ...shared(), version: 4 } as unknown as ReturnType<typeof shared>;
  expect(await readLink(await linkOf(newer))).toEqual({ ok: false, fault: 'newer' });
});
