import type { Point } from '../../outline.ts';
import { arc } from './curves.ts';
import { type DxfRecord, numberIn, numberOf } from './dxf-records.ts';
import { MOST_FILE_CORNERS, Unreadable } from './file-problem.ts';

/** A corner of a polyline, and how the way to the next one bows: the tangent of a quarter of its angle. */
export interface Vertex {
  at: Point;
  bulge: number;
}

/** Flags of a polyline, and of a vertex that only guides a curve. */
const CLOSED = 1;
const GUIDE = 16;

export const isClosed = (record: DxfRecord): boolean => (numberOf(record, 70) & CLOSED) !== 0;

/** The vertices of a polyline that holds them itself. */
export function ownVertices({ values }: DxfRecord): Vertex[] {
  const found: { x: number; y: number; bulge: number }[] = [];
  for (const [code, value] of values) {
    const last = found.at(-1);
    if (code === 10) found.push({ x: numberIn(value), y: Number.NaN, bulge: 0 });
    else if (code === 20 && last) last.y = numberIn(value);
    else if (code === 42 && last) last.bulge = numberIn(value);
  }
  return found.map(({ x, y, bulge }) => ({ at: [x, y], bulge }));
}

/** A vertex that is a part of its own; none where it only guides a curve that is drawn besides. */
export function vertexOf(record: DxfRecord): Vertex | undefined {
  if (numberOf(record, 70) & GUIDE) return undefined;
  return { at: placeOf(record, 10), bulge: numberOf(record, 42) };
}

/** A place by the code of its x; that of its y is ten more. */
export const placeOf = (record: DxfRecord, code: number): Point => [
  numberOf(record, code, Number.NaN),
  numberOf(record, code + 10, Number.NaN),
];

/** The corners of a polyline, its bows as corners. */
export function polyline(vertices: readonly Vertex[], closed: boolean, unitMm: number): Point[] {
  const points: Point[] = [];
  vertices.forEach(({ at, bulge }, i) => {
    points.push(at);
    const next = vertices[i + 1] ?? (closed ? vertices[0] : undefined);
    if (!next || bulge === 0) return;
    for (const corner of bow(at, next.at, bulge, unitMm)) points.push(corner);
    if (points.length > MOST_FILE_CORNERS) {
      throw new Unreadable({ kind: 'too-many', what: 'corners', most: MOST_FILE_CORNERS });
    }
  });
  return points;
}

/** The corners between two places of an arc by its bulge: tan of a quarter of its angle, left round above 0. */
function bow(from: Point, to: Point, bulge: number, unitMm: number): Point[] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const away = (1 - bulge * bulge) / (4 * bulge);
  const middle: Point = [(from[0] + to[0]) / 2 - dy * away, (from[1] + to[1]) / 2 + dx * away];
  const radius = Math.hypot(from[0] - middle[0], from[1] - middle[1]);
  const first = Math.atan2(from[1] - middle[1], from[0] - middle[0]);
  // A bow of no numbers is drawn through one, so that it is seen.
  if (!Number.isFinite(radius)) return [[Number.NaN, Number.NaN]];
  return round(middle, radius, first, 4 * Math.atan(bulge), unitMm).slice(0, -1);
}

/** The corners of a circle's arc after its first, with its last; angles in radians. */
function round(middle: Point, radius: number, from: number, by: number, unitMm: number): Point[] {
  const at = (angle: number): Point => [
    middle[0] + radius * Math.cos(angle),
    middle[1] + radius * Math.sin(angle),
  ];
  return arc(at, from, by, radius * unitMm);
}

/** A circle, or an arc from one angle left round to another; in degrees in the file. */
export function arcOf(record: DxfRecord, whole: boolean, unitMm: number): Point[] | undefined {
  const radius = numberOf(record, 40, Number.NaN);
  const [start, end] = whole ? [0, 360] : [numberOf(record, 50), numberOf(record, 51, 360)];
  if (!(radius > 0) || !Number.isFinite(start + end)) return undefined;
  const turn = whole ? 360 : (((end - start) % 360) + 360) % 360 || 360;
  const [from, by] = [(start * Math.PI) / 180, (turn * Math.PI) / 180];
  const [x, y] = placeOf(record, 10);
  const first: Point = [x + radius * Math.cos(from), y + radius * Math.sin(from)];
  return [first, ...round([x, y], radius, from, by, unitMm)];
}
