import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boundsOf, type Figure, type LineStyle, type Point } from '../../src/drawing/figure.ts';
import { type CornerPlan, mitreFlat, mitreFolded } from '../../src/drawing/hem-corner.ts';
import { mm, toMm, ZERO } from '../../src/lengths/length.ts';
import { mitre } from '../../src/sewing/hems/mitre.ts';

function planOf(bottom: number, side: number, angle: number): CornerPlan | undefined {
  const outcome = mitre({
    depth: mm(bottom),
    side: mm(side),
    angle,
    edgeStitch: ZERO,
    thickness: ZERO,
    turned: 'once',
  });
  if (!outcome.ok) return undefined;
  const { alongBottom, upSide, trim } = outcome.value;
  return {
    bottom,
    side,
    angle,
    alongBottom: toMm(alongBottom),
    upSide: toMm(upSide),
    trim: toMm(trim),
    edgeStitch: Math.min(bottom, side) / 4,
    turnedTwice: false,
  };
}

const depth = fc.integer({ min: 3, max: 120 });
const plans = fc
  .tuple(depth, depth, fc.integer({ min: 20, max: 160 }))
  .map(([a, b, angle]) => planOf(a, b, angle))
  .filter((plan) => plan !== undefined);

const linesOf = (figure: Figure, style: LineStyle): (readonly Point[])[] =>
  figure.flatMap((shape) => ('line' in shape && shape.line === style ? [shape.points] : []));

/** The nth line of a style, all of whose points a test may ask for. */
function line(figure: Figure, style: LineStyle, nth = 0): (at: number) => Point {
  const points = linesOf(figure, style)[nth];
  return (at) => {
    const point = points?.at(at);
    if (!point) throw new Error(`no point ${at} on line ${nth} of ${style}`);
    return point;
  };
}

/** The mirror image of a point in the line through two others. */
function mirrored(point: Point, one: Point, two: Point): Point {
  const [dx, dy] = [two.x - one.x, two.y - one.y];
  const along = ((point.x - one.x) * dx + (point.y - one.y) * dy) / (dx * dx + dy * dy);
  const foot = { x: one.x + along * dx, y: one.y + along * dy };
  return { x: 2 * foot.x - point.x, y: 2 * foot.y - point.y };
}

/** How far a point lies from the line through two others. */
function farFrom(point: Point, one: Point, two: Point): number {
  const image = mirrored(point, one, two);
  return Math.hypot(image.x - point.x, image.y - point.y) / 2;
}

function expectSame(one: Point, other: Point): void {
  expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeLessThan(
    1e-6 * (1 + Math.hypot(one.x, one.y)),
  );
}

test('a right angle, 40 and 15 deep (derived here): the seam runs from 30 and 80 to 15, 40', () => {
  const plan = planOf(40, 15, 90);
  if (!plan) throw new Error('refused');
  const seam = line(mitreFlat(plan), 'stitch');
  expectSame(seam(0), { x: 30, y: 0 });
  expectSame(seam(1), { x: 15, y: -40 });
  expectSame(seam(2), { x: 0, y: -80 });
  // Finished: from the corner to 15 and 40 further in, where the two hems' edges meet.
  const mitred = line(mitreFolded(plan), 'stitch', 1);
  expectSame(mitred(0), { x: 15, y: -40 });
  expectSame(mitred(1), { x: 30, y: -80 });
});

test('each hem of the folded corner is the flat one, mirrored in its fold line', () => {
  fc.assert(
    fc.property(plans, (plan) => {
      const flat = mitreFlat(plan);
      const folded = mitreFolded(plan);
      const seam = line(flat, 'stitch');
      const [raw, bottomFold, sideFold] = [
        line(flat, 'cloth'),
        line(flat, 'fold', 0),
        line(flat, 'fold', 1),
      ];
      const meet = line(folded, 'stitch', 1)(1);
      // Both marks come to the same place: where the mitre seam ends.
      expectSame(mirrored(seam(0), bottomFold(0), bottomFold(1)), meet);
      expectSame(mirrored(seam(2), sideFold(0), sideFold(1)), meet);
      // The raw edges, mirrored, are the inner edges.
      const inner = line(folded, 'cloth');
      for (const at of [0, 1]) {
        const bottomEdge = mirrored(raw(at + 1), bottomFold(0), bottomFold(1));
        const sideEdge = mirrored(raw(at), sideFold(0), sideFold(1));
        expect(farFrom(bottomEdge, inner(0), inner(1))).toBeLessThan(
          1e-6 * plan.alongBottom + 1e-6,
        );
        expect(farFrom(sideEdge, inner(1), inner(2))).toBeLessThan(1e-6 * plan.upSide + 1e-6);
      }
      // The finished edges are the fold lines, in the same place.
      const edges = line(folded, 'fold');
      expectSame(edges(1), bottomFold(0));
      expect(farFrom(edges(0), bottomFold(0), bottomFold(1))).toBeLessThan(1e-6);
      expect(farFrom(edges(2), sideFold(0), sideFold(1))).toBeLessThan(1e-3);
    }),
  );
});

