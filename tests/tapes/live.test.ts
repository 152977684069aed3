import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { follow, type Lock, lockOn } from '../../src/tape/live/live.ts';
import type { GreyImage } from '../../src/tape/picture/grey-image.ts';
import type { Point } from '../../src/tape/picture/place.ts';
import { readTape } from '../../src/tape/reader/read-tape.ts';
import { readingAt } from '../../src/tape/scales/read-at.ts';
import { placeOn, type ScaleGeometry } from '../../src/tape/scales/scale.ts';
import type { TapeReading } from '../../src/tape/scales/tape-reading.ts';
import { frameAround } from '../browser/camera-file.ts';
import { knownScene } from '../tape/made/known-scene.ts';
import { inGate, thoroughly } from '../thorough.ts';
import { nodeEngine } from './node-engine.ts';
import { type Scene, type SceneKind, scene } from './scene.ts';

let engine: Awaited<ReturnType<typeof nodeEngine>>;
beforeAll(async () => {
  engine = await nodeEngine();
});
afterAll(() => engine.close());

/** Half of the smallest division of a tape. Common practice, no source. */
const RIGHT_MM = 0.5;

/** The true place in the middle of those on each scale. */
function middles({ points }: Scene) {
  const on = points.filter(({ onScale }) => onScale);
  return [...new Set(on.map(({ scale }) => scale))].map((id) => {
    const there = on.filter(({ scale }) => scale === id).sort((one, other) => one.mm - other.mm);
    return there[there.length >> 1]!;
  });
}

/** A camera over a scene, as the worker uses it: what the cross stands on, and what it reads. */
function camera(drawn: Scene) {
  let lock: Lock | undefined;
  let reads = 0;
  return {
    reads: () => reads,
    /** @returns undefined when the tape is not held. */
    async look(at: Point): Promise<TapeReading | undefined> {
      const image = frameAround(drawn, at);
      lock = lock && follow(lock, image);
      if (!lock) {
        reads += 1;
        const reading = await readTape(image, engine.readPage);
        lock = reading.outcome === 'read' ? lockOn(reading, image) : undefined;
      }
      if (lock) expectNothingWrong(drawn, at, lock);
      return lock?.reading;
    },
  };
}

/** The frame with a bare stripe where the numbers of a scale stand. */
function withoutNumbers({ width, height, pixels }: GreyImage, geometry: ScaleGeometry): GreyImage {
  const bare = pixels.map((grey, i) => {
    const { across } = placeOn(geometry, { x: i % width, y: Math.floor(i / width) });
    return Math.abs(across - geometry.numbersAcross) < 1.2 ? 200 : grey;
  });
  return { width, height, pixels: bare };
}

/** Where a place of the scene is in the frame around another; scenes count from a pixel's corner. */
function inFrame(at: Point, { x, y }: Point, { width, height }: { width: number; height: number }) {
  return { x: x - at.x + width / 2 - 0.5, y: y - at.y + height / 2 - 0.5 };
}

/** What is told anywhere in a frame is what is printed there. */
function expectNothingWrong(drawn: Scene, at: Point, { reading, image }: Lock) {
  for (const point of drawn.points.filter(({ onScale }) => onScale)) {
    const { x, y } = inFrame(at, point, image);
    if (x < 0 || y < 0 || x > image.width || y > image.height) continue;
    const told = readingAt(reading, { x, y });
    if (told.ok) expect(Math.abs(told.mm - point.mm), point.scale).toBeLessThan(RIGHT_MM);
  }
}

function crossOf(reading: TapeReading | undefined) {
  return reading && readingAt(reading, { x: (reading.width - 1) / 2, y: (reading.height - 1) / 2 });
}

/** From place to place, as a hand goes that isn't at rest: some mm from frame to frame. */
function way(from: Point, to: Point): Point[] {
  const steps = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 25);
  return Array.from({ length: steps }, (_, i) => ({
    x: from.x + ((to.x - from.x) * (i + 1)) / steps,
    y: from.y + ((to.y - from.y) * (i + 1)) / steps,
  }));
}

