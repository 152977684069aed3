import fc from 'fast-check';
import { expect, test } from 'vitest';
import { demoWords } from '#words/demo-words.ts';
import { hasRoom, withKept } from '../../src/garment/changes.ts';
import { checkGarment } from '../../src/garment/check.ts';
import { demoGarment } from '../../src/garment/demo.ts';
import { followedChange } from '../../src/garment/followed-change.ts';
import {
  type Garment,
  inOrder,
  type Kept,
  LONGEST_NAME,
  MOST_KEPT,
  newGarment,
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

test('beside others only what is meant is changed, taken off or put back', () => {
  const buttons = { ...hooks, id: 'k2', name: 'Buttons' };
  const both = withKept(coat(), buttons, 3);
  const wider = { ...hooks, draft: { count: '8' } };
  expect(withKept(both, wider, 4).kept).toEqual([wider, buttons]);
  expect(withoutKept(both, 'k1', 4)).toMatchObject({ kept: [buttons], takenOff: [hooks] });
  expect(withoutKept(both, 'none', 4)).toMatchObject({ kept: both.kept, takenOff: [] });
  const off = withoutKept(withoutKept(both, 'k1', 4), 'k2', 5);
  expect(putBack(off, 1, 'spare', 6)).toMatchObject({ kept: [buttons], takenOff: [hooks] });
  // Something else is on it: its own id is still free.
  const one = withoutKept(both, 'k1', 4);
  expect(putBack(one, 0, 'spare', 5).kept).toEqual([buttons, hooks]);
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

test('of all that was taken off only what is followed is changed, the latest of its id', () => {
  const other = { ...hooks, id: 'k2', name: 'Buttons' };
  const garment = { ...coat(), kept: [], takenOff: [hooks, other, hooks] };
  const done = followedChange(garment, hooks, (kept) => ({ ...kept, name: 'Done' }), 3);
  if (typeof done === 'string') throw new Error(done);
  expect(done.takenOff.map(({ name }) => name)).toEqual(['Hooks', 'Buttons', 'Done']);
});

test('a plan is another one with any field more, less or otherwise, and in another calculation', () => {
  const now = (part: Partial<Kept>) =>
    withKept(newGarment('g1', 'Coat', 1), { ...hooks, ...part }, 2);
  const follow = (part: Partial<Kept>) => followedChange(now(part), hooks, (kept) => kept, 3);
  expect(follow({ draft: { ...hooks.draft, level: '5' } })).toBe('replanned');
  expect(follow({ draft: { opening: '46.3' } })).toBe('replanned');
  expect(follow({ draft: { opening: '46.3', rows: '7' } })).toBe('replanned');
  expect(follow({ draft: { ...hooks.draft, count: '8' } })).toBe('replanned');
  expect(follow({ calculation: 'strip' })).toBe('replanned');
  // Its name and its stage are no part of the plan.
  expect(follow({ name: 'Hooks of the front', stage: 'cut' })).toMatchObject({ edits: 3 });
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

test('so many are kept, and no more: there is room for one until then', () => {
  const full = Array.from({ length: MOST_KEPT }, (_, i) => ({ ...hooks, id: `h${i}` }));
  const almost = { ...coat(), kept: full.slice(1) };
  expect(hasRoom(almost.kept)).toBe(true);
  expect(withKept(almost, { ...hooks, id: 'last' }, 3).kept).toHaveLength(MOST_KEPT);
  expect(hasRoom(full)).toBe(false);
  expect(() => withKept({ ...coat(), kept: full }, hooks, 3)).toThrow(RangeError);
});

test('a long name is cut, not refused', () => {
  expect(newGarment('g', 'x'.repeat(300), 0).name).toHaveLength(LONGEST_NAME);
});

test('the demo is a garment, and says that it is invented', () => {
  const demo = demoGarment(demoWords, 'demo', 0);
  expect(checkGarment(demo)).toEqual({ ok: true, value: demo });
  expect(demo.invented).toBe(true);
  expect(demo.name).toContain('invented');
  expect(demo.kept).toHaveLength(5);
  expect(demo.kept.find(({ id }) => id === 'hooks')?.draft).toEqual({
    ...{ u: 'cm', opening: '46.3', count: '7', top: '1.2', bottom: '2.5' },
  });
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
