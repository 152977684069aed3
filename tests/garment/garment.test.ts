import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkGarment } from '../../src/garment/check.ts';
import { type Garment, type Kept, LONGEST_NAME } from '../../src/garment/garment.ts';
import { newGarment, renamed } from '../../src/garment/record/new-garment.ts';

const hooks: Kept = {
  id: 'k1',
  name: 'Hooks',
  stage: 'close',
  calculation: 'closures',
  draft: { opening: '46.3', count: '7' },
  runs: [{ planned: { '3': 1_232_000 }, made: { '3': '15.6 cm' } }],
};

const coat = (): Garment => ({
  ...{ version: 2, id: 'g1', name: 'Coat', invented: false, changed: 2, edits: 2 },
  kept: [hooks],
  takenOff: [],
});

test('a garment is made with nothing on it, and renamed; the first one stays as it was', () => {
  const first = newGarment('g1', ' Coat ', 1);
  expect(first).toMatchObject({ version: 3, name: 'Coat', works: {}, facts: {}, edits: 1 });
  expect(first.invented).toBe(false);
  expect(renamed(first, 'Cloak', 3)).toEqual({ ...first, name: 'Cloak', changed: 3, edits: 2 });
  expect(first.name).toBe('Coat');
});

test('a long name is cut, not refused', () => {
  expect(newGarment('g', 'x'.repeat(300), 0).name).toHaveLength(LONGEST_NAME);
});

test('whatever is kept or read, what comes through the check is a garment in every part', () => {
  fc.assert(
    fc.property(fc.anything({ withNullPrototype: true, maxDepth: 4 }), (read) => {
      const checked = checkGarment(read);
      if (checked.ok) expect(checkGarment(JSON.parse(JSON.stringify(checked.value))).ok).toBe(true);
    }),
    { seed: 7 },
  );
});

test('each damage is named', () => {
  const good = coat();
  const damageOf = (read: unknown) => {
    const checked = checkGarment(read);
    return checked.ok ? 'none' : checked.damage;
  };
  expect(damageOf(good)).toBe('none');
  expect(damageOf('coat')).toEqual({ kind: 'not-a-garment' });
  expect(damageOf({ ...good, version: 3 })).toEqual({ kind: 'newer', version: 3 });
  expect(damageOf({ ...good, name: ' ' })).toEqual({ kind: 'damaged', part: 'name' });
  expect(damageOf({ ...good, kept: [hooks, hooks] })).toEqual({ kind: 'damaged', part: 'kept' });
  expect(damageOf({ ...good, kept: [{ ...hooks, stage: 'dye' }] })).toEqual({
    kind: 'damaged',
    part: 'kept',
    place: 1,
  });
});

test('what is not known of a record is not taken over', () => {
  const checked = checkGarment({ ...coat(), script: '<img onerror>' });
  expect(checked.ok && 'script' in checked.value).toBe(false);
});
