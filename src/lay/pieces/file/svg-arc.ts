import type { Point } from '../../outline.ts';
import { arc } from './curves.ts';

/**
 * The corners of an elliptical arc by its end points, after the first, with the last (W3C, SVG 1.1,
 * appendix F.6: radii out of range, and from end points to the centre).
 * @param given radii, turn of the ellipse in degrees, the two flags
 */
export function svgArc(from: Point, given: readonly number[], to: Point, perMm: number): Point[] {
  const [askedX, askedY, turn, large, sweep] = given.map(Number) as [
    number,
    number,
    number,
    number,
    number,
  ];
  let [rx, ry] = [Math.abs(askedX), Math.abs(askedY)];
  if (from[0] === to[0] && from[1] === to[1]) return [];
  if (rx === 0 || ry === 0) return [to];
  const phi = (turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(phi), Math.sin(phi)];
  const [hx, hy] = [(from[0] - to[0]) / 2, (from[1] - to[1]) / 2];
  const [x, y] = [cos * hx + sin * hy, -sin * hx + cos * hy];
  const reach = Math.hypot(x / rx, y / ry);
  if (reach > 1) [rx, ry] = [rx * reach, ry * reach];
  const [u, v] = [x / rx, y / ry];
  const far = u * u + v * v;
  const side = Math.sqrt(Math.max(0, (1 - far) / far)) * (large === sweep ? -1 : 1);
  const [cx, cy] = [side * v, -side * u];
  const first = Math.atan2(v - cy, u - cx);
  let by = Math.atan2(-v - cy, -u - cx) - first;
  if (sweep && by < 0) by += 2 * Math.PI;
  if (!sweep && by > 0) by -= 2 * Math.PI;
  const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const at = (angle: number): Point => {
    const [ex, ey] = [rx * (cx + Math.cos(angle)), ry * (cy + Math.sin(angle))];
    return [middle[0] + cos * ex - sin * ey, middle[1] + sin * ex + cos * ey];
  };
  const corners = arc(at, first, by, Math.max(rx, ry) / perMm);
  return [...corners.slice(0, -1), to];
}
