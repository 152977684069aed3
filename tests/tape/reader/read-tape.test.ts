import { describe, expect, test } from 'vitest';
import type { ReadPage } from '../../../src/tape/characters/read-page.ts';
import type { GreyImage } from '../../../src/tape/picture/grey-image.ts';
import { distanceAt } from '../../../src/tape/pitch/position.ts';
import { readTape } from '../../../src/tape/reader/read-tape.ts';
import { isOneEdge } from '../../../src/tape/scales/one-edge.ts';
import { answered } from '../../../src/tape/scales/question.ts';
import { readingAt } from '../../../src/tape/scales/read-at.ts';
import type { TapeReading } from '../../../src/tape/scales/tape-reading.ts';
import { thoroughly } from '../../thorough.ts';
import {
  centimetreLines,
  type DrawnTape,
  drawTape,
  inchLines,
  truthOf,
} from '../made/drawn-tape.ts';
import { readGlyphs } from '../made/glyph-reader.ts';
import { toImage } from '../made/plain-places.ts';
import { seeded } from '../made/stroke-scene.ts';

const readPage: ReadPage = async (page) => readGlyphs(page);

/** Every tenth line of a tape 126 graduations long; 41 stands in the middle. */
const TENS = Array.from({ length: 11 }, (_, i) => 10 * (i - 5));

const CENTIMETRES: DrawnTape = {
  width: 1300,
  height: 420,
  pitchPx: 10,
  angle: 0.06,
  lineLength: centimetreLines,
  numbers: TENS.map((tick) => ({
    text: String(41 + tick / 10),
    along: tick,
    across: 6.5,
    height: 3.5,
  })),
};

function pictureOf(tape: DrawnTape): GreyImage {
  const { width, height, values } = drawTape(tape);
  return { width, height, pixels: Uint8Array.from(values) };
}

/** What is told at a graduation of the drawn tape, in the middle of the band all lines cross. */
function toldAt(reading: TapeReading, tape: DrawnTape, tick: number) {
  const { frame, pitch } = truthOf(tape);
  const [x, y] = toImage(frame, distanceAt(pitch.model, tick), 0);
  return readingAt(reading, { x, y });
}

function expectRight(
  reading: TapeReading,
  tape: DrawnTape,
  mmAt: (tick: number) => number,
  ticks = [-48, -33.3, -20, -1.5, 0, 17.25, 30, 44],
) {
  for (const tick of ticks) {
    const told = toldAt(reading, tape, tick);
    if (!told.ok) throw new Error(`${tick}: ${told.reason}`);
    expect(Math.abs(told.mm - mmAt(tick)), `${tick}`).toBeLessThan(0.1);
    expect(Math.abs(told.mm - mmAt(tick)), `${tick}`).toBeLessThanOrEqual(told.uncertaintyMm);
  }
}

describe('numbers that some tapes begin anew', () => {
  /** 1 to 6, and lines from a graduation on: nought stands at −30. */
  const few = (from: number): DrawnTape => ({
    ...CENTIMETRES,
    lineLength: (tick) => (tick < from ? -2 : centimetreLines(tick)),
    numbers: [1, 2, 3, 4, 5, 6].map((value) => ({
      ...{ text: String(value), along: 10 * value - 30, across: 6.5, height: 3.5 },
    })),
  });

  test('are told where the lines begin at their nought', async () => {
    const tape = few(-30);
    const reading = await readTape(pictureOf(tape), readPage);
    expect(reading).toMatchObject({ outcome: 'read', scales: [{ unit: 'cm', sure: true }] });
    expectRight(reading, tape, (tick) => 30 + tick, [-20, 0, 17.25]);
  });

  test('are asked about where lines go on a number below it: which ten is it', async () => {
    const reading = await readTape(pictureOf(few(-60)), readPage);
    expect(reading).toMatchObject({ outcome: 'ask', question: { kind: 'line' } });
  });
});

