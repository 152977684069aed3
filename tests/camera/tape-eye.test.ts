import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  beside,
  firstPlace,
  hairline,
  movedBy,
  partOf,
  secondPlace,
  told,
} from '../../src/camera/tape-eye.ts';
import { placeIn } from '../../src/tape/picture/space.ts';
import { PX, scaleAt, straight } from './readings.ts';

const at = (mm: number) => ({ x: mm * PX, y: 600 });

test('one line reads from zero, two read what lies between them', () => {
  const one = told(straight(), [at(46.3)]);
  expect(one).toMatchObject({ ok: true, mm: expect.closeTo(46.3, 9) });
  const two = told(straight(), [at(146.3), at(100)]);
  expect(two).toMatchObject({ ok: true, mm: expect.closeTo(46.3, 9) });
});

test('the doubt of a difference is that of both lines, added as squares', () => {
  const one = told(straight(), [at(40)]);
  const two = told(straight(), [at(40), at(80)]);
  if (!one.ok || !two.ok) throw new Error('nothing told');
  expect(two.uncertaintyMm).toBeCloseTo(one.uncertaintyMm * Math.SQRT2, 9);
});

test('where there is nothing to tell, it says why', () => {
  expect(told(straight(), [])).toEqual({ ok: false, reason: 'nothing-read' });
  expect(told(straight({ outcome: 'ask' }), [])).toEqual({ ok: false, reason: 'not-sure-yet' });
  expect(told(straight(), [at(195)])).toEqual({ ok: false, reason: 'beyond-the-numbers' });
  expect(told(straight(), [at(50), at(195)]).ok).toBe(false);
  const doubted = straight({ scales: [scaleAt({ sure: false })] });
  expect(told(doubted, [at(50)])).toEqual({ ok: false, reason: 'not-sure-yet', scale: 0 });
});

test('two lines on different scales make no difference of lengths', () => {
  const { geometry } = scaleAt();
  const lower = scaleAt({
    geometry: { ...geometry, frame: { ...geometry.frame, origin: placeIn(0, 1000) } },
  });
  const both = straight({ scales: [scaleAt(), lower] });
  expect(told(both, [at(50), { x: 50 * PX, y: 1000 }])).toEqual({
    ok: false,
    reason: 'two-scales',
  });
});

/** One edge from 10 to 80 mm and from 120 to 190, with a finger between. */
function withFinger(set: Partial<ReturnType<typeof scaleAt>> = {}) {
  const parts = [
    scaleAt({ stretches: [{ from: 10, to: 80 }], ...set }),
    scaleAt({ stretches: [{ from: 120, to: 190 }] }),
  ];
  const geometries = parts.map(({ geometry, stretches }) => ({ ...geometry, ...stretches[0]! }));
  return straight({ scales: parts.map((part, i) => ({ ...part, geometry: geometries[i]! })) });
}

test('two lines on one edge with a finger between make a difference', () => {
  const two = told(withFinger(), [at(30), at(150)]);
  expect(two).toMatchObject({ ok: true, mm: expect.closeTo(120, 9) });
});

test('not where the edge doesn’t go on as it would without a fold, or counts something else', () => {
  const apart = { ok: false, reason: 'two-scales' };
  expect(told(withFinger({ anchorValue: 1 }), [at(30), at(150)])).toEqual(apart);
  const inches = withFinger({ unit: 'inch', mmPerTick: 25.4 / 8 });
  expect(told(inches, [at(30), at(150)])).toEqual(apart);
});

test('a moved line goes on past the finger, both ways, and no part of it stands for all', () => {
  const x = (from: number, by: number) => movedBy(withFinger(), at(from), by).x / PX;
  expect(x(75, 1)).toBeCloseTo(76, 9);
  expect(x(79.5, 1)).toBeCloseTo(120.02, 9);
  expect(x(79.5, 50)).toBeCloseTo(129.5, 9);
  expect(x(120.5, -1)).toBeCloseTo(79.98, 9);
  expect(x(150, -200)).toBeCloseTo(10.02, 9);
  expect(partOf(withFinger(), at(150))).toBeCloseTo(140 / 180, 9);
});

