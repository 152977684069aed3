import type { Point } from '../../outline.ts';
import { sticky } from './xml.ts';

/** (x, y) goes to (a x + c y + e, b x + d y + f), as SVG writes it. */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const at = ([a, b, c, d, e, f]: Matrix, [x, y]: Point): Point => [
  a * x + c * y + e,
  b * x + d * y + f,
];

/** First the second, then the first. */
export const times = (m: Matrix, [a, b, c, d, e, f]: Matrix): Matrix => [
  m[0] * a + m[2] * b,
  m[1] * a + m[3] * b,
  m[0] * c + m[2] * d,
  m[1] * c + m[3] * d,
  m[0] * e + m[2] * f + m[4],
  m[1] * e + m[3] * f + m[5],
];

/** The most a length grows by. */
export const growth = ([a, b, c, d]: Matrix): number => Math.hypot(a, b, c, d);

const STEP = /[\s,]*([A-Za-z]+)\s*\(([^()]*)\)/y;
const REST = /[\s,]*$/y;
const radians = (degrees: number) => (degrees * Math.PI) / 180;

type Made = (n: readonly number[]) => Matrix;

const turned: Made = ([degrees = Number.NaN, x = 0, y = 0]) => {
  const [cos, sin] = [Math.cos(radians(degrees)), Math.sin(radians(degrees))];
  return [cos, sin, -sin, cos, x - cos * x + sin * y, y - sin * x - cos * y];
};

/** Each with the counts of numbers it may have. */
const KINDS: Readonly<Record<string, readonly [counts: readonly number[], made: Made]>> = {
  matrix: [[6], (n) => n as unknown as Matrix],
  translate: [[1, 2], ([x = 0, y = 0]) => [1, 0, 0, 1, x, y]],
  scale: [[1, 2], ([x = 1, y = x]) => [x, 0, 0, y, 0, 0]],
  rotate: [[1, 3], turned],
  skewX: [[1], ([by = 0]) => [1, 0, Math.tan(radians(by)), 1, 0, 0]],
  skewY: [[1], ([by = 0]) => [1, Math.tan(radians(by)), 0, 1, 0, 0]],
};

export const SAME: Matrix = [1, 0, 0, 1, 0, 0];

/** What a `transform` does; undefined where it can't be read. */
export function transformOf(text: string): Matrix | undefined {
  let whole = SAME;
  let end = 0;
  for (let one = sticky(STEP, text, 0); one; one = sticky(STEP, text, end)) {
    end = STEP.lastIndex;
    const kind = Object.hasOwn(KINDS, one[1]!) ? KINDS[one[1]!] : undefined;
    const numbers = one[2]!
      .trim()
      .split(/\s*,\s*|\s+/, 7)
      .map((part) => (part ? Number(part) : Number.NaN));
    if (!kind?.[0].includes(numbers.length) || !numbers.every(Number.isFinite)) return undefined;
    whole = times(whole, kind[1](numbers));
  }
  return sticky(REST, text, end) ? whole : undefined;
}