describe('a tape that is read', () => {
  test('centimetres, with the share done told from 0 to 1', async () => {
    const shares: number[] = [];
    const picture = pictureOf(CENTIMETRES);
    const reading = await readTape(picture, readPage, (done) => shares.push(done));
    expect(reading).toMatchObject({ width: 1300, height: 420, outcome: 'read' });
    const [scale] = reading.scales;
    expect(scale).toMatchObject({ unit: 'cm', sure: true, doubts: [] });
    expect(scale!.numbers.map(({ value }) => value)).toEqual(TENS.map((tick) => 41 + tick / 10));
    expectRight(reading, CENTIMETRES, (tick) => 410 + tick);
    expect(reading.question).toBeUndefined();
    expect(shares.at(-1)).toBe(1);
    expect(shares[0]).toBeGreaterThan(0);
    expect(shares[0]).toBeLessThan(1);
    expect(shares).toEqual([...shares].sort((one, other) => one - other));
    expect(structuredClone(reading)).toEqual(reading);
  });

  test('past a finger the lines are read again, by the few numbers left there', async () => {
    const picture = pictureOf(CENTIMETRES);
    const { frame, pitch } = truthOf(CENTIMETRES);
    const [from] = toImage(frame, distanceAt(pitch.model, -12), 0);
    const [to] = toImage(frame, distanceAt(pitch.model, 34), 0);
    for (let y = 0; y < picture.height; y++) {
      picture.pixels.fill(150, y * 1300 + Math.round(from), y * 1300 + Math.round(to));
    }
    const reading = await readTape(picture, readPage);
    expectRight(reading, CENTIMETRES, (tick) => 410 + tick, [-48, -33.3, -15, 37, 40, 44.5]);
    for (const hidden of [-5, 5, 25]) expect(toldAt(reading, CENTIMETRES, hidden).ok).toBe(false);
    const [one, other] = reading.scales;
    expect(isOneEdge(one!, other!)).toBe(true);
  });

  test('upside down', async () => {
    const tape = { ...CENTIMETRES, angle: Math.PI + 0.06 };
    expectRight(await readTape(pictureOf(tape), readPage), tape, (tick) => 410 + tick);
  });

  thoroughly('standing upright in the picture', async () => {
    const tape = { ...CENTIMETRES, width: 420, height: 1300, angle: Math.PI / 2 - 0.05 };
    expectRight(await readTape(pictureOf(tape), readPage), tape, (tick) => 410 + tick);
  });

  thoroughly('light print on dark', async () => {
    const tape = { ...CENTIMETRES, light: true };
    expectRight(await readTape(pictureOf(tape), readPage), tape, (tick) => 410 + tick);
  });

  test('seen at a slant: graduations crowd together, and the tilt is told', async () => {
    const tape = { ...CENTIMETRES, crowding: 3e-4 };
    const reading = await readTape(pictureOf(tape), readPage);
    expectRight(reading, tape, (tick) => 410 + tick, [-40, -20, 0, 3.5, 20, 40]);
    expect(reading.tiltDegrees).toBeGreaterThan(8);
    const square = await readTape(pictureOf(CENTIMETRES), readPage);
    expect(square.tiltDegrees).toBeLessThan(4);
  });

  test('inches in sixteenths', async () => {
    const numbers = [-48, -32, -16, 0, 16, 32, 48].map((tick) => ({
      text: String(25 + tick / 16),
      along: tick,
      across: 10,
      height: 5,
    }));
    const tape = { ...CENTIMETRES, lineLength: inchLines, numbers };
    const reading = await readTape(pictureOf(tape), readPage);
    expect(reading.scales[0]).toMatchObject({ unit: 'inch', sure: true });
    expectRight(reading, tape, (tick) => 25.4 * (25 + tick / 16), [-46, -16, 0, 7.5, 40]);
  });

  test('numbers turned across the tape, each beside its line', async () => {
    const numbers = TENS.map((tick) => ({
      text: String(41 + tick / 10),
      along: tick - 2.6,
      across: 8,
      height: 3.4,
      turns: 1,
    }));
    const tape = { ...CENTIMETRES, numbers };
    expectRight(await readTape(pictureOf(tape), readPage), tape, (tick) => 410 + tick);
    const midway = { ...tape, numbers: numbers.map((one) => ({ ...one, along: one.along - 2 })) };
    expect((await readTape(pictureOf(midway), readPage)).outcome).not.toBe('read');
  });

  thoroughly('numbers read against the scale, before their lines as it counts', async () => {
    const against = (sign: 1 | -1) => ({
      ...CENTIMETRES,
      numbers: TENS.map((tick) => ({
        text: String(241 + (sign * tick) / 10),
        along: tick + 3.6,
        across: 6.5,
        height: 2.6,
      })),
    });
    const falling = against(-1);
    const reading = await readTape(pictureOf(falling), readPage);
    expectRight(reading, falling, (tick) => 2410 - tick, [-40, -20, 0, 17.25, 40]);
    // Read as it counts, after its line is against all custom: the line asked about is the next one.
    const rising = await readTape(pictureOf(against(1)), readPage);
    expect(rising).toMatchObject({ outcome: 'ask', question: { kind: 'line' } });
    const { value, x } = rising.question!;
    const { frame, pitch } = truthOf(falling);
    const [next] = toImage(frame, distanceAt(pitch.model, 10 * (value - 241) + 10), 0);
    expect(Math.abs(x - next)).toBeLessThan(3);
  });

  thoroughly('from a small picture, which is doubled first', async () => {
    const tape = { ...CENTIMETRES, width: 650, height: 220, pitchPx: 5 };
    const reading = await readTape(pictureOf(tape), readPage);
    expect(reading).toMatchObject({ width: 650, height: 220, outcome: 'read' });
    expectRight(reading, tape, (tick) => 410 + tick);
  });
});

