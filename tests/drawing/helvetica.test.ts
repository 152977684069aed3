import { PDFDocument, StandardFonts } from '@cantoo/pdf-lib';
import { expect, test } from 'vitest';
import { inLines, points, TYPE_SIZE, textWidth } from '../../src/drawing/helvetica.ts';

const LETTERS = ' abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789';

test('no letter of either face is wider than it is reckoned with, and hardly narrower', async () => {
  const file = await PDFDocument.create();
  const plain = await file.embedFont(StandardFonts.Helvetica);
  const bold = await file.embedFont(StandardFonts.HelveticaBold);
  for (const code of plain.getCharacterSet()) {
    const letter = String.fromCodePoint(code);
    const wide = Math.max(...[plain, bold].map((font) => font.widthOfTextAtSize(letter, 1000)));
    expect(textWidth(letter, 1000 / TYPE_SIZE), letter).toBeCloseTo(wide, 6);
  }
});

test('what the pages have no letter for is as wide as the widest', () => {
  expect(textWidth('上', 1)).toBe(textWidth('@', 1));
});

test('a type size is 72 points to the inch', () => {
  expect(points(72) * TYPE_SIZE).toBeCloseTo(25.4, 9);
});

test('lines are no wider than they may be, whatever the words, and lose none', () => {
  const text = `${LETTERS} a bb ${'x'.repeat(300)} ccc`;
  const lines = inLines(text, 2.5, 40);
  for (const line of lines) expect(textWidth(line, 2.5)).toBeLessThanOrEqual(40);
  expect(lines.join('').replace(/\s/g, '')).toBe(text.replace(/\s/g, ''));
  expect(inLines('  ', 2.5, 40)).toEqual([]);
});
