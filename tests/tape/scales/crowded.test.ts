import { expect, test } from 'vitest';
import type { GreyImage } from '../../../src/tape/picture/grey-image.ts';
import { readTape } from '../../../src/tape/reader/read-tape.ts';
import { readingAt } from '../../../src/tape/scales/read-at.ts';
import { centimetreLines, type DrawnTape, drawTape } from '../made/drawn-tape.ts';
import { readGlyphs } from '../made/glyph-reader.ts';
import { seeded } from '../made/stroke-scene.ts';

/** Level, 10 px to a millimetre, its lines downwards from y = 210, 41 cm at x = 650. */
const TAPE: DrawnTape = {
  width: 1300,
  height: 420,
  pitchPx: 10,
  lineLength: centimetreLines,
  numbers: Array.from({ length: 11 }, (_, i) => ({
    text: String(36 + i),
    along: 10 * (i - 5),
    across: 6.5,
    height: 3.5,
  })),
};

function picture(
  draw: (dark: (x: number, y: number, width: number, height: number) => void) => void,
): GreyImage {
  const { width, height, values } = drawTape(TAPE);
  const pixels = Uint8Array.from(values);
  draw((x, y, w, h) => {
    for (let row = y; row < y + h; row++) pixels.fill(40, row * width + x, row * width + x + w);
  });
  return { width, height, pixels };
}

async function told(image: GreyImage, ...places: readonly (readonly [x: number, y: number])[]) {
  const reading = await readTape(image, async (page) => readGlyphs(page));
  return places.map(([x, y]) => {
    const one = readingAt(reading, { x, y });
    return one.ok ? Math.round(one.mm) : one.reason;
  });
}

const ON = [750, 216] as const;

test('the ground beside a tape is measured too', async () => {
  expect(
    await told(
      picture(() => {}),
      ON,
      [750, 170],
    ),
  ).toEqual([420, 420]);
});

test('strokes beyond the lines are another length of tape’s: there and past them nothing is told', async () => {
  const strokes = picture((dark) => {
    // Unevenly apart, or they would be followed as a row of their own.
    const random = seeded(5);
    for (let x = 606; x < 1290; x += Math.round(7 + 13 * random())) dark(x, 180, 3, 20);
  });
  const other = 'another-scale';
  expect(await told(strokes, ON, [750, 190], [750, 165])).toEqual([420, other, other]);
  // Where there are none, the ground is measured.
  expect(await told(strokes, [350, 190])).toEqual([380]);
});

test('up to the strokes it is bare tape of that length already', async () => {
  const digits = picture((dark) => {
    const random = seeded(5);
    for (let x = 206; x < 1290; x += Math.round(9 + 13 * random())) dark(x, 160, 4, 16);
  });
  expect(await told(digits, ON, [750, 190])).toEqual([420, 'another-scale']);
});

test('some threads or a pin beside the lines are no tape', async () => {
  const pins = picture((dark) => {
    for (const x of [500, 640]) dark(x, 170, 3, 30);
  });
  expect(await told(pins, [750, 180], [560, 180])).toEqual([420, 401]);
});

test('lines in line with those of a tape that touches this one aren’t its own', async () => {
  const doubled = picture((dark) => {
    dark(0, 205, 1300, 4);
    for (let x = 50; x < 1300; x += 10) dark(x - 1, 180, 2, 27);
  });
  expect(await told(doubled, [750, 222], [750, 190])).toEqual([420, 'another-scale']);
});
