import { cleanup, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { parts } from '../../src/calculations/parts/parts.ts';
import { answer, answerTo, open, type, workOn } from '../screens/helpers.tsx';

afterEach(cleanup);

test('a waist in quarters: what each is, where the marks are, and no word of buttons', async () => {
  open(parts);
  type('Edge to divide', '72');
  const said = await answer();
  expect(said).toContain('18 cm in each part');
  expect(said).toContain('4 marks, the first where you begin');
  expect(said).toContain('72 cm ÷ 4 = 18 cm.');
  expect(said).toContain('a needle that strikes a pin can break');
  expect(said).not.toMatch(/choke|button|hook/i);
  expect(await screen.findByText('54 cm')).toBeTruthy();
});

test('an edge with two ends has marks between them only', async () => {
  open(parts, { length: '72', round: 'open' });
  expect(await answer()).toContain('3 marks between the ends');
});

test('the edge it meets is divided alike, with the ease of each part', () => {
  const { runs, lines, workings } = answerTo(parts, { length: '60', other: '96' });
  expect(runs.map(({ run }) => run.marks.map(({ at }) => at / 80_000))).toEqual([
    [0, 15, 30, 45],
    [0, 24, 48, 72],
  ]);
  expect(lines.map(({ value }) => value)).toEqual([
    '24 cm',
    '9 cm to ease or gather in on the edge it meets',
  ]);
  expect(workings[0]?.formula).toBe('60 cm ÷ 4 = 15 cm. (96 cm − 60 cm) ÷ 4 = 9 cm in each part.');
});

test('any number of parts, and what is wrong with it', () => {
  expect(
    answerTo(parts, { into: 'other', count: '6', length: '60' }).runs[0]?.run.marks,
  ).toHaveLength(6);
  const none = workOn(parts, { into: 'other', count: '1' });
  expect(none.ok ? [] : none.faults.map(({ field }) => field)).toEqual(['count']);
});