describe('the cross on whichever edge', () => {
  const drawings: [SceneKind, number][] = [
    ['cm and inch from both ends', 11],
    ['two tapes', 12],
  ];
  for (const [kind, seed] of inGate(drawings, (_, i) => i === 0)) {
    test(`${kind} ${seed}: each edge is read, and held as the hand sways`, async () => {
      const drawn = scene(kind, seed);
      for (const { x, y, mm, scale } of middles(drawn)) {
        const { look, reads } = camera(drawn);
        for (const [right, down] of [
          [0, 0],
          [5, -3],
          [12, 2],
        ] as const) {
          const reading = await look({ x: x + right, y: y + down });
          expect(reading, `${scale}, held`).toBeDefined();
          const { x: there, y: below } = inFrame({ x: x + right, y: y + down }, { x, y }, reading!);
          const told = readingAt(reading!, { x: there, y: below });
          expect(told.ok && Math.abs(told.mm - mm), scale).toBeLessThan(0.2);
        }
        expect(reads(), `${scale}, looks at the numbers`).toBe(1);
      }
    });
  }

  thoroughly(
    'from the one edge straight over to the other without looking at the numbers again',
    async () => {
      const drawn = scene('cm and inch from one end', 11);
      const [first, second] = middles(drawn);
      const { look, reads } = camera(drawn);
      await look(first!);
      let last: TapeReading | undefined;
      for (const at of way(first!, second!)) last = await look(at);
      const told = crossOf(last);
      expect(told?.ok && told.unit).toBe('inch');
      expect(told?.ok && Math.abs(told.mm - second!.mm)).toBeLessThan(0.2);
      expect(reads()).toBe(1);
    },
  );

  test('an edge whose numbers can’t be seen any more is let go, and the other one held', async () => {
    const drawn = scene('cm and inch from one end', 11);
    const [first, second] = middles(drawn);
    const image = frameAround(drawn, first!);
    const lock = lockOn(await readTape(image, engine.readPage), image)!;
    const unit = ({ scales }: TapeReading) => scales.filter(({ sure }) => sure).map((s) => s.unit);
    expect(unit(lock.reading)).toEqual(['cm', 'inch']);
    const inches = lock.reading.scales.find((scale) => scale.unit === 'inch')!;
    const held = follow(lock, withoutNumbers(image, inches.geometry))!;
    expect(unit(held.reading)).toEqual(['cm']);
    const { x, y } = inFrame(first!, second!, image);
    expect(readingAt(lock.reading, { x, y }).ok).toBe(true);
    expect(readingAt(held.reading, { x, y }).ok).toBe(false);
  });

  test('inches: the same lines with every number one more or one less are not the same', async () => {
    const read = knownScene('inch tape on cloth', 1);
    const lock = lockOn(await readTape(read.image, engine.readPage), read.image)!;
    for (const mm of [-25.4, 25.4]) {
      const other = knownScene('inch tape on cloth', 1, mm);
      const held = follow(lock, other.image);
      if (!held) continue;
      // The hand may have moved the tape by an inch: then it is read where it is now.
      const { x, y } = other.lineAt((other.fromMm + other.toMm) / 2);
      const told = readingAt(held.reading, { x, y });
      expect(told.ok && Math.abs(told.mm - (other.fromMm + other.toMm) / 2)).toBeLessThan(0.2);
    }
  });

  test('at rest past the numbers in sight at first, it looks again and reads there', async () => {
    const drawn = scene('cm tape on cloth', 3);
    const on = drawn.points.filter(({ onScale }) => onScale).sort((a, b) => a.mm - b.mm);
    const { look, reads } = camera(drawn);
    let past: Point | undefined;
    for (const at of [on[0]!, ...way(on[0]!, on.at(-1)!)]) {
      if (crossOf(await look(at))?.ok === false) past = at;
      if (past) break;
    }
    expect(reads()).toBe(1);
    await look(past!);
    expect(crossOf(await look(past!))?.ok).toBe(true);
    expect(reads()).toBe(2);
  });
});
