import type { Point } from './figure.ts';

/** A strip as it is drawn, in mm. */
export interface DrawnStrip {
  length: number;
  width: number;
  pitch: number;
  hole: number;
  /** Of the middle line, where the strip is bent flat. */
  radius: number | undefined;
  /** Each row: from the outer edge, and its holes side by side, each side from its own start. */
  rows: readonly { across: number; sides: readonly (readonly number[])[] }[];
}

/** Where a place of a strip is drawn, along it and across from its outer edge. */
export type PlaceOn = (along: number, across: number) => Point;

/** A part of a strip that is drawn, from and to in mm along it. */
export interface Stretch {
  place: PlaceOn;
  from: number;
  to: number;
}

/** Pitches seen in a drawing: few enough for holes to be told apart on a phone. */
const SEEN = 11;
const SEEN_BESIDE_CORNER = 5;

/** A stretch of a strip from its cut end, or round its middle; bent about its own middle. */
export function stretchOf(strip: DrawnStrip, part: 'start' | 'middle', least = 0): Stretch {
  const { length, pitch } = strip;
  const seen = Math.min(length, Math.max(SEEN * pitch, least));
  const from = part === 'start' ? 0 : Math.max(0, (length - seen) / 2);
  const to = from + seen;
  return { place: placeOn(strip, (from + to) / 2), from, to };
}

/** The stretches of both sides beside a corner; the second is counted from the corner on. */
export function besideCorner(
  { pitch, width }: DrawnStrip,
  corner: number,
  angle: number,
): { first: Stretch; second: Stretch } {
  const seen = SEEN_BESIDE_CORNER * pitch + width;
  const turn = (angle * Math.PI) / 180;
  return {
    first: {
      place: (along, across) => ({ x: along - corner, y: across }),
      from: Math.max(0, corner - seen),
      to: corner,
    },
    second: {
      place: (along, across) => ({
        x: -along * Math.cos(turn) - across * Math.sin(turn),
        y: along * Math.sin(turn) - across * Math.cos(turn),
      }),
      from: 0,
      to: seen,
    },
  };
}

/** How much longer along the middle line a length of a row is: on a bend, rows have lengths of their own. */
export function stretchAt({ radius, width }: DrawnStrip, across: number): number {
  return radius === undefined ? 1 : radius / (radius + width / 2 - across);
}

/** Bent round a radius, or straight; `middle` is at the top of the bend. */
function placeOn({ radius, width }: DrawnStrip, middle: number): PlaceOn {
  if (radius === undefined) return (along, across) => ({ x: along, y: across });
  const outer = radius + width / 2;
  return (along, across) => {
    const turn = (along - middle) / radius;
    const own = outer - across;
    return { x: own * Math.sin(turn), y: outer - own * Math.cos(turn) };
  };
}
