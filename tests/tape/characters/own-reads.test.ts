import { expect, test } from 'vitest';
import { isSettled, ownReads, withOwnReads } from '../../../src/tape/characters/own-reads.ts';
import type { NumberPage } from '../../../src/tape/characters/page.ts';
import { digitReader } from '../../../src/tape/digits/digit-logs.ts';
import type { Component } from '../../../src/tape/numbers/components.ts';
import { cellOf, type NumberRow } from '../../../src/tape/numbers/number-row.ts';
import { printed } from '../../train/digits/letter-masks.ts';

const digits = digitReader();
const letters = printed([{ name: 'overpass', licence: 'OFL-1.1', weights: [500] }]);
const TALL = 36;
const SIDE = 20;

/** A page with one number in each of its rows of cells, drawn where its sheet has it. */
function pageOf(texts: readonly string[]): NumberPage & { readonly row: NumberRow } {
  const [width, height] = [400, (TALL + 2 * SIDE) * texts.length];
  const pixels = new Uint8Array(width * height).fill(255);
  const cells = texts.map((text, line) => {
    const top = SIDE + line * (TALL + 2 * SIDE);
    let left = SIDE;
    const parts = [...text].map((letter, id): Component => {
      const mask = letters[0]?.(letter);
      if (!mask) throw new Error('no typeface');
      const share = mask.height / TALL;
      const wide = Math.round(mask.width / share);
      for (let y = 0; y < TALL; y++) {
        for (let x = 0; x < wide; x++) {
          const from = Math.floor((y + 0.5) * share) * mask.width;
          const alpha = mask.alpha[from + Math.min(mask.width - 1, Math.floor((x + 0.5) * share))];
          pixels[(top + y) * width + left + x] = 255 - (alpha as number);
        }
      }
      const [x0, x1, y0, y1] = [left, left + wide - 1, top, top + TALL - 1];
      left += wide + 6;
      const size = { width: wide, height: TALL, area: wide * TALL };
      return { id, x0, x1, y0, y1, middleX: (x0 + x1) / 2, middleY: (y0 + y1) / 2, ...size };
    });
    return cellOf(parts, { fromTick: 0, perTick: 8 });
  });
  const row = { cells, height: TALL, middle: TALL / 2, turned: false, across: 0 };
  const items = cells.map((cell) => {
    return { row, cell, x: cell.x0, y: cell.y0, width: cell.x1 - cell.x0 + 1 };
  });
  return { width, height, pixels, items, turns: 0, row };
}

const valuesOf = (page: ReturnType<typeof pageOf>, reads = new Map()) =>
  (withOwnReads(reads, page, ownReads(page, digits)).get(page.row) ?? []).map(({ value }) => value);

test('numbers that the character reader gave nothing for are read digit by digit', () => {
  expect(valuesOf(pageOf(['47', '6', '125', '90', '38']))).toEqual([47, 6, 125, 90, 38]);
});

test('where the two disagree what is sure of each digit stands, else what was read', () => {
  const page = pageOf(['47', '4K', '48']);
  const read = (line: number, text: string) => {
    return { cell: page.row.cells[line], value: Number(text), text, confidence: 95 };
  };
  const reads = new Map([[page.row, [read(0, '41'), read(1, '44')]]]);
  expect(valuesOf(page, reads)).toEqual([47, 44, 48]);
});

test('no number is read from a letter, from lines, or with a digit that is none', () => {
  expect(valuesOf(pageOf(['4K', 'R', '111', '1', 'W5', '01']))).toEqual([]);
});

test('more patches than a number has digits are no number', () => {
  expect(valuesOf(pageOf(['23456']))).toEqual([]);
});

test('the character reader is needed where more than a quarter of the numbers are in doubt, or next to none are there', () => {
  const settled = (texts: readonly string[]) => {
    const page = pageOf(texts);
    return isSettled(page, ownReads(page, digits));
  };
  expect(settled(['47', '48', '49', 'R'])).toBe(true);
  expect(settled(['47', '48', 'R'])).toBe(false);
  expect(settled(['47', '48', '49', 'R', 'W'])).toBe(false);
  expect(settled(['47', '48'])).toBe(false);
});
