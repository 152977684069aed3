import { expect, test } from 'vitest';
import { backupDue, readStand } from '../../src/garment/backup/backup-due.ts';
import { standOf, standRestored } from '../../src/garment/backup/backup-stand.ts';
import { type Listed, listedOf } from '../../src/garment/record/listed.ts';
import { newGarment as begun } from '../../src/garment/record/new-garment.ts';

// A week and twenty changes: common practice, no source.
const DAY = 24 * 60 * 60 * 1000;
const START = 1_000 * DAY;

const newGarment = (id: string, name: string, at: number) => listedOf(begun(id, name, at));
const coat = newGarment('g', 'Coat', START);
const changed = (garment: Listed, times: number, at: number): Listed =>
  times === 0 ? garment : { ...garment, edits: garment.edits + times, changed: at };

test('nothing is asked while nothing has changed, however long ago', () => {
  const last = standOf([coat], START);
  expect(backupDue([coat], last, undefined, START + 400 * DAY)).toBeUndefined();
  expect(backupDue([], undefined, undefined, START)).toBeUndefined();
  // The demo is nobody's work until it is changed.
  const demo = { ...coat, edits: 0 };
  expect(backupDue([demo], undefined, undefined, START + 99 * DAY)).toBeUndefined();
});

test('one change is asked for after seven days, not before', () => {
  const last = standOf([coat], START);
  const now = changed(coat, 1, START + DAY);
  expect(backupDue([now], last, undefined, START + 7 * DAY - 1)).toBeUndefined();
  expect(backupDue([now], last, undefined, START + 7 * DAY)).toMatchObject({ changes: 1, days: 7 });
});

test('twenty changes are asked for at once', () => {
  const last = standOf([coat], START);
  expect(backupDue([changed(coat, 19, START)], last, undefined, START)).toBeUndefined();
  expect(backupDue([changed(coat, 20, START)], last, undefined, START)).toMatchObject({
    changes: 20,
    days: 0,
  });
});

test('without any backup the first garment’s age counts', () => {
  expect(backupDue([coat], undefined, undefined, START + 6 * DAY)).toBeUndefined();
  expect(backupDue([coat], undefined, undefined, START + 8 * DAY)).toMatchObject({
    changes: 1,
    days: 8,
  });
});

test('put off, it is quiet for another week or twenty changes; a later backup ends that', () => {
  const now = changed(coat, 25, START);
  const last = standOf([coat], START);
  const putOff = standOf([now], START + DAY);
  expect(backupDue([now], last, putOff, START + 2 * DAY)).toBeUndefined();
  expect(backupDue([now], last, putOff, START + 8 * DAY)).toMatchObject({ changes: 25, days: 8 });
  const more = changed(now, 20, START + 2 * DAY);
  expect(backupDue([more], last, putOff, START + 2 * DAY)?.changes).toBe(45);
  const backedUp = standOf([more], START + 3 * DAY);
  expect(backupDue([more], backedUp, putOff, START + 99 * DAY)).toBeUndefined();
});

test('put off at the very time of the backup, it is as put off; a backup made later counts instead', () => {
  const now = changed(coat, 25, START);
  const last = standOf([coat], START);
  expect(backupDue([now], last, standOf([now], START), START + DAY)).toBeUndefined();
  expect(backupDue([now], last, standOf([now], START - 1), START + DAY)?.changes).toBe(25);
  expect(backupDue([now], undefined, standOf([now], START), START + DAY)).toBeUndefined();
});

test('of several garments the changes add up, and the oldest change is the one that waits', () => {
  const trousers = newGarment('t', 'Trousers', START);
  const last = standOf([coat, trousers], START);
  const all = [changed(coat, 9, START + DAY), changed(trousers, 11, START + 2 * DAY)];
  expect(backupDue(all, last, undefined, START + 3 * DAY)).toMatchObject({ changes: 20, days: 3 });
  const young = [newGarment('a', 'A', START + 5 * DAY), newGarment('b', 'B', START)];
  expect(backupDue(young, undefined, undefined, START + 7 * DAY)).toMatchObject({
    changes: 2,
    days: 7,
  });
  // What was not there yet at the last backup is changed since.
  const skirt = changed(newGarment('s', 'Skirt', START), 20, START);
  expect(backupDue([coat, skirt], standOf([coat], START), undefined, START)?.changes).toBe(21);
});

