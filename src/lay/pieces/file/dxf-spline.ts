import type { Point } from '../../outline.ts';
import { bezier } from './curves.ts';
import { type DxfRecord, numberIn, numberOf } from './dxf-records.ts';
import { MOST_FILE_CORNERS, Unreadable } from './file-problem.ts';

/** Of a higher degree no drawing of pieces has one. */
const MOST_DEGREE = 7;
/** Weights this much alike are one: the curve is no ratio of two. */
const ALIKE = 1e-9;

/** What came of reading a spline. */
type Spline = { ok: true; points: Point[] } | { ok: false; why: 'no-number' | 'unknown' };

/**
 * The corners of a spline by its control points, from its first place to its last. One that is drawn by
 * weights that differ, or by places it runs through alone, isn't known here.
 * Source: a B-spline's span is the Bézier curve whose points are its blossom at the span's ends.
 */
export function spline(record: DxfRecord, unitMm: number): Spline {
  const degree = numberOf(record, 71, 3);
  const knots = valuesOf(record, 40);
  const weights = valuesOf(record, 41);
  const [xs, ys] = [valuesOf(record, 10), valuesOf(record, 20)];
  const control = xs.map((x, i): Point => [x, ys[i] ?? Number.NaN]);
  if (control.length === 0) return { ok: false, why: 'unknown' };
  const even = weights.every((one) => Math.abs(one - (weights[0] ?? 1)) <= ALIKE);
  if (!(degree >= 1 && degree <= MOST_DEGREE) || !even) return { ok: false, why: 'unknown' };
  if (!fits({ degree, knots, control })) return { ok: false, why: 'no-number' };
  return { ok: true, points: cornersOf({ degree, knots, control }, unitMm) };
}

interface Curve {
  degree: number;
  knots: readonly number[];
  control: readonly Point[];
}

const valuesOf = ({ values }: DxfRecord, code: number) =>
  values.flatMap(([own, value]) => (own === code ? [numberIn(value)] : []));

/** Whether there are as many knots as there have to be, none below the one before it. */
function fits({ degree, knots, control }: Curve): boolean {
  const enough = control.length > degree && knots.length === control.length + degree + 1;
  const rising = knots.every((knot, i) => Number.isFinite(knot) && knot >= (knots[i - 1] ?? knot));
  const places = control.every(([x, y]) => Number.isFinite(x + y));
  return enough && rising && places && (knots[degree] ?? 0) < (knots[control.length] ?? 0);
}

function cornersOf(curve: Curve, unitMm: number): Point[] {
  const { degree, knots, control } = curve;
  const points: Point[] = [];
  for (let i = degree; i < control.length; i++) {
    const [from, to] = [knots[i]!, knots[i + 1]!];
    if (from === to) continue;
    const arms = Array.from({ length: degree + 1 }, (_, k) =>
      blossom(curve, i, [...Array<number>(degree - k).fill(from), ...Array<number>(k).fill(to)]),
    );
    if (points.length === 0) points.push(arms[0]!);
    for (const corner of bezier(arms, 1 / unitMm)) points.push(corner);
    if (points.length > MOST_FILE_CORNERS) {
      throw new Unreadable({ kind: 'too-many', what: 'corners', most: MOST_FILE_CORNERS });
    }
  }
  return points;
}

/** De Boor's rule with a place of its own at each of its steps. @param span the knot it begins at */
function blossom({ degree, knots, control }: Curve, span: number, at: readonly number[]): Point {
  let row = control.slice(span - degree, span + 1);
  for (let step = 1; step <= degree; step++) {
    const u = at[step - 1]!;
    row = row.slice(1).map((after, k): Point => {
      const before = row[k]!;
      const [low, high] = [knots[span - degree + step + k]!, knots[span + 1 + k]!];
      const t = (u - low) / (high - low);
      return [before[0] + t * (after[0] - before[0]), before[1] + t * (after[1] - before[1])];
    });
  }
  return row[0]!;
}
