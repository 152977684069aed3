import { describe, expect, test } from 'vitest';
import type { GreyImage } from '../../../src/tape/picture/grey-image.ts';
import { readingAt } from '../../../src/tape/scales/read-at.ts';
import type { TapeReading } from '../../../src/tape/scales/tape-reading.ts';
import { snapTo } from '../../../src/tape/touch/snap.ts';
import { scaleByTouch, type Touch } from '../../../src/tape/touch/touch.ts';
import { cameraOf } from '../../tapes/camera.ts';
import { inGate } from '../../thorough.ts';
import { drawScene, placeOf, type Scene, seeded } from '../made/stroke-scene.ts';

// No source: that 95 of 100 places lie within a stated 95 % is what the words mean. Geometry of
// the pinhole camera as in tests/tapes/camera.ts; everything is drawn by lot, the same each time.

type See = (along: number, across: number) => readonly [x: number, y: number];

/** A number from a bell of sigma 1 (Box and Muller's way). */
function bell(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/** How many places, and how many of them lie within what is stated. */
interface Tally {
  places: number;
  within: number;
}

/** Places on and beside a row that reads `zero` mm at 0, from `from` to `to` and a third beyond. */
function count(tally: Tally, reading: TapeReading, see: See, row: Row): void {
  const { from, to, zero } = row;
  for (let part = -0.33; part < 1.34; part += 0.07) {
    for (const across of [-8, -4, 0, 5, 10]) {
      const along = from + part * (to - from);
      const [x, y] = see(along, across);
      const told = readingAt(reading, { x, y });
      if (!told.ok) continue;
      tally.places++;
      if (Math.abs(told.mm - zero - along) <= told.uncertaintyMm) tally.within++;
    }
  }
}

interface Row {
  readonly from: number;
  readonly to: number;
  readonly zero: number;
}

const TOUCHES = inGate([2, 3, 5], (touches) => touches !== 3);
const share = ({ places, within }: Tally) => within / places;

describe('law: 95 of 100 places lie within the stated ±, where no line is snapped to', () => {
  const [width, height] = [600, 450];
  const blank: GreyImage = { width, height, pixels: new Uint8Array(width * height).fill(128) };
  const finger = width / 400;

  /** A tape at any angle, seen from anywhere near: its places, and how long it is. */
  function laid(random: () => number, tilt: number) {
    const distance = 250 + 250 * random();
    const towards = 360 * random();
    const camera = cameraOf({ width, height, focal: 480, distance, tilt, towards, barrel: 0 });
    const turn = 2 * Math.PI * random();
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const to = 80 + random() * (Math.min(280, 0.9 * distance) - 80);
    const see: See = (along, across) => {
      const x = along - to / 2;
      const place = camera.see(x * c - across * s, x * s + across * c, 0);
      return [place.x, place.y];
    };
    return { see, row: { from: 0, to, zero: 500 } };
  }

  test.each(inGate([0, 15, 30], (tilt) => tilt !== 15))('seen %i° from square', (tilt) => {
    for (const touches of TOUCHES) {
      const random = seeded(100 * tilt + touches);
      const tally = { places: 0, within: 0 };
      for (let round = 0; round < 70; round++) {
        const { see, row } = laid(random, tilt);
        // Two near each other may come out of order: then there is no scale to judge.
        const inner = Array.from({ length: touches - 2 }, () => row.to * random());
        const made = scaleByTouch(
          blank,
          [0, row.to, ...inner].map((mm) => {
            const [x, y] = see(mm, random() - 0.5);
            const [dx, dy] = [finger * bell(random), finger * bell(random)];
            return { x: x + dx, y: y + dy, value: (row.zero + mm) / 10, unit: 'cm' };
          }),
        );
        if (made.ok) count(tally, made.value, see, row);
      }
      expect(tally.places).toBeGreaterThan(2500);
      expect(share(tally), `${touches} touches`).toBeGreaterThanOrEqual(0.95);
    }
  });
});

const SQUARE: Scene = {
  width: 900,
  height: 420,
  turn: 0.1,
  pxPerMm: 10,
  strokeLength: 4,
  tenthLength: 8,
  at: [450, 140],
  noise: 20,
};
const ZERO = 250;
const CENTIMETRES = [-30, -20, -10, 0, 10, 20, 30];

function greyOf(scene: Scene): GreyImage {
  const { width, height, values } = drawScene(scene);
  return { width, height, pixels: Uint8Array.from(values) };
}

/** A finger on a long line, and what it snaps to. */
function snapped(scene: Scene, image: GreyImage, mm: number, random: () => number): Touch {
  const [x, y] = placeOf(scene, mm, 3);
  const finger = scene.width / 400;
  const place = snapTo(image, { x: x + finger * bell(random), y: y + finger * bell(random) });
  return { ...place, value: (ZERO + mm) / 10, unit: 'cm' };
}

describe('law: 95 of 100 places lie within the stated ±, where lines are snapped to and followed', () => {
  // 900 px from as far as the tape is long: 0.0055 for each mm is 30°, along, across and between.
  test.each([
    ['square', [0, 0]],
    ['tilted along', [0.0055, 0]],
    ['tilted across', [0, 0.0055]],
    ['tilted between', [-0.004, 0.004]],
  ] as const)('%s', (_, tilt) => {
    const scene: Scene = { ...SQUARE, tilt };
    const image = greyOf(scene);
    const see: See = (along, across) => placeOf(scene, along, 3 + across);
    for (const touches of TOUCHES) {
      const random = seeded(touches);
      const tally = { places: 0, within: 0 };
      for (let round = 0; round < 8; round++) {
        const inner = CENTIMETRES.slice(1, -1).sort(() => random() - 0.5);
        const lines = [-30, 30, ...inner.slice(0, touches - 2)];
        const made = scaleByTouch(
          image,
          lines.map((mm) => snapped(scene, image, mm, random)),
        );
        if (made.ok) count(tally, made.value, see, { from: -30, to: 30, zero: ZERO });
      }
      expect(tally.places).toBeGreaterThan(300);
      expect(share(tally), `${touches} touches`).toBeGreaterThanOrEqual(0.95);
    }
  });
});

test.each(TOUCHES)(
  '%i snapped touches, sharp and square: within 0.3 mm between them',
  (touches) => {
    const image = greyOf(SQUARE);
    const random = seeded(1);
    const lines = CENTIMETRES.filter(
      (mm) => Math.abs(mm) === 30 || Math.abs(mm) < 10 * (touches - 2),
    );
    const made = scaleByTouch(
      image,
      [...lines.slice(0, touches - 1), 30].map((mm) => snapped(SQUARE, image, mm, random)),
    );
    for (let mm = -30; made.ok && mm <= 30; mm += 1.7) {
      for (const across of [0.5, 2, 3.5]) {
        const [x, y] = placeOf(SQUARE, mm, across);
        const told = readingAt(made.value, { x, y });
        expect(told.ok && told.uncertaintyMm, `${mm}`).toBeLessThanOrEqual(0.3);
        expect(told.ok && Math.abs(told.mm - ZERO - mm)).toBeLessThan(0.1);
      }
    }
    expect(made.ok).toBe(true);
  },
);

test('the ± grows without a break away from the touches', () => {
  const blank = { width: 900, height: 320, pixels: new Uint8Array(900 * 320).fill(180) };
  for (const values of [
    [10, 20],
    [10, 16, 20],
    [10, 12, 15, 18, 20],
  ]) {
    const touches = values.map(
      (value): Touch => ({ x: 50 * value - 300, y: 150, value, unit: 'cm' }),
    );
    const made = scaleByTouch(blank, touches);
    const within = [20, 20.5, 21, 22, 23].map((value) => {
      if (!made.ok) return Number.NaN;
      const told = readingAt(made.value, { x: 50 * value - 300, y: 150 });
      return told.ok ? told.uncertaintyMm : Number.NaN;
    });
    expect(within).toEqual([...within].sort((one, other) => one - other));
    expect(within[4]).toBeGreaterThan(1.5 * within[0]!);
  }
});
