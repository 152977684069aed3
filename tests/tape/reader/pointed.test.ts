import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { GreyImage } from '../../../src/tape/picture/grey-image.ts';
import { readTape } from '../../../src/tape/reader/read-tape.ts';
import { windowsAbout } from '../../../src/tape/reader/windows.ts';
import { readingAt } from '../../../src/tape/scales/read-at.ts';
import { centimetreLines, drawTape } from '../made/drawn-tape.ts';
import { readGlyphs } from '../made/glyph-reader.ts';

/** A picture with a small tape in a corner, 41 in its middle at `at`, and coarser stripes below. */
function smallTape() {
  const [width, height, pitchPx] = [1500, 1100, 4];
  const numbers = Array.from({ length: 10 }, (_, i) => {
    return { text: String(36 + i), along: 10 * (i - 5), across: 6.5, height: 3.5 };
  });
  const tape = drawTape({ width: 420, height: 120, pitchPx, lineLength: centimetreLines, numbers });
  const pixels = new Uint8Array(width * height).fill(190);
  const [left, top] = [150, 180];
  for (let y = 0; y < tape.height; y++) {
    const row = tape.values.subarray(y * tape.width, (y + 1) * tape.width);
    pixels.set(row, (top + y) * width + left);
  }
  for (let y = 600; y < 660; y++)
    for (let x = 100; x < 1400; x += 13) pixels.fill(40, y * width + x, y * width + x + 2);
  const at = { x: left + tape.width / 2, y: top + tape.height / 2 };
  return { image: { width, height, pixels }, at, pitchPx };
}

// As a whole that picture gives nothing: its lines are too fine, and the stripes clearer.
test('a tape that is small in its picture is read where the maker points', async () => {
  const { image, at, pitchPx } = smallTape();
  const readPage = async (page: GreyImage) => readGlyphs(page);
  const reading = await readTape(image, readPage, undefined, at);
  const told = readingAt(reading, { x: at.x + 10 * pitchPx - 0.5, y: at.y });
  expect(told).toMatchObject({ ok: true, unit: 'cm' });
  expect(told.ok && told.mm).toBeCloseTo(420, 0);
});

test('windows about a place hold it, lie in the picture, and are smaller than it', () => {
  const side = fc.integer({ min: 200, max: 4000 });
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(side, side, share, share, (width, height, right, down) => {
      const image = { width, height, pixels: new Uint8Array() };
      const at = { x: right * (width - 1), y: down * (height - 1) };
      for (const part of windowsAbout(image, at)) {
        const { left, top } = part;
        expect(left <= at.x && at.x <= left + part.width).toBe(true);
        expect(top <= at.y && at.y <= top + part.height).toBe(true);
        expect(left >= 0 && left + part.width <= width).toBe(true);
        expect(top >= 0 && top + part.height <= height).toBe(true);
        expect(part.width * part.height).toBeLessThan(width * height);
      }
    }),
    { seed: 16 },
  );
});
