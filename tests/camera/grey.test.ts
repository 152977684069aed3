import fc from 'fast-check';
import { expect, test } from 'vitest';
import { greyOf } from '../../src/camera/grey.ts';

/** A drawing of one colour after another, row after row. */
function drawing(width: number, colours: readonly (readonly [number, number, number])[]) {
  return {
    getImageData: (_x: number, y: number, w: number, h: number) => ({
      data: colours.slice(y * width, y * width + w * h).flatMap((colour) => [...colour, 255]),
    }),
  };
}

test('colours become grey as luma has it', () => {
  // ITU-R BT.601: Y = 0.299 R + 0.587 G + 0.114 B, worked by hand.
  const colours = [
    [255, 0, 0],
    [0, 255, 0],
    [0, 0, 255],
    [255, 255, 255],
    [0, 0, 0],
    [10, 20, 30],
  ] as const;
  expect([...greyOf(drawing(3, colours), 3, 2).pixels]).toEqual([76, 150, 29, 255, 0, 18]);
});

test('a picture taller than what is turned at a time keeps its rows in order', () => {
  const rows = 700;
  const colours = Array.from({ length: rows }, (_, y) => [y % 256, y % 256, y % 256] as const);
  const { pixels } = greyOf(drawing(1, colours), 1, rows);
  expect([...pixels]).toEqual(colours.map(([grey]) => grey));
});

test('grey stays grey', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 255 }), (grey) => {
      expect(greyOf(drawing(1, [[grey, grey, grey]]), 1, 1).pixels[0]).toBe(grey);
    }),
  );
});
