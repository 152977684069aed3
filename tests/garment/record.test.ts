import { describe, expect, test } from 'vitest';
import { act } from '../../src/garment/actions/act.ts';
import { begin } from '../../src/garment/actions/state.ts';
import { withKeys } from '../../src/garment/actions/with-keys.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { MOST_WORKS } from '../../src/garment/record/limits.ts';
import { readRecord } from '../../src/garment/record/read-record.ts';
import type { Garment, Work } from '../../src/garment/record/record.ts';
import { soundOf } from '../../src/garment/record/sound.ts';
import { workOut } from '../../src/garment/work-out/work-out.ts';
import type { Run } from '../../src/sewing/run.ts';
import { garmentOf, output, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const CM = 80_000;
const MARKS = homeOf('hooks', '', 'marks');

/** As the first version wrote it: a measure without its unit among what was typed. */
const FIRST = {
  version: 1,
  id: 'g1',
  name: 'Coat (invented)',
  invented: false,
  changed: 5,
  kept: [
    {
      id: 'hooks',
      name: 'Hooks',
      stage: 'close',
      calculation: 'closures',
      draft: { u: 'cm', opening: '46.3', count: '7', top: '1.2', bottom: '2.5', made: '3=15.6' },
      planned: {
        1: 1.2 * CM,
        2: 8.3 * CM,
        3: 15.4 * CM,
        4: 22.5 * CM,
        5: 29.6 * CM,
        6: 36.7 * CM,
        7: 43.8 * CM,
      },
    },
  ],
};

/** As the second wrote it, spaced anew around three: their places stand in the field and in what is made. */
const SECOND = {
  version: 2,
  id: 'g2',
  name: 'Waistcoat (invented)',
  invented: true,
  changed: 7,
  edits: 3,
  kept: [
    {
      id: 'hooks',
      name: 'Hooks',
      stage: 'close',
      calculation: 'closures',
      draft: {
        u: 'cm',
        opening: '46.3',
        count: '7',
        top: '1.2',
        bottom: '2.5',
        by: 'count',
        sewn: '1.2 cm; 8.3 cm; 15.8 cm',
      },
      runs: [
        {
          planned: {
            1: 1.2 * CM,
            2: 8.3 * CM,
            3: 15.4 * CM,
            4: 22.8 * CM,
            5: 29.8 * CM,
            6: 36.8 * CM,
            7: 43.8 * CM,
          },
          made: { 1: '', 2: '', 3: '15.8 cm' },
        },
      ],
    },
    {
      id: 'edge',
      name: 'Front edge',
      stage: 'measure',
      calculation: 'convert',
      draft: { u: 'in', length: '18 1/4' },
      runs: [],
    },
  ],
  takenOff: [
    {
      id: 'pocket',
      name: 'Pocket',
      stage: 'cut',
      calculation: 'lattice',
      draft: { depth: '3' },
      runs: [],
    },
  ],
};

const DRAFTS = {
  closures: { opening: '46.3', count: '7', top: '1.2', bottom: '2.5' },
  crossing: { pitch: '0.8', width: '2', upperPitch: '1.1', upperWidth: '2', upperPhase: '0.3' },
} as const;

/** A record of the second version: planned as its draft says, with what was made under labels of before. */
function madeBefore(
  calculation: keyof typeof DRAFTS,
  changed: object,
  made: Readonly<Record<string, string | undefined>>,
) {
  const draft = { u: 'cm', ...DRAFTS[calculation], ...changed };
  const kept = { id: 'x', name: 'Row', stage: 'edge', calculation, draft };
  const record = { ...SECOND, takenOff: [] };
  const bare = withKeys(read({ ...record, kept: [{ ...kept, runs: [] }] }), KNOWN);
  const key = calculation === 'closures' ? 'marks' : 'holes';
  const row = workOut(bare, KNOWN).values.get(homeOf('x', '', key));
  if (!row?.ok || typeof row.value === 'number') throw new Error(JSON.stringify(row));
  const planned = Object.fromEntries(
    row.value.marks.map(({ at }, i) => [String(i + 1), Math.round(at)]),
  );
  return { ...record, kept: [{ ...kept, runs: [{ planned, made }] }] };
}

function read(record: unknown): Garment {
  const found = readRecord(record);
  if (!found.ok) throw new Error(JSON.stringify(found.damage));
  return found.value;
}

function placesAt(garment: Garment, home: string): number[] {
  const result = workOut(garment, KNOWN).values.get(home);
  if (!result?.ok) throw new Error(JSON.stringify(result));
  return (result.value as Run).marks.map(({ at }) => Math.round(at / 800) / 100);
}

describe('of older versions', () => {
  test('the first: a measure is a fact of its mark, with its unit', () => {
    const garment = withKeys(read(FIRST), KNOWN);
    expect(garment).toMatchObject({ version: 3, id: 'g1', edits: 1 });
    expect(Object.values(garment.facts)).toMatchObject([
      { home: MARKS, measured: 15.6 * CM, plan: 15.4 * CM, mark: { rank: 2, of: 7 } },
    ]);
    expect(placesAt(garment, MARKS)[2]).toBe(15.6);
  });

  test('the second: what stood twice stands once, and the rest is where it was spaced', () => {
    const garment = withKeys(read(SECOND), KNOWN);
    const hooks = garment.works.hooks as Work;
    expect(hooks.fields.sewn).toEqual(typed(''));
    expect(hooks.fields.opening).toEqual(typed('46.3'));
    expect(hooks.older).toBeUndefined();
    // As it begins, in the unit of what is beside it.
    expect(hooks.fields.setBack).toEqual(typed('1/8 in'));
    expect(placesAt(garment, MARKS)).toEqual([1.2, 8.3, 15.8, 22.8, 29.8, 36.8, 43.8]);
    const { conflicts } = workOut(garment, KNOWN);
    expect(conflicts.map(({ home }) => home)).toEqual([MARKS]);
  });

  test.each([
    // Seven hooks of which the last was made, then eight; then six. Of a crossing of two strips 2 cm
    // wide the last of two new holes was punched; a wider one has four, two of them level with it.
    ['closures', { count: '8' }, { '7': '43.8 cm' }, [43.8, 7, 8]],
    ['closures', { count: '6' }, { '7': '43.8 cm' }, [43.8, 5, 6]],
    ['closures', { count: '8' }, { '1': '', '7': '43.8 cm' }, [43.8, 7, 8]],
    ['crossing', { width: '3' }, { '1': '', '2': '1.3 cm' }, [1.3, 2, 4]],
    ['crossing', { width: '3' }, { '2': '1.3 cm' }, [1.3, 2, 4]],
  ] as const)(
    'the second: %s with %o made as %o: no ghost, and what is made is where it was made',
    (calculation, changed, made, [at, rank, of]) => {
      const garment = withKeys(read(madeBefore(calculation, changed, made)), KNOWN);
      const answer = workOut(garment, KNOWN);
      const home = homeOf('x', '', calculation === 'closures' ? 'marks' : 'holes');
      const row = answer.values.get(home);
      if (!row?.ok || typeof row.value === 'number') throw new Error(JSON.stringify(row));
      expect(Object.values(garment.facts).at(-1)).toMatchObject({ mark: { rank, of } });
      expect(row.value.marks.map((mark) => mark.at / CM)[rank]).toBeCloseTo(at, 6);
      expect(row.value.marks).toHaveLength(of);
      // Nothing of what is still to come lies where it is made.
      const level = row.value.marks.filter((mark) => Math.abs(mark.at / CM - at) < 0.05);
      expect(new Set(level.map(({ across }) => across)).size).toBe(level.length);
      expect(answer.conflicts).toEqual([]);
    },
  );

  test('a length kept for itself is a quantity, no link is invented, what is off stays off', () => {
    const garment = read(SECOND);
    expect(garment.quantities).toEqual({
      edge: { name: 'Front edge', kind: 'length', rank: 2, parts: typed('18 1/4', 'in') },
    });
    expect(JSON.stringify(garment)).not.toContain('"link"');
    expect(garment.works.pocket).toMatchObject({ off: true, calculation: 'lattice' });
  });

  test('until their calculation is known runs keep their place, and their facts are shown', () => {
    const garment = read(SECOND);
    expect(withKeys(garment, new Map([['closures', 'awaited']]))).toBe(garment);
    const answer = workOut(garment, new Map([['closures', 'awaited']]));
    expect(answer.earlier).toHaveLength(3);
    expect(answer.troubles).toMatchObject([{ work: 'hooks', why: 'awaited' }]);
  });

  test('once and for all', () => {
    const garment = withKeys(read(SECOND), KNOWN);
    expect(read(JSON.parse(JSON.stringify(garment)))).toEqual(garment);
    expect(withKeys(garment, KNOWN)).toBe(garment);
  });
});

test('what is newer is kept and written back, and what hangs on it waits', () => {
  const work = { name: 'Braid', calculation: 'braiding', rank: 1, fields: { strands: typed('3') } };
  const hem = {
    name: 'Hem',
    calculation: 'toy-hem',
    rank: 2,
    fields: { depth: [output('braid', 'width')] },
  };
  const record = { ...garmentOf({ works: { braid: work, hem } }), newer: { some: 'thing' } };
  const garment = read(JSON.parse(JSON.stringify(record)));
  expect(garment).toEqual(record);
  const answer = workOut(garment, KNOWN);
  expect(answer.troubles).toEqual([{ work: 'braid', why: 'newer', unknown: [] }]);
  expect(answer.values.get(homeOf('hem', '', 'allowance'))).toMatchObject({
    trouble: { kind: 'waits', for: homeOf('braid', '', 'width'), gone: { why: 'newer' } },
  });
});

test('an option no build up to this one knows is a problem of the whole work, never the first instead', () => {
  const fields = { depth: typed('2'), turned: typed('thrice') };
  const hem = { name: 'Hem', calculation: 'toy-hem', rank: 1, fields };
  const answer = workOut(garmentOf({ works: { hem } }), KNOWN);
  expect(answer.values.size).toBe(0);
  expect(answer.troubles).toMatchObject([{ why: 'newer', unknown: [{ field: 'turned' }] }]);
});

test('what is damaged is said, stays as it is, and takes nothing else away', () => {
  const fine = { name: 'Edge', kind: 'length', rank: 1, parts: typed('12') };
  const garment = garmentOf({
    quantities: { fine, bad: { kind: 'colour' } },
    works: { bad: { ...fine }, worse: 7 },
    facts: { f: { home: 'fine||', shown: 'x' } },
  });
  const { unsound, quantities } = soundOf(garment);
  expect(unsound.map(({ part, id }) => `${part} ${id}`)).toEqual([
    'quantity bad',
    'work bad',
    'work worse',
    'fact f',
  ]);
  expect([...quantities.keys()]).toEqual(['fine']);
});

test('no garment at all, or one that holds together no more, is told', () => {
  expect(readRecord(7)).toEqual({ ok: false, damage: { kind: 'not-a-garment' } });
  expect(readRecord({ version: 4 })).toEqual({ ok: false, damage: { kind: 'newer', version: 4 } });
  expect(readRecord({ ...garmentOf({}), works: [] })).toEqual({
    ok: false,
    damage: { kind: 'damaged', part: 'works' },
  });
});

test('one work more than a garment holds is refused before anything is written', () => {
  const works = Object.fromEntries(
    Array.from({ length: MOST_WORKS }, (_, i): [string, Work] => [
      `w${i}`,
      { name: 'x', calculation: 'lattice', rank: i, fields: {} },
    ]),
  );
  const state = begin(garmentOf({ works }), KNOWN);
  const it = { name: 'x', calculation: 'toy-hem', rank: 9, fields: {} };
  const done = act(state, { do: 'add', to: 'works', id: 'more', it, now: 2 });
  expect(done).toEqual({ state, refused: { why: 'limit', limit: 'works' } });
  const long = [{ text: 'x'.repeat(1_000_000), unit: 'cm' as const }];
  const place = { work: 'w1', field: 'depth' };
  expect(act(state, { do: 'type', place, parts: long, now: 2 }).refused).toEqual({
    why: 'limit',
    limit: 'size',
  });
});
