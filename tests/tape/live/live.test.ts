import { describe, expect, test } from 'vitest';
import { follow, type Lock, lockOn } from '../../../src/tape/live/live.ts';
import type { GreyImage } from '../../../src/tape/picture/grey-image.ts';
import type { Point } from '../../../src/tape/picture/place.ts';
import { placeIn } from '../../../src/tape/picture/space.ts';
import { readingAt } from '../../../src/tape/scales/read-at.ts';
import { pointOn } from '../../../src/tape/scales/scale.ts';
import type { TapeReading } from '../../../src/tape/scales/tape-reading.ts';
import { scene } from '../../tapes/scene.ts';
import { inGate, THOROUGH } from '../../thorough.ts';
import { type KnownScene, knownScene, readAsKnown } from '../made/known-scene.ts';
import { type Moved, movedPicture, movedPoint } from '../made/moved-picture.ts';
import { seeded } from '../made/stroke-scene.ts';

const tape = knownScene('cm tape on cloth', 3);
const reading = readAsKnown(tape);

function locked(): Lock {
  const lock = lockOn(reading, tape.image);
  if (!lock) throw new Error('not held');
  return lock;
}

/** The worst error in mm of a held scale, at places along the tape that are still in the picture. */
function worst(lock: Lock, { image, fromMm, toMm, lineAt }: KnownScene, moved: Moved): number {
  const errors: number[] = [];
  for (let mm = fromMm + 8; mm < toMm - 8; mm += 3.7) {
    const { x, y } = movedPoint(image, moved, lineAt(mm));
    if (x < 20 || y < 20 || x > image.width - 20 || y > image.height - 20) continue;
    const told = readingAt(lock.reading, { x, y });
    if (told.ok) errors.push(Math.abs(told.mm - mm));
  }
  expect(errors.length).toBeGreaterThan(20);
  return Math.max(...errors);
}

test('the scene is read right before it is followed', () => {
  expect(worst(locked(), tape, {})).toBeLessThan(0.1);
});

describe('a frame in which the hand moved a little', () => {
  const moves: Record<string, Moved> = {
    'not at all': {},
    'a few pixels along and across': { right: 9, down: -6 },
    'between the pixels of the small copy': { right: 9, down: -8 },
    'half a graduation along': { right: 5, down: 0.5 },
    'dozens of pixels': { right: -55, down: 40 },
    'turned by a degree': { turn: 0.017, right: 4 },
    'nearer by two in a hundred': { size: 1.02, down: 5 },
    'farther, turned, shifted and darker': { size: 0.985, turn: -0.012, right: 12, gain: 0.7 },
    'in brighter light': { right: 3, gain: 1.1, lift: 20 },
  };
  for (const [name, moved] of inGate(Object.entries(moves), (_, i) => i % 2 === 1)) {
    test(`${name}: held, and right to 0.2 mm`, () => {
      const held = follow(locked(), movedPicture(tape.image, moved));
      expect(held).toBeDefined();
      expect(worst(held!, tape, moved)).toBeLessThan(0.2);
    });
  }

  const FRAMES = THOROUGH ? 6 : 3;
  test('step by step through many frames it doesn’t drift', () => {
    let lock: Lock | undefined = locked();
    let moved: Moved = {};
    for (let frame = 1; frame <= FRAMES && lock; frame++) {
      moved = { right: 11 * frame, down: -7 * frame, turn: 0.006 * frame, size: 1 + 0.008 * frame };
      lock = follow(lock, movedPicture(tape.image, moved));
    }
    expect(lock).toBeDefined();
    expect(worst(lock!, tape, moved)).toBeLessThan(0.2);
  });

  test('its numbers and outline move along, to half a millimetre', () => {
    const moved = { right: 14, down: -9 };
    const before = reading.scales[0]!;
    const [after] = follow(locked(), movedPicture(tape.image, moved))!.reading.scales;
    before.numbers.forEach((number, i) => {
      const now = after!.numbers[i]!;
      expect(now.value).toBe(number.value);
      expect(Math.hypot(now.x - number.x - 14, now.y - number.y + 9)).toBeLessThan(3);
    });
    expect(after!.outline).toHaveLength(before.outline.length);
  });
});

