import { expect, test } from 'vitest';
import { readRecord } from '../../src/garment/record/read-record.ts';
import type { Fact, Garment, Work } from '../../src/garment/record/record.ts';

const CM = 80_000;
const MM = 8000;

/** What the second version kept of a calculation; invented. */
const kept = (more: object = {}) => ({
  ...{ id: 'hooks', name: 'Hooks', stage: 'close', calculation: 'closures' },
  ...{ draft: { u: 'cm', opening: '46.3' }, runs: [] },
  ...more,
});
function read(all: readonly object[], takenOff: readonly object[] = []): Garment {
  const record = { version: 2, id: 'g', name: 'Coat', invented: false, changed: 7, edits: 3 };
  const found = readRecord({ ...record, kept: all, takenOff });
  if (!found.ok) throw new Error(JSON.stringify(found.damage));
  return found.value;
}
const madeOf = (planned: object, made: object) => {
  const { facts, begun } = read([kept({ runs: [{ planned, made }] })]);
  return { facts: Object.values(facts) as (Fact & { said?: string })[], begun };
};
const HOME = 'hooks||#0';

test('every calculation is a work, in the order and with the stage it had', () => {
  const { works, quantities, facts, begun } = read(
    [kept({ id: 'a' }), kept({ id: 'b|c', stage: 'cut' })],
    [kept({ id: 'd', calculation: 'convert' })],
  );
  const work = {
    ...{ name: 'Hooks', calculation: 'closures', older: 2 },
    fields: { opening: [{ text: '46.3', unit: 'cm' }] },
  };
  expect(works).toEqual({
    a: { ...work, rank: 1, stage: 'close' },
    'b/c': { ...work, rank: 2, stage: 'cut' },
    // A length that was taken off is no number of the garment.
    d: { ...work, calculation: 'convert', rank: 3, stage: 'close', off: true },
  });
  expect([quantities, facts, begun]).toEqual([{}, {}, {}]);
});

test('of one id none is lost, however many there are, and however long it is', () => {
  for (const id of ['k', 'k'.repeat(80)]) {
    const off = Array.from({ length: 200 }, (_, i) => kept({ id, name: `Off ${i}` }));
    const length = kept({ id, calculation: 'convert', draft: { length: '3' } });
    const { works, quantities } = read([length], off);
    expect(Object.keys(quantities)).toEqual([id]);
    const names = Object.values(works).map((work) => (work as Work).name);
    expect(new Set(names).size).toBe(200);
    expect(Object.keys(works)).not.toContain(id);
    for (const own of Object.keys(works)) expect(own.length).toBeLessThanOrEqual(80);
  }
  // Read again, from a backup, each has the id it had.
  const { works } = read([kept()], [kept(), kept()]);
  expect(Object.keys(works)).toEqual(['hooks', 'hooks+2', 'hooks+3']);
});

test('what is bare is in the unit of what is beside it, and else in that of a new bench', () => {
  const units = ({ works }: Garment) =>
    (works.hooks as Work).fields.opening?.map((part) => 'unit' in part && part.unit);
  expect(units(read([kept({ draft: { u: 'in', opening: '18' } })]))).toEqual(['in']);
  expect(units(read([kept({ draft: { opening: '18' } })]))).toEqual(['cm']);
});

test.each([
  ['1.2 cm; 8.3 cm; 15.8 cm', { 1: '', 3: '15.8 cm' }, '8.3 cm'],
  // Within half a millimetre it is the same place, and each place stands for one.
  ['1.25 cm; 1.2 cm', { 1: '' }, '1.2 cm'],
  ['1.26 cm', { 1: '' }, '1.26 cm'],
  ['at the dart; 8.3 cm', { 1: '' }, 'at the dart; 8.3 cm'],
  ['8.3 cm', { 1: 'at the dart' }, '8.3 cm'],
  ['8.3', { 2: '' }, ''],
])('sewn as %s and made as %o, it stands once', (sewn, made, left) => {
  const planned = { 1: 1.2 * CM, 2: 8.3 * CM, 3: 15.4 * CM };
  const draft = { u: 'cm', sewn, top: sewn };
  const { fields } = read([kept({ draft, runs: [{ planned, made }] })]).works.hooks as Work;
  expect(fields.sewn).toEqual([{ text: left, unit: 'cm' }]);
  expect(fields.top).toEqual([{ text: sewn, unit: 'cm' }]);
});

