import { expect, test } from 'vitest';
import { garmentHomeWords } from '../../src/words/en/garment/garment-home-words.ts';
import { garmentSheetWords } from '../../src/words/en/garment/garment-sheet-words.ts';
import { garmentWorkWords } from '../../src/words/en/garment/garment-work-words.ts';

test('of several it is said how many are made; one alone is made or not', () => {
  expect(garmentHomeWords.made(2, 7)).toBe('2 of 7 made');
  expect(garmentHomeWords.made(1, 1)).toBe('made');
  expect(garmentHomeWords.made(0, 1)).toBe('not made yet');
  expect(garmentWorkWords.made(2, 3, 1)).toBe('2 of 3 made, 1 of them before the app knew');
  expect(garmentWorkWords.made(1, 1, 1)).toBe('made, before the app knew');
  expect(garmentSheetWords.made(1, 1)).toBe('Its one step is made.');
});
