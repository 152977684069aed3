import fc from 'fast-check';
import { expect, test } from 'vitest';
import { previewBackup, readBackup, writeBackup } from '../../src/garment/backup.ts';
import { withKept } from '../../src/garment/changes.ts';
import { checkGarment } from '../../src/garment/check.ts';
import { demoGarment } from '../../src/garment/demo.ts';
import { followedChange } from '../../src/garment/followed-change.ts';
import {
  type Garment,
  inOrder,
  type Kept,
  LONGEST_NAME,
  newGarment,
  STAGES,
} from '../../src/garment/garment.ts';
import { copied, putBack, renamed, withoutKept } from '../../src/garment/list-changes.ts';

const hooks: Kept = {
  id: 'k1',
  name: 'Hooks',
  stage: 'close',
  calculation: 'closures',
  draft: { opening: '46.3', count: '7' },
  runs: [{ planned: { '3': 1_232_000 }, made: { '3': '15.6 cm' } }],
};

const coat = (): Garment => withKept(newGarment('g1', ' Coat ', 1), hooks, 2);

test('a garment is made, renamed, copied; the first one stays as it was', () => {
  const first = coat();
  expect(first).toMatchObject({ name: 'Coat', changed: 2, kept: [hooks] });
  expect(renamed(first, 'Cloak', 3)).toMatchObject({ id: 'g1', name: 'Cloak', changed: 3 });
  expect(copied(first, 'g2', 'Coat again', 4)).toMatchObject({ id: 'g2', kept: [hooks] });
  expect(first.name).toBe('Coat');
});

test('a kept calculation is changed in its place, or taken away', () => {
  const wider = { ...hooks, draft: { ...hooks.draft, count: '8' } };
  expect(withKept(coat(), wider, 3).kept).toEqual([wider]);
  expect(withoutKept(coat(), 'k1', 3)).toMatchObject({ kept: [], takenOff: [hooks] });
});

test('what was taken off is put back, under an id of its own when its own is in use', () => {
  const off = withoutKept(coat(), 'k1', 3);
  expect(putBack(off, 0, 'spare', 4)).toMatchObject({ kept: [hooks], takenOff: [] });
  const again = withKept(off, { ...hooks, name: 'New hooks' }, 4);
  expect(putBack(again, 0, 'spare', 5).kept.map(({ id, name }) => [id, name])).toEqual([
    ['k1', 'New hooks'],
    ['spare', 'Hooks'],
  ]);
  expect(putBack(coat(), 0, 'spare', 5)).toEqual(coat());
});

const followed = (by: (kept: Kept) => Kept, garment = coat(), seen = hooks) =>
  followedChange(garment, seen, by, 9);

test('each change is counted, and what is followed no longer is refused', () => {
  expect(coat().edits).toBe(newGarment('g', 'Coat', 0).edits + 1);
  expect(followed((kept) => kept)).toMatchObject({ edits: coat().edits + 1 });
  expect(followed((kept) => kept, coat(), { ...hooks, id: 'none' })).toBe('gone');
});

test('what is made by one plan is refused by another', () => {
  const anew = withKept(coat(), { ...hooks, draft: { ...hooks.draft, count: '8' } }, 5);
  const made = (kept: Kept) => ({ ...kept, runs: [{ planned: {}, made: { '7': '' } }] });
  expect(followed(made, anew)).toBe('replanned');
  expect(followed(made)).toMatchObject({ kept: [{ runs: [{ made: { '7': '' } }] }] });
});

test('what is made of something taken off is kept with it there', () => {
  const off = withoutKept(coat(), 'k1', 5);
  const made = (kept: Kept) => ({ ...kept, runs: [{ planned: {}, made: { '1': '' } }] });
  const kept = followed(made, off);
  expect(kept).toMatchObject({ kept: [], takenOff: [{ id: 'k1', runs: [{ made: { '1': '' } }] }] });
});

test('a new spacing that storage took without saying so is not refused when it comes again', () => {
  const spaced = (kept: Kept) => ({ ...kept, draft: { ...kept.draft, sewn: '9 cm' } });
  const once = followed(spaced);
  expect(once).toMatchObject({ kept: [{ draft: { sewn: '9 cm' } }] });
  expect(typeof once === 'object' && followed(spaced, once)).toBe(once);
});

test('what is kept is in the order of the work', () => {
  const garment = ['edge', 'cut', 'close', 'cut'].reduce(
    (so, stage, i) => withKept(so, { ...hooks, id: `k${i}`, stage } as Kept, i),
    newGarment('g', 'x', 0),
  );
  expect(inOrder(garment).map(({ id }) => id)).toEqual(['k1', 'k3', 'k2', 'k0']);
});

test('a long name is cut, not refused', () => {
  expect(newGarment('g', 'x'.repeat(300), 0).name).toHaveLength(LONGEST_NAME);
});

test('the demo is a garment, and says that it is invented', () => {
  const demo = demoGarment('demo', 0);
  expect(checkGarment(demo)).toEqual({ ok: true, value: demo });
  expect(demo.invented).toBe(true);
  expect(demo.name).toContain('invented');
});

const word = fc
  .string({ minLength: 1, maxLength: 30 })
  .filter((text) => text.trim() !== '' && text !== '__proto__');
