import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { GreyImage } from '../../../src/tape/picture/grey-image.ts';
import { readingAt } from '../../../src/tape/scales/read-at.ts';
import type { TapeReading } from '../../../src/tape/scales/tape-reading.ts';
import { scaleByTouch, type Touch } from '../../../src/tape/touch/touch.ts';
import { drawScene, placeOf, type Scene } from '../made/stroke-scene.ts';

const blank: GreyImage = { width: 900, height: 320, pixels: new Uint8Array(900 * 320).fill(180) };

const cm = (x: number, y: number, value: number): Touch => ({ x, y, value, unit: 'cm' });

function fault(...touches: Touch[]) {
  const made = scaleByTouch(blank, touches);
  return made.ok ? 'made' : made.reason;
}

describe('touches that make no scale', () => {
  test('one-only', () => {
    expect(fault()).toBe('one-only');
    expect(fault(cm(100, 100, 10))).toBe('one-only');
  });

  test('same-place: one line touched twice', () => {
    expect(fault(cm(100, 100, 10), cm(104, 103, 20))).toBe('same-place');
    expect(fault(cm(100, 100, 10), cm(500, 100, 20), cm(502, 101, 21))).toBe('same-place');
    expect(fault(cm(100, 100, 10), cm(107, 100, 20))).toBe('made');
  });

  test('same-value, in whatever unit', () => {
    expect(fault(cm(100, 100, 10), cm(500, 100, 10))).toBe('same-value');
    const inch: Touch = { x: 500, y: 100, value: 10, unit: 'inch' };
    expect(fault(cm(100, 100, 25.4), inch)).toBe('same-value');
  });

  test('not-in-line: the third is beside the row of the outer two', () => {
    expect(fault(cm(100, 100, 10), cm(300, 140, 15), cm(500, 100, 20))).toBe('not-in-line');
    expect(fault(cm(100, 100, 10), cm(300, 120, 15), cm(500, 100, 20))).toBe('made');
  });

  test('order: values don’t grow along the row', () => {
    expect(fault(cm(100, 100, 10), cm(300, 100, 20), cm(450, 100, 18), cm(500, 100, 30))).toBe(
      'order',
    );
    expect(fault(cm(100, 100, 10), cm(300, 100, 18), cm(450, 100, 20), cm(500, 100, 30))).toBe(
      'made',
    );
  });

  test('order: the greatest value is not at an end', () => {
    expect(fault(cm(100, 100, 10), cm(300, 100, 30), cm(500, 100, 20))).toBe('order');
  });
});

const FLAT: Scene = {
  width: 900,
  height: 320,
  turn: 0.1,
  pxPerMm: 10,
  strokeLength: 4,
  at: [450, 140],
  noise: 20,
};

function greyOf(scene: Scene): GreyImage {
  const { width, height, values } = drawScene(scene);
  return { width, height, pixels: Uint8Array.from(values) };
}

/** A finger on the graduation `mm` of the scene, some px beside it; 250 mm stand at the scene's 0. */
function touched(scene: Scene, mm: number, off = 0): Touch {
  const [x, y] = placeOf(scene, mm, scene.strokeLength / 2);
  return { x: x + off, y, value: (250 + mm) / 10, unit: 'cm' };
}

function made(image: GreyImage, touches: readonly Touch[]): TapeReading {
  const scale = scaleByTouch(image, touches);
  if (!scale.ok) throw new Error(scale.reason);
  return scale.value;
}

/** Error and stated uncertainty, in mm, at places of the scene. */
function errors(scene: Scene, reading: TapeReading, places: readonly number[]) {
  return places.map((mm) => {
    const [x, y] = placeOf(scene, mm, scene.strokeLength / 2);
    const told = readingAt(reading, { x, y });
    if (!told.ok) throw new Error(`${mm}: ${told.reason}`);
    return { mm, error: Math.abs(told.mm - 250 - mm), stated: told.uncertaintyMm };
  });
}

const between = [-28, -17.5, -9, -3.2, 0, 4.4, 11, 19.7, 29];

