import type { Point } from '../outline.ts';

/** How far a corner may lie outside the arc it stands for, in mm: less than a pencil line. */
export const ARC_MM = 0.5;

/**
 * The corners between the ends of a side that bows by `rise` from its chord, above 0 outwards.
 * They never lie within the piece: outwards the tangents of the arc are followed, inwards its
 * chords, each no farther than `ARC_MM` from it.
 * @param rise in mm, up to half the chord to either side
 */
export function arcCorners(from: Point, to: Point, rise: number): Point[] {
  const chord = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (rise === 0 || chord === 0) return [];
  // Half of the angle the arc goes round: by half-angles, so that a flat arc keeps its digits.
  const half = 2 * Math.atan((2 * Math.abs(rise)) / chord);
  const radius = chord / (2 * Math.sin(half));
  const outwards = rise > 0;
  const parts = partsOf(half, radius, outwards);
  const beta = half / parts;
  const count = outwards ? parts : parts - 1;
  const beyond = outwards ? excess(beta) / Math.cos(beta) : 0;
  return Array.from({ length: count }, (_, i): Point => {
    const angle = -half + beta * (outwards ? 2 * i + 1 : 2 * i + 2);
    const above = 2 * Math.sin((half + angle) / 2) * Math.sin((half - angle) / 2);
    const up = radius * (above + beyond * Math.cos(angle));
    const along = chord / 2 + radius * (1 + beyond) * Math.sin(angle);
    return onChord(from, to, along / chord, ((outwards ? 1 : -1) * up) / chord);
  });
}

/** 1 − cos, which keeps its digits for a small angle. */
const excess = (angle: number) => 2 * Math.sin(angle / 2) ** 2;

function partsOf(half: number, radius: number, outwards: boolean): number {
  for (let parts = 1; ; parts++) {
    const beta = half / parts;
    const away = radius * excess(beta) * (outwards ? 1 / Math.cos(beta) : 1);
    if (beta < Math.PI / 2 - 1e-9 && away <= ARC_MM) return parts;
  }
}

/** A place by shares of the chord along it, and to its right: outwards of what runs counter-clockwise. */
function onChord([x, y]: Point, [u, v]: Point, along: number, right: number): Point {
  const [dx, dy] = [u - x, v - y];
  return [x + along * dx + right * dy, y + along * dy - right * dx];
}
