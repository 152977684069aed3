/**
 * Rows 15.6 to 15.8 and 15.10 are geometry, derived here, no source: r 20, width 4 makes 11.48°; in two, each
 * 2.0025. The raw edge is held to a plan that is folded. Row 15.3 (legs equal): Dress Making, Trade Theory (Government of India), 2024, page 199.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ExactLength, length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import {
  type DartInput,
  dartEdge,
  type EdgeInput,
  wedge,
  wedgeOf,
} from '../../../src/sewing/shaping/dart.ts';
import { dartInSeam, gatherDart, moveDart } from '../../../src/sewing/shaping/dart-turned.ts';
import { typed } from '../closures/closures-cases.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => mm(10 * x);
const toCm = (x: ExactLength, places = 4) => Number((toMm(x) / 10).toFixed(places));
const degrees = (radians: number) => Number(((radians * 180) / Math.PI).toFixed(2));
const wide = (width: number, leg: number): DartInput => ({
  opening: { by: 'width', width: cm(width) },
  leg: cm(leg),
});
const EDGE: Omit<EdgeInput, 'leg'> = { slant: 90, other: 90, seam: ZERO, piece: undefined };

describe('geometry', () => {
  test('15.6: 4 wide at 20 is 11.48°; the same angle at 12 is 2.40 wide', () => {
    const dart = solved(wedge(wide(4, 20)));
    expect(degrees(dart.angle)).toBe(11.48);
    expect(toCm(solved(moveDart(dart, { reach: cm(12), parts: 1 })).width, 2)).toBe(2.4);
  });

  test('15.7: split in two, each is 2.0025 wide at the same leg', () => {
    const dart = solved(wedge(wide(4, 20)));
    expect(toCm(solved(moveDart(dart, { reach: cm(20), parts: 2 })).width)).toBe(2.0025);
  });

  test('a leg of 100 and 0.3 rad, edge square to the leg: its tip is 101.14 from the point', () => {
    const edge = solved(dartEdge({ ...EDGE, leg: mm(100) }, wedgeOf(0.3, mm(100))));
    expect(toMm(edge.tip)).toBeCloseTo(101.136, 2);
  });

  test('a raw edge cut straight across is at 90° + half the angle, and dips when it is sewn', () => {
    const dart = wedgeOf(0.3, mm(100));
    const straight = 90 + (0.15 * 180) / Math.PI;
    const edge = solved(
      dartEdge({ ...EDGE, slant: straight, other: straight, leg: mm(100) }, dart),
    );
    expect(edge.kink).toBeCloseTo(-0.3, 9);
    // The chord itself: a tip no further than the middle between the legs would be is a plan not trued.
    expect(edge.tip).toBeGreaterThan(dart.middle);
  });

  test('gathers and ease: 3 cm on 12 is 1.25 times; a seam that takes half leaves half the angle', () => {
    const dart = solved(wedge(wide(3, 12)));
    const { strip, ratio } = solved(gatherDart(dart, cm(12)));
    expect([toCm(strip), ratio]).toEqual([15, 1.25]);
    const { angle, kept, taken } = solved(dartInSeam(dart, cm(12), 50));
    expect(angle).toBeCloseTo(dart.angle / 2, 12);
    expect(kept).toBeCloseTo(taken, 3);
  });
});

describe('what is refused', () => {
  test('legs too short for the opening, an angle of nothing, one too wide', () => {
    expect(fieldsOf(wedge(wide(24, 12)))).toEqual(['width']);
    expect(fieldsOf(wedge(wide(0, 12)))).toEqual(['width']);
    expect(fieldsOf(wedge(wide(3, 0)))).toEqual(['leg']);
    const angled = (angle: number) => wedge({ opening: { by: 'angle', angle }, leg: cm(12) });
    expect([fieldsOf(angled(0)), fieldsOf(angled(171))]).toEqual([['angle'], ['angle']]);
  });

  test('edges that never meet, slants past their bounds, a piece narrower than the dart', () => {
    const dart = wedgeOf(1, cm(12));
    const edge = (set: Partial<EdgeInput>) =>
      fieldsOf(dartEdge({ ...EDGE, leg: cm(12), ...set }, dart));
    expect(edge({ slant: 160 })).toEqual(['slant']);
    expect(edge({ slant: 10 })).toEqual(['slant']);
    expect(edge({ other: 161 })).toEqual(['other']);
    expect(edge({ seam: cm(-1) })).toEqual(['seam']);
    expect(edge({ piece: cm(11) })).toEqual(['piece']);
    expect(edge({ piece: cm(12) })).toEqual([]);
  });

  test('darts, zones and parts that are none', () => {
    const dart = wedgeOf(0.3, cm(12));
    expect(fieldsOf(moveDart(dart, { reach: ZERO, parts: 0 }))).toEqual(['reach', 'parts']);
    expect(fieldsOf(moveDart(dart, { reach: cm(1), parts: 13 }))).toEqual(['parts']);
    expect(fieldsOf(gatherDart(dart, ZERO))).toEqual(['zone']);
    expect(fieldsOf(dartInSeam(dart, cm(12), 0.5))).toEqual(['part']);
    expect(fieldsOf(dartInSeam(dart, cm(12), 101))).toEqual(['part']);
  });
});

interface Place {
  x: number;
  y: number;
}

/** A place as it lies when the plan is folded along a line through the point. */
function folded({ x, y }: Place, along: number): Place {
  const [cos, sin] = [Math.cos(2 * along), Math.sin(2 * along)];
  return { x: x * cos + y * sin, y: x * sin - y * cos };
}