test('a line sent to the end stops where the picture does', () => {
  const narrow = straight({ width: 1000 });
  const end = movedBy(narrow, at(50), 1000);
  expect(end.x).toBeLessThan(1000);
  expect(end.x).toBeGreaterThan(990);
  expect(told(narrow, [end]).ok).toBe(true);
});

test('a line first waits inside what can be read, and nowhere when nothing is sure', () => {
  const line = firstPlace(straight(), 0.5)!;
  expect(line).toEqual({ x: 100 * PX, y: 600, waits: true });
  // No one has put it there: it reads nothing.
  expect(told(straight(), [line])).toEqual({ ok: false, reason: 'not-aimed' });
  expect(told(straight(), [at(50), line])).toEqual({ ok: false, reason: 'not-aimed' });
  expect(firstPlace(straight({ scales: [scaleAt({ sure: false })] }), 0.5)).toBeUndefined();
});

test('a second line waits on the edge of the first, where both can be subtracted', () => {
  const { geometry } = scaleAt();
  const frame = { ...geometry.frame, origin: placeIn<'picture'>(0, 1000) };
  const both = straight({ scales: [scaleAt(), scaleAt({ geometry: { ...geometry, frame } })] });
  for (const mm of [20, 100, 170]) {
    const first = { x: mm * PX, y: 1000 };
    const { x, y, waits } = secondPlace(both, first)!;
    expect(waits).toBe(true);
    expect(told(both, [first, { x, y }])).toMatchObject({ ok: true, mm: expect.closeTo(45, 6) });
  }
});

test('moving a line moves what it reads by as much, and stops where nothing can be read', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 10, max: 190, noNaN: true }),
      fc.double({ min: -300, max: 300, noNaN: true }),
      fc.constantFrom<1 | -1>(1, -1),
      (from, by, direction) => {
        const reading = straight({ scales: [scaleAt({ direction, anchorValue: 20 })] });
        const before = told(reading, [at(from)]);
        const after = told(reading, [movedBy(reading, at(from), by)]);
        if (!before.ok || !after.ok) throw new Error(`nothing told at ${from} and ${by} on`);
        const [low, high] = direction > 0 ? [210, 390] : [10, 190];
        const wanted = Math.min(high, Math.max(low, before.mm + by));
        // At its ends it stops a hair inside what can be read.
        expect(Math.abs(after.mm - wanted)).toBeLessThan(wanted === before.mm + by ? 1e-6 : 0.021);
      },
    ),
  );
});

test('how far along a line is follows the values, whichever way they run', () => {
  expect(partOf(straight(), at(55))).toBeCloseTo(0.25, 9);
  const back = straight({ scales: [scaleAt({ direction: -1, anchorValue: 20 })] });
  expect(partOf(back, at(55))).toBeCloseTo(0.75, 9);
});

test('a hairline stands across the scale, beyond its lines, through the place', () => {
  const ends = hairline(straight(), at(50));
  if (!ends) throw new Error('no hairline');
  for (const end of ends) expect(end.x).toBeCloseTo(50 * PX, 9);
  expect(Math.min(...ends.map(({ y }) => y))).toBeLessThan(580);
  expect(Math.max(...ends.map(({ y }) => y))).toBeGreaterThan(680);
});

test('a number is shown beyond its print, on the side away from the lines', () => {
  const below = beside(scaleAt(), { x: 40 * PX, y: 660 });
  expect(below.x).toBeCloseTo(40 * PX, 9);
  expect(below.y).toBeCloseTo(600 + (8 + 5) * PX, 9);
  const { geometry } = scaleAt();
  const above = beside(scaleAt({ geometry: { ...geometry, numbersAcross: -8 } }), {
    x: 320,
    y: 540,
  });
  expect(above.y).toBeCloseTo(600 - (8 + 5) * PX, 9);
});