test('a clock that was set back asks for nothing by time', () => {
  const last = standOf([coat], START + 100 * DAY);
  const now = changed(coat, 1, START);
  expect(backupDue([now], last, undefined, START)).toBeUndefined();
});

test('what was kept of a backup is read as it was at first, and damaged', () => {
  const old = readStand(START);
  expect(backupDue([coat], old, undefined, START + 9 * DAY)).toBeUndefined();
  const later = changed(coat, 1, START + DAY);
  expect(backupDue([later], old, undefined, START + 9 * DAY)).toMatchObject({
    changes: 1,
    days: 9,
  });
  expect(readStand(undefined)).toBeUndefined();
  expect(readStand({ at: 'x' })).toBeUndefined();
  expect(readStand({ at: Number.NaN })).toBeUndefined();
  expect(readStand({ at: Number.POSITIVE_INFINITY })).toBeUndefined();
  const harmed = readStand({ at: 5, edits: { g: 'many', h: 2 }, facts: { g: 7, h: null } });
  expect(harmed).toEqual({ at: 5, edits: { h: 2 }, facts: { g: 7 } });
  // Of one whose count is no number every change is taken as made since.
  expect(backupDue([changed(coat, 20, START)], harmed, undefined, START)?.changes).toBe(21);
  expect(readStand(standOf([coat], 5))).toEqual(standOf([coat], 5));
});

test('what would be lost is named: garments, what was made on them, changes', () => {
  const [coat2, hat] = [changed({ ...coat, facts: 5 }, 15, START), { ...coat, id: 'h' }];
  const last = standOf([coat2, hat], START);
  const now = [
    changed({ ...coat2, facts: 88 }, 30, START),
    changed({ ...hat, facts: 2 }, 1, START),
  ];
  const more = { ...coat, id: 'new', facts: 7 };
  const due = backupDue([...now, more], last, undefined, START + 2 * DAY);
  expect(due).toEqual({ garments: 3, made: 83 + 2 + 7, changes: 32, days: 2 });
});

test('what was made since a backup that did not count it is not guessed', () => {
  const last = readStand({ at: START, edits: { g: 1 } });
  const due = backupDue([changed({ ...coat, facts: 9 }, 25, START)], last, undefined, START);
  expect(due).toMatchObject({ garments: 1, made: 0, changes: 25 });
  expect(
    backupDue(
      [changed({ ...coat, facts: 9 }, 25, START + 1)],
      readStand(START),
      undefined,
      START + 9 * DAY,
    ),
  ).toMatchObject({ made: 0 });
});

test('what is restored of a file is in that file; what else was backed up stays as it was', () => {
  const hat = { id: 'h', edits: 3, facts: 2 };
  const held = [{ id: 'g', edits: 9, facts: 4 }];
  expect(standRestored(undefined, held, 7)).toEqual({ at: 7, edits: { g: 9 }, facts: { g: 4 } });
  const last = standOf([{ ...hat }, { id: 'g', edits: 1, facts: 0 }], START);
  // The file is of another day: when the last backup was made doesn’t change.
  expect(standRestored(last, held, 7)).toEqual({
    ...{ at: START, edits: { h: 3, g: 9 }, facts: { h: 2, g: 4 } },
  });
  const times = readStand(START);
  expect(standRestored(times, held, 7)).toBe(times);
});

test('a list shows how many works are on a garment and how much is made of it', () => {
  const work = { name: 'Hem', calculation: 'hem', rank: 1, fields: {} };
  const works = { a: work, b: { ...work, off: true }, c: null, d: { ...work, off: false } };
  const record = { ...begun('g', 'Coat', 5), edits: 4, works, facts: { f: 1, e: null } };
  expect(listedOf(record)).toEqual({
    ...{ id: 'g', name: 'Coat', changed: 5, edits: 4, works: 3, facts: 2 },
  });
});