const keptOnes = fc.record({
  id: word,
  name: word,
  stage: fc.constantFrom(...STAGES),
  calculation: word,
  draft: fc.dictionary(word, fc.string({ maxLength: 40 }), { noNullPrototype: true }),
  runs: fc.array(
    fc.record({
      planned: fc.dictionary(word, fc.double({ noNaN: true, noDefaultInfinity: true }), {
        noNullPrototype: true,
      }),
      made: fc.dictionary(word, fc.string({ maxLength: 20 }), { noNullPrototype: true }),
    }),
    { maxLength: 3 },
  ),
});
const garments = fc.record({
  version: fc.constant(2 as const),
  id: word,
  name: word,
  invented: fc.boolean(),
  kept: fc.uniqueArray(keptOnes, { maxLength: 5, selector: ({ id }) => id }),
  takenOff: fc.array(keptOnes, { maxLength: 2 }),
  changed: fc.nat(),
  edits: fc.nat(),
});

test('a backup gives back every garment just as it was', () => {
  fc.assert(
    fc.property(fc.uniqueArray(garments, { maxLength: 4, selector: ({ id }) => id }), (all) => {
      const read = readBackup(writeBackup(all));
      expect(JSON.stringify(read)).toBe(JSON.stringify({ ok: true, garments: all, rejected: [] }));
    }),
  );
});

test('whatever is kept or read, what comes through the check is a garment in every part', () => {
  fc.assert(
    fc.property(fc.anything({ withNullPrototype: true, maxDepth: 4 }), (read) => {
      const checked = checkGarment(read);
      if (checked.ok) expect(checkGarment(JSON.parse(JSON.stringify(checked.value))).ok).toBe(true);
    }),
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
    part: 'kept 1',
  });
});

test('what is not known of a record is not taken over', () => {
  const checked = checkGarment({ ...coat(), script: '<img onerror>' });
  expect(checked.ok && 'script' in checked.value).toBe(false);
});

test('a file that is no backup of ours is refused whole', () => {
  expect(readBackup('')).toEqual({ ok: false, fault: 'not-json' });
  expect(readBackup('[]')).toEqual({ ok: false, fault: 'foreign' });
  expect(readBackup('null')).toEqual({ ok: false, fault: 'foreign' });
  const of = (version: unknown) =>
    JSON.stringify({ format: 'thumbrule backup', version, garments: [] });
  expect(readBackup(of(2))).toEqual({ ok: false, fault: 'newer' });
  expect(readBackup(of('1'))).toEqual({ ok: false, fault: 'damaged' });
  expect(readBackup('x'.repeat(20_000_001))).toEqual({ ok: false, fault: 'too-large' });
});

test('a damaged garment is left out and listed, the others are read', () => {
  const text = JSON.stringify({
    format: 'thumbrule backup',
    version: 1,
    garments: [coat(), { ...coat(), id: 'g2', kept: 'no' }, coat()],
  });
  expect(readBackup(text)).toMatchObject({
    ok: true,
    garments: [{ id: 'g1' }],
    rejected: [
      { place: 2, name: 'Coat', damage: { part: 'kept' } },
      { place: 3, damage: { part: 'id' } },
    ],
  });
});

test('2,500 damaged backups: refused or read in part, never a failure, never more than was written', () => {
  const all = [coat(), demoGarment('demo', 5), newGarment('g3', '<script>alert(1)</script>', 6)];
  const text = writeBackup(all);
  const damage = fc.oneof(
    fc.record({ cut: fc.nat(text.length) }),
    fc.record({ at: fc.nat(text.length - 1), bit: fc.nat(7) }),
    fc.record({
      from: fc.constantFrom(
        '"version": 1',
        '"version": 2',
        '"changed": 5',
        '"kept": [',
        '"7"',
        '"close"',
        '46.3',
        '"invented": true',
      ),
      to: fc.constantFrom(
        '1e999',
        '"__proto__"',
        'null',
        '{"toString":1}',
        '[',
        '""',
        `"${'x'.repeat(5000)}"`,
      ),
    }),
  );
  fc.assert(
    fc.property(damage, (how) => {
      const harmed =
        'cut' in how
          ? text.slice(0, how.cut)
          : 'at' in how
            ? text.slice(0, how.at) +
              String.fromCharCode(text.charCodeAt(how.at) ^ (1 << how.bit)) +
              text.slice(how.at + 1)
            : text.replace(how.from, how.to);
      const read = readBackup(harmed);
      if (!read.ok) return;
      expect(read.garments.length + read.rejected.length).toBeLessThanOrEqual(all.length);
      for (const garment of read.garments) expect(checkGarment(garment).ok).toBe(true);
    }),
    { numRuns: 2500 },
  );
});

test('a preview says what a restore would do, kept by kept, and changes nothing', () => {
  const here = [coat()];
  const lapel = { ...hooks, id: 'k2', name: 'Lapel' };
  const later = withKept(withKept(coat(), { ...hooks, draft: {} }, 9), lapel, 9);
  const [same] = previewBackup(here, [coat()]);
  const [differs] = previewBackup(here, [later]);
  const [lost] = previewBackup([later], [coat()]);
  const [fresh] = previewBackup([], [coat()]);
  expect(same).toMatchObject({ state: 'same' });
  expect(differs).toMatchObject({
    state: 'differs',
    later: true,
    added: ['Lapel'],
    changed: ['Hooks'],
    lost: [],
  });
  expect(lost).toMatchObject({ state: 'differs', later: false, lost: ['Lapel'] });
  expect(fresh).toMatchObject({ state: 'new', added: ['Hooks'] });
  expect(here).toEqual([coat()]);
});
