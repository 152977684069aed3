import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mmPerUnit } from '../../../src/tape/graduations/tape-unit.ts';
import { alongRow } from '../../../src/tape/picture/space.ts';
import { readingAt } from '../../../src/tape/scales/read-at.ts';
import {
  pointOn,
  type ReadScale,
  type ScaleGeometry,
  tickOfValue,
} from '../../../src/tape/scales/scale.ts';
import type { TapeReading } from '../../../src/tape/scales/tape-reading.ts';
import { madeGeometry, madeScale } from '../made/made-rows.ts';
import { rowFrame } from '../made/plain-places.ts';

function readingOf(
  scales: readonly ReadScale[],
  unread: readonly ScaleGeometry[] = [],
): TapeReading {
  return { width: 1000, height: 700, outcome: 'read', scales, unread };
}

/** The other edge of the same tape, 14 mm down: lines upwards, inches, from the other end. */
const otherEdge = madeScale({
  unit: 'inch',
  mmPerTick: 25.4 / 16,
  anchorValue: 40,
  direction: -1,
  geometry: madeGeometry({
    frame: rowFrame([400, 440], 0),
    model: { a: 1 / 15.875, b: 0, c: 0 },
    zoneFrom: -1,
    zoneTo: 0,
  }),
});
const both = readingOf([madeScale(), otherEdge]);

const refused = (reason: string) => ({ ok: false, reason });

describe('a place belongs to the scale whose lines are nearest', () => {
  test('each edge reads its own numbers, in its own unit and way', () => {
    const upper = readingAt(both, { x: 430, y: 305 });
    expect(upper).toMatchObject({ ok: true, scale: 0, unit: 'cm' });
    if (upper.ok)
      expect([upper.value, upper.mm]).toEqual([expect.closeTo(20.3), expect.closeTo(203)]);
    const lower = readingAt(both, { x: 400 + 15.875, y: 437 });
    expect(lower).toMatchObject({ ok: true, scale: 1, unit: 'inch' });
    if (lower.ok) {
      expect(lower.value).toBeCloseTo(40 - 1 / 16, 9);
      expect(lower.mm).toBeCloseTo((40 - 1 / 16) * 25.4, 7);
    }
  });

  test('a third of the way over it is still the nearer one’s', () => {
    expect(readingAt(both, { x: 430, y: 340 })).toMatchObject({ ok: true, scale: 0 });
    expect(readingAt(both, { x: 430, y: 405 })).toMatchObject({ ok: true, scale: 1 });
  });

  test('between two that tell different lengths: another-scale', () => {
    expect(readingAt(both, { x: 430, y: 372 })).toEqual(refused('another-scale'));
  });

  test('between two edges that tell the same length, that length', () => {
    const twin = madeScale({
      geometry: madeGeometry({ frame: rowFrame([400, 440], 0), zoneFrom: -2, zoneTo: 0 }),
    });
    expect(readingAt(readingOf([madeScale(), twin]), { x: 430, y: 370 })).toMatchObject({
      ok: true,
    });
    const off = { ...twin, anchorValue: 20.2 };
    expect(readingAt(readingOf([madeScale(), off]), { x: 430, y: 370 })).toEqual(
      refused('another-scale'),
    );
  });

  test('past the last line seen of the nearer edge: off-the-scale, though the other edge reads', () => {
    // A tape 8 mm wide whose lower edge was seen for a centimetre only.
    const short = madeScale({
      anchorValue: 90,
      geometry: madeGeometry({ frame: rowFrame([400, 380], 0), zoneFrom: -2, zoneTo: 0, to: 10 }),
    });
    const narrow = readingOf([madeScale(), short]);
    expect(readingAt(narrow, { x: 400 + 10 * 20, y: 358 })).toEqual(refused('off-the-scale'));
    expect(readingAt(narrow, { x: 400 + 10 * 20, y: 310 })).toMatchObject({ ok: true, scale: 0 });
    expect(readingAt(narrow, { x: 400 + 10 * 5, y: 370 })).toMatchObject({ ok: true, scale: 1 });
  });

  test('beside the lines, where another tape’s may go on from under this one: another-scale', () => {
    const geometry = madeGeometry({ frame: rowFrame([400, 340], -0.3), from: 20, to: 60 });
    const under = madeScale({ anchorValue: 90, geometry });
    const crossing = readingOf([madeScale(), under]);
    // On its row, 25 graduations before those that were seen, and 2 mm off the lines of this one.
    const beside = pointOn(geometry, -5, 1);
    expect(readingAt(readingOf([madeScale()]), beside)).toMatchObject({ ok: true });
    expect(readingAt(crossing, beside)).toEqual(refused('another-scale'));
    expect(readingAt(crossing, { x: beside.x, y: 305 })).toMatchObject({ ok: true, scale: 0 });
    // Two parts of one bent tape tell the same there.
    const bent = readingOf([madeScale(), madeScale({ anchorValue: 20, geometry })]);
    expect(readingAt(bent, beside)).toMatchObject({ ok: true });
  });

  test('nearer to a row that was seen and not read: another-scale', () => {
    const row = madeGeometry({ frame: rowFrame([400, 360], 0), zoneFrom: 0, zoneTo: 2 });
    const reading = readingOf([madeScale()], [row]);
    expect(readingAt(reading, { x: 430, y: 365 })).toEqual(refused('another-scale'));
    expect(readingAt(reading, { x: 430, y: 325 })).toMatchObject({ ok: true, scale: 0 });
    // Past the end of that row nothing else can be meant.
    expect(readingAt(readingOf([madeScale()], [{ ...row, to: 2 }]), { x: 430, y: 365 }).ok).toBe(
      true,
    );
  });
});

