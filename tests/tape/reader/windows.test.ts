import { describe, expect, test } from 'vitest';
import type { GreyImage } from '../../../src/tape/picture/grey-image.ts';
import { distanceAt } from '../../../src/tape/pitch/position.ts';
import { readTape } from '../../../src/tape/reader/read-tape.ts';
import { cutOut, windowsOf } from '../../../src/tape/reader/windows.ts';
import { readingAt } from '../../../src/tape/scales/read-at.ts';
import { centimetreLines, type DrawnTape, drawTape, truthOf } from '../made/drawn-tape.ts';
import { readGlyphs } from '../made/glyph-reader.ts';
import { toImage } from '../made/plain-places.ts';

/** Five px to a millimetre: where the picture is shrunk to be looked at as a whole, less than two. */
function tapeOf(centimetres: number, first = 41, misprint: Record<number, string> = {}): DrawnTape {
  const ticks = Array.from({ length: centimetres }, (_, i) => 10 * (i - (centimetres >> 1)));
  return {
    width: 50 * centimetres + 40,
    height: 260,
    pitchPx: 5,
    angle: 0.04,
    lineLength: centimetreLines,
    numbers: ticks.map((tick) => ({
      text: misprint[tick] ?? String(first + tick / 10),
      along: tick,
      across: 6.5,
      height: 3.5,
    })),
  };
}

const [LEFT, TOP] = [2300, 1500];

/** A tape far off in a large picture of bare cloth. */
function farOff(tape: DrawnTape): GreyImage {
  const [width, height] = [4600, 2400];
  const pixels = new Uint8Array(width * height).fill(200);
  const drawn = drawTape(tape);
  for (let y = 0; y < drawn.height; y++) {
    for (let x = 0; x < drawn.width; x++) {
      pixels[(TOP + y) * width + LEFT + x] = drawn.values[y * drawn.width + x] as number;
    }
  }
  return { width, height, pixels };
}

const read = (image: GreyImage) => readTape(image, async (page) => readGlyphs(page));

describe('a tape too far off to be seen in the whole picture', () => {
  const tape = tapeOf(15);
  const picture = farOff(tape);

  test('is read in a window, and told in places of the whole', async () => {
    const reading = await read(picture);
    expect(reading).toMatchObject({ width: 4600, height: 2400, outcome: 'read' });
    const { frame, pitch } = truthOf(tape);
    for (const tick of [-41, -20.5, 0, 17, 38]) {
      const [x, y] = toImage(frame, distanceAt(pitch.model, tick), 0);
      const told = readingAt(reading, { x: LEFT + x, y: TOP + y });
      if (!told.ok) throw new Error(`${tick}: ${told.reason}`);
      expect(Math.abs(told.mm - (410 + tick)), `${tick}`).toBeLessThan(0.15);
      expect(Math.abs(told.mm - (410 + tick)), `${tick}`).toBeLessThanOrEqual(told.uncertaintyMm);
    }
    const xs = reading.scales[0]!.numbers.map(({ x }) => x);
    expect(Math.min(...xs)).toBeGreaterThan(LEFT);
    for (const { x, y } of reading.scales[0]!.outline) {
      expect(x > LEFT - 20 && x < LEFT + tape.width + 20).toBe(true);
      expect(y > TOP - 20 && y < TOP + tape.height + 20).toBe(true);
    }
  });

  test('is no one’s where few numbers name it: what speaks against them may lie outside', async () => {
    expect(await read(farOff(tapeOf(4)))).toMatchObject({ outcome: 'cannot', scales: [] });
  });

  test('is not taken for the first ten where it shows digits alone: they begin anew on some tapes', async () => {
    const reading = await read(farOff(tapeOf(9, 5)));
    expect(reading).toMatchObject({ outcome: 'cannot', scales: [] });
  });

  test('is not asked about where most of what was read says otherwise', async () => {
    // Each of these says another line: none is the better for it.
    const misprint = {
      [-60]: '92',
      [-40]: '17',
      [-10]: '66',
      10: '23',
      20: '78',
      40: '31',
      60: '89',
    };
    const reading = await read(farOff(tapeOf(15, 41, misprint)));
    expect(reading).toMatchObject({ outcome: 'cannot', scales: [] });
  });

  test('lies in the first window, and no window reaches out of the picture', () => {
    const parts = windowsOf(picture, 4);
    const [first] = parts;
    expect(first!.left < LEFT && first!.left + first!.width > LEFT + tape.width).toBe(true);
    for (const part of parts) {
      const { width, height, pixels } = cutOut(picture, part);
      expect(part.left >= 0 && part.top >= 0).toBe(true);
      expect(part.left + width <= picture.width && part.top + height <= picture.height).toBe(true);
      expect(pixels[0]).toBe(picture.pixels[part.top * picture.width + part.left]);
    }
  });
});

test('a picture that is looked at without being shrunk has no windows, nor has a bare one', () => {
  const bare = (width: number, height: number): GreyImage => ({
    width,
    height,
    pixels: new Uint8Array(width * height).fill(180),
  });
  expect(windowsOf(bare(1800, 1200), 4)).toEqual([]);
  expect(windowsOf(bare(4000, 3000), 4)).toEqual([]);
});
