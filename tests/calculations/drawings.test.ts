import { expect, test } from 'vitest';
import { CALCULATIONS, DRAWINGS } from '../../src/calculations/list.ts';
import { timesTried } from '../thorough.ts';
import { drawnRight } from './drawing-laws.ts';

test('every calculation but the plain length of the first page is drawn with its numbers', () => {
  const without = Object.keys(CALCULATIONS).filter((id) => !Object.hasOwn(DRAWINGS, id));
  expect(without).toEqual(['convert']);
});

test.each(Object.keys(DRAWINGS))(
  '%s: numbers on the drawing are those given and found, none on another, and measure back',
  async (id) => {
    // A hundred thousand of each: `npm run laws`. A crossing is looked for in many places.
    const numRuns = timesTried(id === 'crossing' ? 150 : 400);
    const { drawn } = await drawnRight(id, { numRuns, seed: 1320 });
    expect(drawn).toBeGreaterThan(numRuns / 10);
  },
);
