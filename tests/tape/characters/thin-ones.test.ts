import { describe, expect, test } from 'vitest';
import { withThinOnes } from '../../../src/tape/characters/thin-ones.ts';
import { componentOf } from '../../../src/tape/numbers/components.ts';
import { cellOf } from '../../../src/tape/numbers/number-row.ts';

const HEIGHT = 26;

/** Patches from left to right, each `width` wide, or so wide and so tall. */
function numberOf(...sizes: (number | [width: number, height: number, down?: number])[]) {
  let x0 = 0;
  const parts = sizes.map((size, id) => {
    const [width, height, down = 0] = typeof size === 'number' ? [size, HEIGHT] : size;
    const y0 = (HEIGHT - height) / 2 + down;
    const part = componentOf(id, { x0, x1: x0 + width - 1, y0, y1: y0 + height - 1, area: 50 });
    x0 += width + 8;
    return part;
  });
  return cellOf(parts, { fromTick: 0, perTick: 10 });
}

const row = { cells: [], height: HEIGHT, middle: 13, turned: false, across: 5 };
const read = (text: string, cell: ReturnType<typeof numberOf>, backwards = false) =>
  withThinOnes(text, cell, row, backwards);

describe('plain 1s that were passed over', () => {
  test.each([
    ['12', [3, 3, 18], '112'],
    ['9', [3, 3, 18], '119'],
    ['20', [3, 18, 18], '120'],
    ['1', [3, 3, 3], '111'],
    ['2', [3, 18, 4], '121'],
  ])('%s among patches %j is %s', (text, sizes, whole) => {
    expect(read(text, numberOf(...sizes))).toBe(whole);
  });

  test('from right to left where the number stands upside down on the sheet', () => {
    expect(read('12', numberOf(18, 3, 3), true)).toBe('112');
    expect(read('21', numberOf(3, 3, 18), true)).toBe('211');
  });

  test('a little off their ends by blur they are 1s all the same', () => {
    expect(read('12', numberOf([3, 21], 3, 18))).toBe('112');
  });

  test('strokes that are taller, shorter or off the row are none', () => {
    expect(read('23', numberOf([3, 32], 18, 18))).toBe('23');
    expect(read('23', numberOf([3, 17], 18, 18))).toBe('23');
    expect(read('23', numberOf([3, 24, 6], 18, 18))).toBe('23');
  });

  test('what the patches don’t account for stays as it was read', () => {
    expect(read('23', numberOf(3, 18))).toBe('23');
    expect(read('2', numberOf(3, 18, 18))).toBe('2');
    expect(read('123', numberOf(3, 18, 18))).toBe('123');
    const turned = withThinOnes('2', numberOf(3, 18), { ...row, turned: true }, false);
    expect(turned).toBe('2');
  });
});
