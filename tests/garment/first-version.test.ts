import { expect, test } from 'vitest';
import { readBackup } from '../../src/garment/backup/read-backup.ts';
import { checkGarment } from '../../src/garment/check.ts';
import { UNITS_PER_MM } from '../../src/lengths/length.ts';

const CM = 10 * UNITS_PER_MM;

/** A record as the first version wrote it: a measure without its unit among what was typed. */
const first = (draft: Record<string, string>, planned: Record<string, number>) => ({
  version: 1,
  id: 'g',
  name: 'Coat',
  invented: false,
  changed: 5,
  kept: [{ id: 'k', name: 'Hooks', stage: 'close', calculation: 'closures', draft, planned }],
});

const runsOf = (record: unknown) => {
  const checked = checkGarment(record);
  if (!checked.ok) throw new Error(checked.damage.kind);
  return checked.value.kept[0]?.runs;
};

test('a bare measure of the first version gets the unit of what was typed beside it', () => {
  const planned = { '3': 15.4 * CM };
  expect(runsOf(first({ u: 'cm', made: '3=15.6; 5=30 1/8 in' }, planned))).toEqual([
    { planned, made: { '3': '15.6 cm', '5': '30 1/8 in' } },
  ]);
  expect(runsOf(first({ u: 'in', made: '3=6 1/8' }, planned))).toEqual([
    { planned, made: { '3': '6 1/8 in' } },
  ]);
});

test('where the unit isn’t known it is the one nearest to the plan, and without a plan it is left', () => {
  const planned = { '3': 15.4 * CM };
  expect(runsOf(first({ made: '3=156' }, planned))?.[0]?.made).toEqual({ '3': '156 mm' });
  expect(runsOf(first({ made: '3=15.6' }, planned))?.[0]?.made).toEqual({ '3': '15.6 cm' });
  expect(runsOf(first({ made: '3=6 1/8' }, planned))?.[0]?.made).toEqual({ '3': '6 1/8 in' });
  expect(runsOf(first({ made: '4=15.6' }, planned))?.[0]?.made).toEqual({ '4': '15.6' });
});

test('what is no measure of a mark is passed over, and what can’t be read stays as it was typed', () => {
  const planned = { '3': 15.4 * CM };
  const made = (typed: string) => runsOf(first({ made: typed }, planned))?.[0]?.made;
  expect(made(' 3 = 15.6 ; =4; 5=; 6 = ; x; xy; ;')).toEqual({ '3': '15.6 cm' });
  expect(made(' = 4')).toEqual({});
  expect(made('3=at the dart')).toEqual({ '3': 'at the dart' });
});

test('there is a run where marks are planned, or measured, and else none', () => {
  expect(runsOf(first({ u: 'cm' }, {}))).toEqual([]);
  expect(runsOf(first({ u: 'cm' }, { '1': CM }))).toEqual([{ planned: { '1': CM }, made: {} }]);
  expect(runsOf(first({ u: 'cm', made: '1=2' }, {}))).toEqual([
    { planned: {}, made: { '1': '2 cm' } },
  ]);
});

test('a record of the first version becomes one of this, once and for all', () => {
  const checked = checkGarment(first({ u: 'cm', count: '7', made: '3=15.6' }, {}));
  expect(checked).toMatchObject({
    ok: true,
    value: { version: 2, takenOff: [], edits: 1, kept: [{ draft: { u: 'cm', count: '7' } }] },
  });
  if (!checked.ok) return;
  // It is in the runs now, and in one place only.
  expect(checked.value.kept[0]?.draft).toEqual({ u: 'cm', count: '7' });
  expect(checkGarment(checked.value)).toEqual(checked);
});

test('a backup written by the first version is read', () => {
  const text = JSON.stringify({
    format: 'thumbrule backup',
    version: 1,
    garments: [first({ u: 'cm', made: '3=15.6' }, {})],
  });
  const read = readBackup(text);
  expect(read).toMatchObject({
    ok: true,
    garments: [{ version: 3 }],
  });
  // In 1/8000 mm.
  expect(read.ok && Object.values(read.garments[0]?.facts ?? {})).toMatchObject([
    { shown: 156 * UNITS_PER_MM, mark: { rank: 0, of: 1 } },
  ]);
});

test('a first record damaged in what was measured is set aside, not half read', () => {
  expect(checkGarment(first({ u: 'cm' }, { '3': Number.NaN }))).toEqual({
    ok: false,
    damage: { kind: 'damaged', part: 'kept', place: 1 },
  });
});