test('a mark that is made is one of those planned by where it lies, whatever it is called', () => {
  const planned = { 2: 8 * CM, 1: CM, 3: 12 * CM };
  const { facts, begun } = madeOf(planned, { 3: '', 1: '1.4 cm', 2: '8 cm' });
  const stood = { home: HOME, tape: MM, rule: 1, read: '', when: 7 };
  expect(facts).toEqual([
    {
      ...{ ...stood, shown: CM, plan: CM, measured: 1.4 * CM },
      mark: { rank: 0, of: 3, asked: CM },
    },
    { ...stood, shown: 8 * CM, plan: 8 * CM, mark: { rank: 1, of: 3, asked: 8 * CM } },
    { ...stood, shown: 12 * CM, plan: 12 * CM, mark: { rank: 2, of: 3, asked: 12 * CM } },
  ]);
  expect(begun).toEqual({
    [HOME]: {
      ...{ count: 3, by: {} },
      points: [
        [0, 1.4 * CM],
        [1, 8 * CM],
        [2, 12 * CM],
      ],
    },
  });
});

const ranks = (planned: object, made: object) =>
  madeOf(planned, made).facts.map(({ mark, measured, shown }) => [
    mark?.rank,
    mark?.of,
    (measured ?? shown) / MM,
  ]);

test.each<[object, object, unknown]>([
  // Called otherwise, it lies where the second is planned, which nothing else is then.
  [{ 1: CM, 2: 8 * CM }, { 7: '8 cm' }, [[1, 2, 80]]],
  [
    { 1: CM, 2: 8 * CM },
    { 7: '8 cm', 8: '8 cm' },
    [
      [1, 3, 80],
      [2, 3, 80],
    ],
  ],
  // Its own place is another's by now.
  [{ 1: CM, 2: 8 * CM }, { 1: '8 cm' }, [[1, 2, 80]]],
  // That one is made itself: it stays the one it was, made elsewhere.
  [
    { 1: CM, 2: 8 * CM },
    { 1: '8 cm', 2: '' },
    [
      [0, 2, 80],
      [1, 2, 80],
    ],
  ],
  // Nothing is planned there: behind all others, in turn.
  [
    { 1: CM, 2: 8 * CM },
    { 8: '50 cm', 9: '60 cm' },
    [
      [2, 4, 500],
      [3, 4, 600],
    ],
  ],
  // Marks have names, too: they are in the order they lie in.
  [
    { waist: 8 * CM, top: CM },
    { waist: '', top: '' },
    [
      [0, 2, 10],
      [1, 2, 80],
    ],
  ],
  // Called as none is, it can lie where the first is planned, at nought; what isn't read lies nowhere.
  [{ 1: 0, 2: 8 * CM }, { 7: '0.3 mm' }, [[0, 2, 0.3]]],
  [{ 1: 0, 2: 8 * CM }, { 7: 'at the dart' }, [[2, 3, 0]]],
  // Half a millimetre off is still its own, though another is nearer.
  [{ 1: 0, 2: 7999 }, { 1: '0.5 mm' }, [[0, 2, 0.5]]],
  [{ 1: CM }, { 7: '1.05 cm' }, [[0, 1, 10.5]]],
  [{ 1: CM }, { 7: '1.06 cm' }, [[1, 2, 10.6]]],
])('planned at %o and made as %o', (planned, made, as) => {
  expect(ranks(planned, made)).toEqual(as);
});

test('of where it lies what is exact is kept, and what can’t be read as it was said', () => {
  const one = (at: number, typed: string) => madeOf({ 1: at }, { 1: typed }).facts[0];
  // A plan that is no whole unit, and measured just there.
  expect(one(15.4 * CM + 0.4, '15.4 cm')).toMatchObject({ shown: 15.4 * CM });
  expect(one(15.4 * CM + 0.4, '15.4 cm')).not.toHaveProperty('measured');
  expect(one(15.4 * CM + 0.6, '15.4 cm')).toMatchObject({ shown: 15.4 * CM });
  expect(one(15.4 * CM + 1, '15.4 cm')).toMatchObject({ measured: 15.4 * CM });
  expect(one(CM, '')).not.toHaveProperty('said');
  expect(one(CM, '1 cm')).not.toHaveProperty('said');
  const said = one(CM, 'at the dart');
  expect(said).toMatchObject({ said: 'at the dart', shown: CM, plan: CM });
  expect(said).not.toHaveProperty('measured');
  // Planned nowhere, and read nowhere.
  expect(madeOf({}, { 1: 'at the dart' }).facts).toMatchObject([
    { said: 'at the dart', shown: 0, plan: 0, mark: { rank: 0, of: 1, asked: 0 } },
  ]);
});

test('where nothing is made no row is begun; what lies behind all others is no mark of it', () => {
  expect(madeOf({ 1: CM }, {}).begun).toEqual({});
  const points = [
    [0, CM],
    [1, 8 * CM],
  ];
  for (const planned of [
    { 2: 8 * CM, 1: CM },
    { waist: 8 * CM, top: CM },
  ]) {
    const { begun } = madeOf(planned, { 9: '50 cm' });
    expect(begun[HOME]).toMatchObject({ count: 2, points });
  }
});