const wholeDart = fc.record({
  angle: fc.integer({ min: 20, max: 1200 }).map((n) => n / 1000),
  leg: typed(20, 400),
  slant: fc.integer({ min: 30, max: 120 }),
  seam: typed(0, 30),
});

describe('laws', () => {
  test('folded to its side, tip and leg lie on that side’s edge: of the stitch line and of the raw edge', () => {
    fc.assert(
      fc.property(wholeDart, ({ angle, leg, slant, seam }) => {
        const input = { leg, slant, other: 180 - slant, seam, piece: undefined };
        const edge = solved(dartEdge(input, wedgeOf(angle, leg)));
        const alpha = (slant * Math.PI) / 180;
        // The point at nothing, the near leg upright, the piece on its left; the dart on its right.
        const onEdge = ({ x, y }: Place, from: number) =>
          // The near edge leaves the leg's end at its angle from the way back to the point.
          (x + 0) * -Math.cos(alpha) - (y - from) * -Math.sin(alpha);
        for (const [tip, from, allowance] of [
          [edge.tip, leg, 0],
          [edge.cutTip, edge.cutLeg, seam],
        ] as const) {
          const middle = Math.PI / 2 - angle / 2;
          const m = { x: tip * Math.cos(middle), y: tip * Math.sin(middle) };
          // First fold along the near leg: the layer next to it lies mirrored on the piece.
          expect(onEdge(folded(m, Math.PI / 2), from) / leg).toBeCloseTo(0, 6);
          // As far outside the stitch line as the seam is wide.
          expect((from - leg) * Math.sin(alpha)).toBeCloseTo(allowance, 1);
        }
        expect(edge.kink).toBeCloseTo(0, 9);
      }),
      { numRuns: 400, seed: 1810 },
    );
  });

  test('moved and moved back it is as wide; split, its angles add up; twice as large, twice as wide', () => {
    const width = typed(5, 100);
    fc.assert(
      fc.property(
        width,
        typed(60, 300),
        typed(30, 300),
        fc.integer({ min: 1, max: 6 }),
        (w, leg, reach, parts) => {
          const dart = solved(wedge({ opening: { by: 'width', width: w }, leg }));
          const moved = solved(moveDart(dart, { reach, parts: 1 }));
          const back = solved(moveDart({ ...dart, angle: moved.angle }, { reach: leg, parts: 1 }));
          expect(back.width).toBeCloseTo(w, 3);
          expect(parts * solved(moveDart(dart, { reach, parts })).angle).toBeCloseTo(
            dart.angle,
            12,
          );
          const twice = solved(
            wedge({ opening: { by: 'width', width: length(2 * w) }, leg: length(2 * leg) }),
          );
          expect([twice.angle, twice.middle]).toEqual([dart.angle, 2 * dart.middle]);
          const { kept, taken } = solved(dartInSeam(dart, leg, 30));
          expect(kept + taken).toBeGreaterThanOrEqual(w - 1e-3);
        },
      ),
      { numRuns: 400, seed: 1811 },
    );
  });
});