describe('nothing is told', () => {
  test('not-sure-yet: the nearest scale is doubted, though the other edge could tell', () => {
    const doubted = madeScale({ sure: false, doubts: ['line'] });
    expect(readingAt(readingOf([otherEdge, doubted]), { x: 430, y: 305 })).toEqual({
      ...refused('not-sure-yet'),
      scale: 1,
    });
    expect(readingAt(readingOf([otherEdge, doubted]), { x: 430, y: 435 })).toMatchObject({
      ok: true,
    });
  });

  test('beyond-the-numbers: lines are seen there, and no number vouches for them', () => {
    const scale = madeScale({
      stretches: [
        { from: -20.4, to: -8 },
        { from: 5, to: 20.4 },
      ],
    });
    const at = (tick: number) => readingAt(readingOf([scale]), { x: 400 + 10 * tick, y: 310 });
    for (const tick of [-21, -7, 0, 4.9, 20.5, 49, 52]) {
      expect(at(tick), `${tick}`).toEqual(refused('beyond-the-numbers'));
    }
    for (const tick of [-20.3, -8.1, 5.1, 20.3]) expect(at(tick).ok, `${tick}`).toBe(true);
  });

  test('below-zero, but for the zero line’s own width', () => {
    const reading = readingOf([madeScale({ anchorValue: 0 })]);
    expect(readingAt(reading, { x: 390, y: 310 })).toEqual(refused('below-zero'));
    expect(readingAt(reading, { x: 394, y: 310 })).toEqual(refused('below-zero'));
    expect(readingAt(reading, { x: 396, y: 310 })).toMatchObject({ ok: true });
    const backwards = readingOf([madeScale({ anchorValue: 0, direction: -1 })]);
    expect(readingAt(backwards, { x: 410, y: 310 })).toEqual(refused('below-zero'));
    expect(readingAt(backwards, { x: 390, y: 310 })).toMatchObject({ ok: true });
  });

  test('off-the-scale: farther beside the lines than any tape reaches, or past them', () => {
    const reading = readingOf([madeScale()]);
    expect(readingAt(reading, { x: 430, y: 300 + 20 + 59 }).ok).toBe(true);
    expect(readingAt(reading, { x: 430, y: 300 + 20 + 61 })).toEqual(refused('off-the-scale'));
    expect(readingAt(reading, { x: 430, y: 300 - 59 }).ok).toBe(true);
    expect(readingAt(reading, { x: 430, y: 300 - 61 })).toEqual(refused('off-the-scale'));
    expect(readingAt(reading, { x: 400 + 10 * 54, y: 310 })).toEqual(refused('off-the-scale'));
    expect(readingAt(reading, { x: 400 - 10 * 34, y: 310 })).toEqual(refused('off-the-scale'));
  });

  test('nothing-read: no scale at all', () => {
    expect(readingAt(readingOf([]), { x: 430, y: 310 })).toEqual(refused('nothing-read'));
  });
});