describe('a tape that is asked about', () => {
  const misreading =
    (change: (text: string) => string): ReadPage =>
    async (page) =>
      readGlyphs(page).map((symbol) => ({ ...symbol, text: change(symbol.text) }));

  test('three numbers that all begin with 1: is this the line? Yes, and it is read', async () => {
    const numbers = [-10, 0, 10].map((tick) => ({
      text: String(104 + tick / 10),
      along: tick,
      across: 6.5,
      height: 2.6,
    }));
    const tape = { ...CENTIMETRES, width: 440, numbers };
    const reading = await readTape(pictureOf(tape), readPage);
    expect(reading).toMatchObject({
      outcome: 'ask',
      question: { kind: 'line', value: 104, unit: 'cm', scale: 0 },
    });
    expect(toldAt(reading, tape, 5)).toEqual({ ok: false, reason: 'not-sure-yet', scale: 0 });
    const { frame, pitch } = truthOf(tape);
    const [x, y] = toImage(frame, distanceAt(pitch.model, 0), 0);
    const { question } = reading;
    expect(Math.hypot((question?.x ?? 0) - x, (question?.y ?? 0) - y)).toBeLessThan(8);
    const read = answered(reading, { kind: 'line', value: 104 });
    expectRight(read, tape, (tick) => 1040 + tick, [-8, 0, 8]);
  });

  test('tenths of an inch, small lines and digits: what do they count?', async () => {
    const numbers = TENS.map((tick) => ({
      text: String(41 + tick / 10),
      along: tick,
      across: 4.5,
      height: 2.4,
    }));
    const lineLength = (tick: number) => centimetreLines(tick) * 0.75 - 0.4;
    const tape = { ...CENTIMETRES, numbers, lineLength };
    const reading = await readTape(pictureOf(tape), readPage);
    expect(reading.outcome).toBe('ask');
    expect(reading.question).toMatchObject({ kind: 'unit', choices: ['cm', 'inch'] });
    expect(toldAt(reading, tape, 5)).toEqual({ ok: false, reason: 'not-sure-yet', scale: 0 });
  });

  test('numbers read wrong by chance are never told as if sure', async () => {
    const digits = seeded(11);
    const random = misreading(() => String(Math.floor(10 * digits())));
    const reading = await readTape(pictureOf(CENTIMETRES), random);
    expect(reading.outcome).not.toBe('read');
    expect(toldAt(reading, CENTIMETRES, 5).ok).toBe(false);
  });
});

describe('a picture that can’t be read', () => {
  const size = { width: 1200, height: 500 };
  const filled = (grey: () => number): GreyImage => ({
    ...size,
    pixels: Uint8Array.from({ length: size.width * size.height }, grey),
  });
  const cannot = (reason: string) => ({ ...size, outcome: 'cannot', reason, scales: [] });

  test('too small for a printed digit', async () => {
    const tiny = { width: 159, height: 90, pixels: new Uint8Array(159 * 90) };
    const reading = await readTape(tiny, readPage);
    expect(reading).toEqual({
      width: 159,
      height: 90,
      outcome: 'cannot',
      reason: 'too-small',
      scales: [],
    });
  });

  test('blank, black, or white', async () => {
    for (const grey of [0, 128, 255]) {
      expect(
        await readTape(
          filled(() => grey),
          readPage,
        ),
      ).toEqual({ ...cannot('no-tape'), unread: [] });
    }
  });

  test('noise', async () => {
    const random = seeded(9);
    const reading = await readTape(
      filled(() => 255 * random()),
      readPage,
    );
    expect(reading).toMatchObject({ outcome: 'cannot', scales: [] });
    expect(['no-tape', 'no-graduations', 'no-numbers']).toContain(reading.reason);
  });

  test('lines without numbers', async () => {
    const reading = await readTape(pictureOf({ ...CENTIMETRES, numbers: [] }), readPage);
    expect(reading).toMatchObject({ outcome: 'cannot', scales: [] });
    expect(['no-numbers', 'few-numbers']).toContain(reading.reason);
  });

  test('numbers that the character reader can’t make out', async () => {
    const reading = await readTape(pictureOf(CENTIMETRES), async () => []);
    expect(reading).toMatchObject({ outcome: 'cannot', reason: 'no-numbers' });
  });

  test('what the character reader throws is passed on', async () => {
    const broken: ReadPage = async () => {
      throw new Error('the engine stopped');
    };
    await expect(readTape(pictureOf(CENTIMETRES), broken)).rejects.toThrow('the engine stopped');
  });
});
