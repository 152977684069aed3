import { describe, expect, test } from 'vitest';
import { MOST_BLIND_PAGES, MOST_RUBBISH_PAGES } from '../../../src/tape/characters/limits.ts';
import { pageReader } from '../../../src/tape/characters/read-cells.ts';
import type { Component } from '../../../src/tape/numbers/components.ts';
import { cellOf, type NumberRow, type NumberRows } from '../../../src/tape/numbers/number-row.ts';
import { placeIn } from '../../../src/tape/picture/space.ts';
import { printed } from '../../train/digits/letter-masks.ts';

const letters = printed([{ name: 'overpass', licence: 'OFL-1.1', weights: [500] }]);
const TALL = 36;
const APART = 120;

/** A sheet with a row of numbers in a typeface, dark on light. */
function rowOf(texts: readonly string[]): NumberRows & { readonly rows: readonly [NumberRow] } {
  const [width, height] = [APART * (texts.length + 1), 3 * TALL];
  const values = new Float32Array(width * height);
  const labels = new Int32Array(width * height);
  const cells = texts.map((text, index) => {
    let left = APART * index + TALL;
    const parts = [...text].map((letter): Component => {
      const mask = letters[0]?.(letter);
      if (!mask) throw new Error('no typeface');
      const share = mask.height / TALL;
      const wide = Math.round(mask.width / share);
      const id = left;
      for (let y = 0; y < TALL; y++) {
        for (let x = 0; x < wide; x++) {
          const from = Math.floor((y + 0.5) * share) * mask.width;
          const alpha = mask.alpha[from + Math.min(mask.width - 1, Math.floor((x + 0.5) * share))];
          const at = (TALL + y) * width + left + x;
          values[at] = -(alpha as number) / 255;
          if ((alpha as number) > 127) labels[at] = id;
        }
      }
      const [x0, x1, y0, y1] = [left, left + wide - 1, TALL, 2 * TALL - 1];
      left += wide + 6;
      const size = { width: wide, height: TALL, area: wide * TALL };
      return { id, x0, x1, y0, y1, middleX: (x0 + x1) / 2, middleY: (y0 + y1) / 2, ...size };
    });
    return cellOf(parts, { fromTick: 0, perTick: 8 });
  });
  const row = { cells, height: TALL, middle: 1.5 * TALL, turned: false, across: 0 };
  const scale = { perTick: 8, fromTick: 0, fromAcross: 0 };
  const sheet = { width, height, values, ...scale, toMeasuring: placeIn<'measuring'> };
  return { sheet, labels, ground: new Float32Array(width * height), rows: [row] };
}

function countingReader() {
  let asked = 0;
  const { readRows } = pageReader(async () => {
    asked++;
    return [];
  });
  const values = async (found: ReturnType<typeof rowOf>, turns: 0 | 2) =>
    ((await readRows(found, found.rows, turns)).get(found.rows[0]) ?? []).map((one) => one.value);
  return { values, asked: () => asked };
}

describe('the character reader is asked', () => {
  test('about no number where all are sure by themselves, nor about the same the other way up', async () => {
    const { values, asked } = countingReader();
    const sure = rowOf(['47', '48', '49', '50']);
    expect(await values(sure, 0)).toEqual([47, 48, 49, 50]);
    await values(sure, 2);
    expect(asked()).toBe(0);
  });

  test('where some are in doubt', async () => {
    const { values, asked } = countingReader();
    expect(await values(rowOf(['47', 'K', '49', 'R']), 0)).toEqual([47, 49]);
    expect(asked()).toBe(1);
  });

  test('no more about numbers that were sure the other way up', async () => {
    const { values, asked } = countingReader();
    const some = rowOf(['47', '62', '53', 'K', 'R']);
    expect(await values(some, 0)).toEqual([47, 62, 53]);
    expect(asked()).toBe(1);
    await values(some, 2);
    expect(asked()).toBe(1);
  });

  test('fewer times yet where all that is seen is surely no digit', async () => {
    const { values, asked } = countingReader();
    for (let i = 0; i < MOST_RUBBISH_PAGES + 2; i++) await values(rowOf(['K', 'R']), 0);
    expect(asked()).toBe(MOST_RUBBISH_PAGES);
    await values(rowOf(['47', 'R']), 0);
    expect(asked()).toBe(MOST_RUBBISH_PAGES + 1);
  });

  test('a few times only where no digit is sure, and then still where one is', async () => {
    const { values, asked } = countingReader();
    for (let i = 0; i < MOST_BLIND_PAGES + 3; i++) await values(rowOf(['4K', 'R']), 0);
    expect(asked()).toBe(MOST_BLIND_PAGES);
    await values(rowOf(['47', 'R']), 0);
    expect(asked()).toBe(MOST_BLIND_PAGES + 1);
  });
});