test('folded on the line through the corner half way between the marks, they are laid on each other', () => {
  fc.assert(
    fc.property(plans, (plan) => {
      const seam = line(mitreFlat(plan), 'stitch');
      const corner = seam(1);
      const far = (point: Point) => Math.hypot(point.x - corner.x, point.y - corner.y);
      const unit = (point: Point) => ({
        x: (point.x - corner.x) / far(point),
        y: (point.y - corner.y) / far(point),
      });
      const [one, two] = [unit(seam(0)), unit(seam(2))];
      // The sum fails where the two are opposite: then the fold is square to them.
      const sum = { x: one.x + two.x, y: one.y + two.y };
      const opposite = Math.hypot(sum.x, sum.y) < 1e-6;
      const way = opposite ? { x: -one.y, y: one.x } : sum;
      const image = mirrored(seam(0), corner, { x: corner.x + way.x, y: corner.y + way.y });
      expect(Math.hypot(image.x - seam(2).x, image.y - seam(2).y)).toBeLessThan(
        1e-3 * far(seam(2)),
      );
    }),
  );
});

test('the stitching lies as far from the inner edges as it is said to, all round', () => {
  fc.assert(
    fc.property(plans, (plan) => {
      const folded = mitreFolded(plan);
      const inner = line(folded, 'cloth');
      const stitch = line(folded, 'stitch');
      for (const at of [0, 1]) {
        expect(farFrom(stitch(at), inner(0), inner(1))).toBeCloseTo(plan.edgeStitch, 4);
        expect(farFrom(stitch(at + 1), inner(1), inner(2))).toBeCloseTo(plan.edgeStitch, 4);
      }
      // On the hem's side of them.
      expect(stitch(1).y).toBeGreaterThan(inner(1).y);
    }),
  );
});

// Hand Sewing Lessons, model 7; McGlauflin, Handicraft for Girls: trim 1/4 in outside the crease.
test('the cut is 1/4 in outside the seam, or half way where there is less', () => {
  fc.assert(
    fc.property(plans, (plan) => {
      const flat = mitreFlat(plan);
      const [seam, cut] = [line(flat, 'stitch'), line(flat, 'cut')];
      const raw = { x: 0, y: 0 };
      const room = Math.min(farFrom(raw, seam(0), seam(1)), farFrom(raw, seam(1), seam(2)));
      const trim = Math.min(6.35, room / 2);
      expect(farFrom(cut(0), seam(0), seam(1))).toBeCloseTo(trim, 4);
      expect(farFrom(cut(1), seam(0), seam(1))).toBeCloseTo(trim, 4);
      expect(farFrom(cut(1), seam(1), seam(2))).toBeCloseTo(trim, 4);
      expect(farFrom(cut(2), seam(1), seam(2))).toBeCloseTo(trim, 4);
      // From raw edge to raw edge, nearer to the raw corner than the marks are.
      expect(cut(0).y).toBe(0);
      expect(cut(0).x).toBeLessThanOrEqual(plan.alongBottom);
      expect(cut(0).x).toBeGreaterThanOrEqual(0);
      expect(Math.hypot(cut(2).x, cut(2).y)).toBeLessThanOrEqual(plan.upSide);
    }),
  );
});

test('the inner edges of a hem turned twice are folds', () => {
  const plan = planOf(40, 15, 90);
  if (!plan) throw new Error('refused');
  const folded = mitreFolded({ ...plan, turnedTwice: true });
  expect(linesOf(folded, 'cloth')).toEqual([]);
  expect(linesOf(folded, 'fold')).toHaveLength(2);
});

test('whatever the corner, it can be drawn: every place is finite and in sight', () => {
  fc.assert(
    fc.property(plans, (plan) => {
      for (const figure of [mitreFlat(plan), mitreFolded(plan)]) {
        const { x, y, width, height } = boundsOf(figure);
        for (const value of [x, y, width, height]) expect(Number.isFinite(value)).toBe(true);
        expect(Math.min(width, height)).toBeGreaterThan(0);
      }
    }),
  );
});
