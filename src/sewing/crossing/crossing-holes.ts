import type { ExactLength, Length } from '../../lengths/length.ts';
import type { Rows } from '../edging/strip.ts';

/** A strip of holes that another one crosses. */
export interface StripAcross {
  width: Length;
  pitch: Length;
  /** From the edge to the centres of the holes. */
  margin: Length;
  rows: Rows;
  /** From the crossing of the middle lines to the next hole of the first row, along the strip. */
  phase: ExactLength;
}

/** Two strips as they cross. */
export interface Crossed {
  lower: StripAcross;
  upper: StripAcross;
  /** Between them, in degrees. */
  angle: number;
  /** Diameter of the punch. */
  hole: Length;
}

/** What dividing may leave over in a whole number of pitches. */
const NOISE = 1e-9;

/** Evenly spaced holes on a line of a strip, in 1/8000 mm of its own: y from its middle line. */
export interface HoleLine {
  y: number;
  /** Of the hole with the index nothing. */
  start: number;
  pitch: number;
  /** Indices of the holes that count. */
  first: number;
  last: number;
}

/** Holes of the upper strip whose centres lie over the lower one; `shift` moves it along itself. */
export function linesOver({ lower, upper, angle }: Crossed, pitch: number, shift: number) {
  return linesWithin(upper, pitch, shift, lower.width / 2, angle, -1);
}

/** Holes of the lower strip under the upper one, or within two holes of it. */
export function linesUnder({ lower, upper, angle, hole }: Crossed) {
  return linesWithin(lower, lower.pitch, 0, upper.width / 2 + 2 * hole, angle, 1);
}

/** The lines of a strip, as far as they lie within some distance of the other one's middle line. */
function linesWithin(
  { width, margin, rows, phase }: StripAcross,
  pitch: number,
  shift: number,
  within: number,
  angle: number,
  turn: 1 | -1,
): HoleLine[] {
  const turned = (angle * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turned), Math.sin(turned)];
  const apart = width / 2 - margin;
  const line = (y: number, on: number): HoleLine => {
    const start = phase + shift + on;
    const middle = turn * y * cos;
    return {
      y,
      start,
      pitch,
      first: Math.ceil(((middle - within) / sin - start) / pitch - NOISE),
      last: Math.floor(((middle + within) / sin - start) / pitch + NOISE),
    };
  };
  if (rows === 'one') return [line(-apart, 0)];
  return [line(-apart, 0), line(apart, rows === 'staggered' ? pitch / 2 : 0)];
}

/** The square of the distance from a place to the nearest hole of some lines, which go on beyond what counts. */
export function nearestSquared(lines: readonly HoleLine[], x: number, y: number): number {
  let near = Number.POSITIVE_INFINITY;
  for (const { y: own, start, pitch } of lines) {
    const off = (x - start) / pitch;
    const along = (off - Math.round(off)) * pitch;
    const away = along * along + (y - own) * (y - own);
    if (away < near) near = away;
  }
  return near;
}

/** Holes a strip has along the crossing, about: to refuse what nobody could look at. */
export function holesAcross(own: StripAcross, other: StripAcross, angle: number): number {
  const sin = Math.sin((angle * Math.PI) / 180);
  return ((own.width + other.width) / sin / own.pitch) * (own.rows === 'one' ? 1 : 2);
}