describe('two touched lines', () => {
  test('are a scale whose numbers are the touches', () => {
    const [one, other] = [touched(FLAT, -30), touched(FLAT, 30)];
    const reading = made(greyOf(FLAT), [other, one]);
    expect(reading).toMatchObject({ width: 900, height: 320, outcome: 'read' });
    const [scale] = reading.scales;
    expect(scale).toMatchObject({ unit: 'cm', sure: true, doubts: [], direction: 1 });
    expect(scale!.numbers).toEqual([
      { x: other.x, y: other.y, value: 28 },
      { x: one.x, y: one.y, value: 22 },
    ]);
  });

  test('one in inches, one in centimetres: the numbers are shown in the first one’s unit', () => {
    const [one, other] = [touched(FLAT, -30), touched(FLAT, 30)];
    const inInches: Touch = { ...other, value: 28 / 2.54, unit: 'inch' };
    const [scale] = made(greyOf(FLAT), [one, inInches]).scales;
    expect(scale).toMatchObject({ unit: 'cm' });
    expect(scale!.numbers.map(({ value }) => value)).toEqual([22, expect.closeTo(28, 9)]);
  });

  test('spaced by the lines between them: off by no more than both fingers together', () => {
    const image = greyOf(FLAT);
    fc.assert(
      fc.property(
        fc.double({ min: -2, max: 2, noNaN: true }),
        fc.double({ min: -2, max: 2, noNaN: true }),
        (left, right) => {
          const reading = made(image, [touched(FLAT, -30, left), touched(FLAT, 30, right)]);
          const together = Math.abs(left + right) / 2 / FLAT.pxPerMm;
          for (const { mm, error, stated } of errors(FLAT, reading, between)) {
            expect(error, `${mm}`).toBeLessThan(together + 0.05);
            expect(error, `${mm}`).toBeLessThanOrEqual(stated);
          }
        },
      ),
      { numRuns: 25 },
    );
  });

  // 600 px apart, as far as the camera is away: 0.0008 is 30° from square.
  test.each([0, 0.0002, 0.0005, 0.0008, -0.0008])(
    'alone, on a picture without lines: within what a finger and a tilt of %f make uncertain',
    (lean) => {
      const scene = { ...FLAT, tilt: [lean, 0] } as const;
      const reading = made(blank, [touched(scene, -30, 1), touched(scene, 30, -1)]);
      const found = errors(scene, reading, [...between, 45]);
      for (const { mm, error, stated } of found) expect(error, `${mm}`).toBeLessThanOrEqual(stated);
      const stated = new Map(found.map((one) => [one.mm, one.stated]));
      expect(stated.get(29)).toBeLessThan(1);
      expect(stated.get(0)).toBeGreaterThan(6);
      expect(stated.get(0)).toBeLessThan(9);
      expect(stated.get(45)).toBeGreaterThan(6);
    },
  );

  test('read the tape backwards where it lies so', () => {
    const scene = { ...FLAT, turn: Math.PI - 0.1 };
    const reading = made(greyOf(scene), [touched(scene, -30), touched(scene, 30)]);
    for (const { error } of errors(scene, reading, between)) expect(error).toBeLessThan(0.1);
  });

  test('read a third of their distance beyond, and no farther', () => {
    const reading = made(greyOf(FLAT), [touched(FLAT, -12), touched(FLAT, 12)]);
    const at = (mm: number) => {
      const [x, y] = placeOf(FLAT, mm, 2);
      return readingAt(reading, { x, y });
    };
    expect(at(19)).toMatchObject({ ok: true });
    expect(at(22)).toMatchObject({ ok: false, reason: 'beyond-the-numbers' });
    expect(at(-22)).toMatchObject({ ok: false });
  });
});

describe('touches in inches', () => {
  test('are told in inches, and exactly 25.4 mm each', () => {
    const touches: Touch[] = [
      { x: 100, y: 100, value: 10, unit: 'inch' },
      { x: 608, y: 100, value: 12, unit: 'inch' },
    ];
    const told = readingAt(made(blank, touches), { x: 354, y: 100 });
    expect(told).toMatchObject({ ok: true, unit: 'inch' });
    expect(told.ok && told.value).toBeCloseTo(11, 6);
    expect(told.ok && told.mm).toBeCloseTo(11 * 25.4, 5);
  });

  test('find sixteenths between them', () => {
    // The scene's strokes are sixteenths of an inch when each of its mm is one.
    const touches = [-32, 32].map((tick): Touch => {
      const [x, y] = placeOf(FLAT, tick, 2);
      return { x: x + (tick > 0 ? 2 : -2), y, value: 10 + tick / 16, unit: 'inch' };
    });
    const reading = made(greyOf(FLAT), touches);
    for (const tick of [-30, -11, 0, 7, 25]) {
      const [x, y] = placeOf(FLAT, tick, 2);
      const told = readingAt(reading, { x, y });
      expect(told.ok && Math.abs(told.value - 10 - tick / 16)).toBeLessThan(0.1 / 25.4);
    }
  });
});

describe('three touched lines, seen at a slant', () => {
  const SLANTED: Scene = { ...FLAT, tilt: [0.003, 0.001] };
  const three = (off: readonly number[] = [0, 0, 0]) =>
    [-32, 0, 30].map((mm, i) => touched(SLANTED, mm, off[i]));

  test('follow the lines between: to a tenth of a millimetre', () => {
    const reading = made(greyOf(SLANTED), three([1, -1, 1]));
    for (const { mm, error, stated } of errors(SLANTED, reading, between)) {
      expect(error, `${mm}`).toBeLessThan(0.1);
      expect(error, `${mm}`).toBeLessThanOrEqual(stated);
    }
  });

  test('take up the perspective by themselves where no lines show', () => {
    const straight = made(blank, [three()[0]!, three()[2]!]);
    const bent = made(blank, three());
    const worst = (reading: TapeReading) =>
      Math.max(...errors(SLANTED, reading, between).map(({ error }) => error));
    expect(worst(straight)).toBeGreaterThan(1.5);
    expect(worst(bent)).toBeLessThan(worst(straight) / 3);
    for (const { error, stated } of errors(SLANTED, bent, between)) {
      expect(error).toBeLessThanOrEqual(stated);
    }
  });

  test('a shaky finger stays within the stated uncertainty', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1.5, max: 1.5, noNaN: true }), { minLength: 3, maxLength: 3 }),
        (off) => {
          const reading = made(blank, three(off));
          for (const { error, stated } of errors(SLANTED, reading, between)) {
            expect(error).toBeLessThanOrEqual(stated);
          }
        },
      ),
    );
  });
});
