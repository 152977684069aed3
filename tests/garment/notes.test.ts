import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { copyAsNewStart } from '../../src/garment/actions/copy.ts';
import { begin } from '../../src/garment/actions/state.ts';
import { garmentLine, writeBackup } from '../../src/garment/backup/backup.ts';
import { previewOf } from '../../src/garment/backup/backup-preview.ts';
import { readBackup } from '../../src/garment/backup/read-backup.ts';
import { LONGEST_NOTE, MOST_PHOTOS } from '../../src/garment/record/limits.ts';
import { isJpeg, MOST_PHOTO, parted, photoIds } from '../../src/garment/record/photos.ts';
import { readRecord } from '../../src/garment/record/read-record.ts';
import { plain } from './trial/compare.ts';
import { garmentOf, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 5;
const STEP = 'hem||first-press';
const WORK = 'hem||';
/** Invented: a hem. */
const skirt = garmentOf({
  works: {
    hem: {
      ...{ name: 'Hem', calculation: 'hem', rank: 1 },
      fields: { depth: typed('2'), style: typed('unequal'), turn: typed('0.7') },
    },
  },
});
const note = (home: string, text?: string, photo?: string): Action => ({
  ...{ do: 'note', home, now },
  note: { ...(text !== undefined && { text }), ...(photo !== undefined && { photo }) },
});
const JPEG = `data:image/jpeg;base64,${'A'.repeat(40)}`;

test('a note is kept at a step and at a work, changed, taken off, and all of it undone', () => {
  const start = begin(skirt, KNOWN);
  const one = act(start, note(STEP, ' press from the left ')).state;
  expect(one.record.notes).toEqual({ [STEP]: { text: 'press from the left' } });
  const two = act(one, note(WORK, undefined, 'p1')).state;
  expect([...two.answer.sound.notes.keys()]).toEqual([STEP, WORK]);
  const off = act(two, { do: 'note', home: WORK, note: undefined, now }).state;
  expect(off.record.notes).toEqual(one.record.notes);
  const again = act(off, { do: 'undo', change: off.log.at(-1)?.id ?? 0, now }).state;
  expect(again.record.notes).toEqual(two.record.notes);
  // With the last one the list goes, too.
  const none = act(one, note(STEP, '  ')).state;
  expect(plain(none.record)).toEqual(plain(skirt));
  expect(readRecord(JSON.parse(JSON.stringify(two.record)))).toEqual({
    ok: true,
    value: two.record,
  });
});

test('too long a note, too many photos, and a work that isn’t there are refused', () => {
  const state = begin(skirt, KNOWN);
  expect(act(state, note(STEP, 'x'.repeat(LONGEST_NOTE + 1))).refused).toEqual({
    why: 'long note',
  });
  expect(act(state, note(STEP, 'x'.repeat(LONGEST_NOTE))).refused).toBeUndefined();
  expect(act(state, note('none||', 'x')).refused).toMatchObject({ why: 'not there' });
  let full = state;
  for (let i = 0; i < MOST_PHOTOS; i++) {
    full = act(full, note(`hem||step-${i}`, undefined, `p${i}`)).state;
  }
  expect(act(full, note(STEP, undefined, 'more')).refused).toEqual({ why: 'many photos' });
  // One in the place of another is no more.
  expect(act(full, note('hem||step-1', undefined, 'other')).refused).toBeUndefined();
  expect(act(full, note(STEP, 'a note alone')).refused).toBeUndefined();
});

test('a backup has the photos with the garment, and what is none of its photos is left out', () => {
  const { record } = act(begin(skirt, KNOWN), note(STEP, 'look', 'p1')).state;
  expect(photoIds(record)).toEqual(['p1']);
  expect(photoIds({ notes: { a: { text: 'x' }, b: { photo: 7 }, c: null, d: 'x' } })).toEqual([]);
  const photos = { p1: JPEG, p2: JPEG };
  const written = { ...record, photos };
  expect(garmentLine(written)).toContain(JPEG);
  const read = readBackup(writeBackup([written]));
  if (!read.ok) throw new Error(read.fault);
  expect(read.damaged.size).toBe(0);
  const [garment] = read.garments;
  if (!garment) throw new Error('nothing was read');
  const { record: back, photos: brought } = parted(garment);
  expect(back).toEqual(record);
  expect(brought).toEqual([['p1', JPEG]]);
  expect(previewOf(record, garment, false).state).toBe('same');
});

test.each([
  [JPEG, true],
  ['data:image/svg+xml;base64,AAAA', false],
  ['javascript:alert(1)', false],
  [`${JPEG}" onerror="x`, false],
  [`data:image/jpeg;base64,${'A'.repeat(2 * MOST_PHOTO)}`, false],
  // As large as one may be: 200,000 bytes are 266,668 letters (RFC 4648, section 4).
  [`data:image/jpeg;base64,${'A'.repeat(266_668)}`, true],
  [`data:image/jpeg;base64,${'A'.repeat(266_700)}`, false],
  [7, false],
  [null, false],
  [undefined, false],
])('what can be a photo: %s', (read, is) => {
  expect(isJpeg(read)).toBe(is);
});

test('a copy as a new start keeps notes, and nothing of it is passed over', () => {
  let state = act(begin(skirt, KNOWN), note(STEP, 'look')).state;
  state = act(state, { do: 'pass', home: STEP, over: true, now }).state;
  const copy = copyAsNewStart(state.record, 'other', 'Second', now);
  expect(copy.notes).toEqual(state.record.notes);
  expect(copy).not.toHaveProperty('passed');
});
