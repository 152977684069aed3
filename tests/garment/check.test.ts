import { describe, expect, test } from 'vitest';
import { checkGarment } from '../../src/garment/check.ts';
import {
  type Garment,
  type Kept,
  LONGEST_NAME,
  MOST_KEPT,
  STAGES,
} from '../../src/garment/garment.ts';

const hooks: Kept = {
  id: 'k1',
  name: 'Hooks',
  stage: 'close',
  calculation: 'closures',
  draft: { opening: '46.3' },
  runs: [{ planned: { '3': 1_232_000 }, made: { '3': '15.6 cm' } }],
};
const coat: Garment = {
  ...{ version: 2, id: 'g1', name: 'Coat', invented: false, changed: 2, edits: 2 },
  kept: [hooks],
  takenOff: [],
};

/** The part that is damaged, `none`, or another reason. */
function partOf(read: unknown): string {
  const checked = checkGarment(read);
  if (checked.ok) return 'none';
  if (checked.damage.kind !== 'damaged') return checked.damage.kind;
  const { part, place } = checked.damage;
  return place === undefined ? part : `${part} ${place}`;
}
const withPart = (part: object) => partOf({ ...coat, ...part });
const withHooks = (part: object) => withPart({ kept: [{ ...hooks, ...part }] });
const many = <Value>(count: number, value: Value) =>
  Object.fromEntries(Array.from({ length: count }, (_, i) => [`${i + 1}`, value]));

test('what comes through is the garment as it was, in all its parts', () => {
  expect(checkGarment(coat)).toEqual({ ok: true, value: coat });
  const off = { ...coat, takenOff: [{ ...hooks, id: 'k0' }], changed: -5, edits: 0 };
  expect(checkGarment(off)).toEqual({ ok: true, value: off });
});

test.each([
  ['id', ['', '  ', 5, undefined]],
  ['name', ['', null, 'n'.repeat(LONGEST_NAME + 1)]],
  ['invented', ['no', 0, undefined]],
  ['changed', ['1', Number.NaN, Number.POSITIVE_INFINITY, undefined]],
  ['edits', [-1, '3', undefined, Number.NaN]],
  ['kept', ['no', {}, undefined]],
])('a record whose %s is of another kind is damaged in that part', (part, values) => {
  for (const value of values) expect(withPart({ [part]: value }), `${value}`).toBe(part);
});

test.each([
  [null],
  ['coat'],
  [[]],
  [5],
  [undefined],
  [{}],
  [{ version: 'two' }],
  [{ version: '3' }],
  [{ version: 0 }],
])('no garment: %j', (read) => {
  expect(partOf(read)).toBe('not-a-garment');
});

test('a newer version says so, whatever else is in it', () => {
  expect(checkGarment({ version: 3 })).toEqual({
    ok: false,
    damage: { kind: 'newer', version: 3 },
  });
});

test('what was taken off is checked too, and named', () => {
  expect(withPart({ takenOff: undefined })).toBe('taken-off');
  expect(withPart({ takenOff: [hooks, { ...hooks, id: 7 }] })).toBe('taken-off 2');
  // Taken off twice it may be: it was put back between.
  expect(withPart({ takenOff: [hooks, hooks] })).toBe('none');
});

describe('as much as may be in it, and not one more', () => {
  test('names, texts and fields', () => {
    expect(withPart({ name: 'n'.repeat(LONGEST_NAME) })).toBe('none');
    expect(withHooks({ draft: { opening: '1'.repeat(20_000) } })).toBe('none');
    expect(withHooks({ draft: { opening: '1'.repeat(20_001) } })).toBe('kept 1');
    expect(withHooks({ draft: many(100, '1') })).toBe('none');
    expect(withHooks({ draft: many(101, '1') })).toBe('kept 1');
  });

  test('runs and marks', () => {
    const run = (planned: object, made: object) => withHooks({ runs: [{ planned, made }] });
    expect(run(many(2000, 8), many(2000, ''))).toBe('none');
    expect(run(many(2001, 8), {})).toBe('kept 1');
    expect(run({}, many(2001, ''))).toBe('kept 1');
    const runs = (count: number) => Array.from({ length: count }, () => hooks.runs[0]);
    expect(withHooks({ runs: runs(100) })).toBe('none');
    expect(withHooks({ runs: runs(101) })).toBe('kept 1');
  });

  test('calculations', () => {
    const all = Array.from({ length: MOST_KEPT + 1 }, (_, i) => ({ ...hooks, id: `k${i}` }));
    expect(withPart({ kept: all.slice(1) })).toBe('none');
    expect(withPart({ kept: all })).toBe('kept');
  });
});

test('anything of another kind in what is kept is found', () => {
  for (const stage of STAGES) expect(withHooks({ stage })).toBe('none');
  for (const part of [
    ...[{ id: '' }, { name: ' ' }, { calculation: 5 }, { stage: 'dye' }, { draft: [] }],
    ...[
      { draft: { opening: 5 } },
      { draft: { opening: ['5'] } },
      { draft: { ' ': '5' } },
      { draft: undefined },
    ],
    ...[{ runs: undefined }, { runs: {} }, { runs: [5] }, { runs: [{ planned: {} }] }],
    ...[
      { runs: [null] },
      { runs: [[]] },
      { runs: [{ made: {} }] },
      { runs: [{ planned: { 1: '8' }, made: {} }] },
    ],
    ...[{ runs: [{ planned: { 1: Number.NaN }, made: {} }] }],
    ...[{ runs: [{ planned: {}, made: { 1: 8 } }] }],
    { draft: JSON.parse('{"__proto__": "5"}') },
  ]) {
    expect(withHooks(part), JSON.stringify(part)).toBe('kept 1');
  }
  expect(withPart({ kept: [hooks, 'hooks'] })).toBe('kept 2');
  expect(withPart({ kept: [null] })).toBe('kept 1');
});

test('what a later record has typed under the name of what was measured at first stays', () => {
  const typed = { ...coat, kept: [{ ...hooks, draft: { made: '3=15.6' } }] };
  expect(checkGarment(typed)).toEqual({ ok: true, value: typed });
});

test('a record of the first version counts one change, unless it is invented, and has nothing taken off', () => {
  const { takenOff: _, edits: __, ...first } = coat;
  const kept = [{ ...hooks, runs: undefined, planned: { '3': 1_232_000 }, draft: { made: '' } }];
  const read = checkGarment({ ...first, version: 1, kept });
  expect(read).toMatchObject({ ok: true, value: { version: 2, edits: 1, takenOff: [] } });
  expect(read.ok && read.value.kept[0]?.draft).toEqual({});
  expect(checkGarment({ ...first, version: 1, kept, invented: true })).toMatchObject({
    ok: true,
    value: { edits: 0 },
  });
  expect(partOf({ ...first, version: 1, kept: [{ ...kept[0], planned: 5 }] })).toBe('kept 1');
});
