import { expect, test } from 'vitest';
import { lostToFlaws } from '../../src/lay/lost-to-flaws.ts';
import type { LayTask } from '../../src/lay/task.ts';
import { found, piece, rectangle } from './lays.ts';

/** A flaw all across the cloth, from so far on. */
const across = (from: number) => rectangle(10, 500).map(([x, y]) => [x + from, y] as const);
const withFlaws = (flaws: LayTask['flaws'], more: Partial<LayTask> = {}): LayTask => ({
  ...{ width: 500, pieces: [piece('a', rectangle(300, 400))] },
  ...(flaws && { flaws }),
  ...more,
});
const lost = (task: LayTask) => lostToFlaws(task, found(task, { rounds: 20 })!);

test('what a flaw leaves no room on from the cut end is lost; before nothing, or little, is', () => {
  expect(lost(withFlaws(undefined))).toBe(0);
  expect(lost(withFlaws([across(400)]))).toBe(0);
  expect(lost(withFlaws([across(200)]))).toBeCloseTo(210, 1);
  // Ten centimetres at the end are bare before many a first piece.
  expect(lost(withFlaws([across(80)]))).toBe(0);
});

test('on a pattern less than one repeat is not lost to a flaw', () => {
  const pieces = [piece('a', rectangle(300, 400), { match: [0, 0], turns: [0] })];
  const repeat = { along: 350, across: 0 };
  expect(lost(withFlaws([across(200)], { pieces, repeat }))).toBe(0);
  expect(lost(withFlaws([across(200)], { pieces, repeat: { along: 250, across: 0 } }))).toBe(0);
  expect(lost(withFlaws([across(200)], { pieces, repeat: { along: 120, across: 0 } }))).toBeCloseTo(
    240,
    1,
  );
});

test('a lay without pieces has nothing lost', () => {
  expect(lostToFlaws(withFlaws([across(200)]), { laid: [], length: 0 })).toBe(0);
});