describe('the stated uncertainty', () => {
  const told = (scale: ReadScale, y: number) => {
    const at = readingAt(readingOf([scale]), { x: 430, y });
    if (!at.ok) throw new Error(at.reason);
    return at.uncertaintyMm;
  };

  test('is twice the scatter of the lines, and grows with the distance beside them', () => {
    expect(told(madeScale(), 310)).toBeCloseTo(Math.hypot(0.05, 0.04), 6);
    expect(told(madeScale(), 375)).toBeGreaterThan(told(madeScale(), 310));
    const coarse = madeScale({ mmPerTick: 5 });
    expect(told(coarse, 310)).toBeCloseTo(Math.hypot(0.05, 0.2), 6);
  });

  test('is never nothing', () => {
    const perfect = madeScale({ geometry: madeGeometry({ scatter: 0, slantDoubt: 0 }) });
    expect(told(perfect, 375)).toBeCloseTo(0.05, 9);
  });
});

/** However the row lies: turned, slanted, bowed, seen at a slant, bent a little. */
const anyGeometry = fc
  .record({
    angle: fc.double({ min: -3.1, max: 3.1, noNaN: true }),
    shear: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
    shearRate: fc.double({ min: -2e-4, max: 2e-4, noNaN: true }),
    bow2: fc.double({ min: -1e-4, max: 1e-4, noNaN: true }),
    pitch: fc.double({ min: 4, max: 40, noNaN: true }),
    crowding: fc.double({ min: -3e-4, max: 3e-4, noNaN: true }),
    centre: fc.double({ min: -200, max: 200, noNaN: true }).map((px) => alongRow<'picture'>(px)),
    bend: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
  })
  .map(({ angle, shear, shearRate, bow2, pitch, crowding, centre, bend }) =>
    madeGeometry({
      frame: { ...rowFrame([500, 400], angle), shear, shearRate, bow2 },
      centre,
      model: {
        a: 1 / pitch,
        b: 0,
        c: crowding,
        residual: { from: -600, step: 300, values: Float32Array.of(0, bend, 0, -bend, 0) },
      },
    }),
  );

test('law: the value where a value’s own graduation is drawn is that value', () => {
  fc.assert(
    fc.property(
      anyGeometry,
      fc.constantFrom('cm' as const, 'mm' as const, 'inch' as const),
      fc.constantFrom(1 as const, -1 as const),
      fc.constantFrom(1, 2, 10, 16),
      fc.double({ min: -25, max: 45, noNaN: true }),
      fc.double({ min: 0, max: 2, noNaN: true }),
      (geometry, unit, direction, perUnit, tick, across) => {
        const mmPerTick = mmPerUnit[unit] / perUnit;
        const scale = madeScale({ unit, mmPerTick, direction, anchorValue: 200, geometry });
        const value = 200 + (direction * tick) / perUnit;
        const { x, y } = pointOn(geometry, tickOfValue(scale, value), across);
        const told = readingAt(readingOf([scale]), { x, y });
        expect(told.ok && told.value).toBeCloseTo(value, 5);
        expect(told.ok && told.mm).toBeCloseTo(value * mmPerUnit[unit], 4);
      },
    ),
  );
});