describe('what a held scale does not own', () => {
  const moved = { right: 30, down: 40, turn: 0.01 };
  const [scale] = reading.scales;
  const { geometry } = scale!;
  /** A row of lines 4 mm past the middle of these, and a place on it. */
  const { origin, across } = geometry.frame;
  const [x, y] = pointsBy(4 * (1 / geometry.model.a));
  const row = { ...geometry, frame: { ...geometry.frame, origin: placeIn<'picture'>(x, y) } };
  const there = pointOn(row, (geometry.from + geometry.to) / 2, 0);

  function pointsBy(px: number) {
    return [origin[0] + across[0] * px, origin[1] + across[1] * px] as const;
  }

  const told = (lock: Lock | undefined, at: Point) => {
    const held = readingAt(lock!.reading, at);
    return held.ok ? held.mm : held.reason;
  };

  test('is read when nothing else is there', () => {
    expect(told(locked(), there)).toBeTypeOf('number');
    const held = follow(locked(), movedPicture(tape.image, moved));
    expect(told(held, movedPoint(tape.image, moved, there))).toBeTypeOf('number');
  });

  test('is not where a row of lines was seen that nothing was read on', () => {
    const lock = lockOn({ ...reading, unread: [row] }, tape.image);
    expect(told(lock, there)).toBe('another-scale');
    const held = follow(lock!, movedPicture(tape.image, moved));
    expect(told(held, movedPoint(tape.image, moved, there))).toBe('another-scale');
  });

  test('is not where a scale was read that is doubted', () => {
    const doubted = { ...scale!, geometry: row, sure: false };
    const lock = lockOn({ ...reading, scales: [scale!, doubted] }, tape.image);
    expect(told(lock, there)).toBe('not-sure-yet');
    const held = follow(lock!, movedPicture(tape.image, moved));
    expect(told(held, movedPoint(tape.image, moved, there))).toBe('not-sure-yet');
  });
});

describe('never a wrong line', () => {
  test('shifted by exactly one centimetre along the tape', () => {
    const [here, next] = [tape.lineAt(tape.fromMm + 60), tape.lineAt(tape.fromMm + 70)];
    for (const way of [1, -1]) {
      const moved = { right: way * (next.x - here.x), down: way * (next.y - here.y) };
      const held = follow(locked(), movedPicture(tape.image, moved));
      if (held) expect(worst(held, tape, moved)).toBeLessThan(0.2);
    }
  });

  test('the same lines in another light, every number one more or one less', () => {
    for (const mm of [-10, 10]) {
      const other = knownScene('cm tape on cloth', 3, mm);
      const held = follow(locked(), movedPicture(other.image, { gain: 0.85, lift: 12 }));
      if (held) expect(worst(held, other, {})).toBeLessThan(0.2);
    }
  });

  test('the same lines in the same place, with only a digit of each number another', () => {
    for (const mm of [-100, 100]) {
      const other = knownScene('cm tape on cloth', 3, mm);
      const held = follow(locked(), other.image);
      if (held) expect(worst(held, other, {})).toBeLessThan(0.2);
    }
  });

  test('the same lines in the same place, with numbers from farther than a hand moves', () => {
    for (const mm of [-50, 40]) {
      const other = knownScene('cm tape on cloth', 3, mm);
      expect(follow(locked(), other.image)).toBeUndefined();
    }
  });
});

describe('not held', () => {
  const { width, height } = tape.image;

  test('another tape', () => {
    const other = scene('cm tape on cloth', 5);
    const pixels = movedPicture(other, {}).pixels;
    const same = { width, height, pixels: new Uint8Array(width * height) };
    for (let y = 0; y < Math.min(height, other.height); y++) {
      for (let x = 0; x < Math.min(width, other.width); x++) {
        same.pixels[y * width + x] = pixels[y * other.width + x]!;
      }
    }
    expect(follow(locked(), same)).toBeUndefined();
  });

  test('a blank picture, noise, or one of another size', () => {
    const random = seeded(5);
    const picture = (grey: () => number): GreyImage => ({
      width,
      height,
      pixels: Uint8Array.from({ length: width * height }, grey),
    });
    expect(
      follow(
        locked(),
        picture(() => 170),
      ),
    ).toBeUndefined();
    expect(
      follow(
        locked(),
        picture(() => 255 * random()),
      ),
    ).toBeUndefined();
    const half = { width: width / 2, height, pixels: new Uint8Array((width / 2) * height) };
    expect(follow(locked(), half)).toBeUndefined();
  });

  test('moved farther than a hand moves between two frames', () => {
    expect(follow(locked(), movedPicture(tape.image, { right: 600, down: 300 }))).toBeUndefined();
  });

  test('a reading without a sure scale, or with a single number', () => {
    const [scale] = reading.scales;
    const doubted = { ...scale!, sure: false };
    expect(lockOn({ ...reading, scales: [doubted] }, tape.image)).toBeUndefined();
    const single = { ...scale!, numbers: scale!.numbers.slice(0, 1) };
    expect(lockOn({ ...reading, scales: [single] }, tape.image)).toBeUndefined();
    const sure = ({ scales }: TapeReading) => scales.map((one) => one.sure);
    const both = lockOn({ ...reading, scales: [single, scale!] }, tape.image)!;
    expect(sure(both.reading)).toEqual([false, true]);
  });
});
