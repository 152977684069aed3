import type { StripInput } from './strip.ts';

/** A side of a strip that turns corners, along its outer edge. */
export interface Side {
  from: number;
  long: number;
  /** Whether it begins and ends in a corner, not at a cut end. */
  begins: boolean;
  ends: boolean;
}

/** What the corners of a closed outline may turn more or less than once round, in degrees. */
const ROUND_WITHIN = 1;

/** Whether a strip runs round corners and comes back to where it begins. */
export function isOutline({ fit, corners }: Pick<StripInput, 'fit' | 'corners'>): boolean {
  return fit === 'loop' && corners.length > 0;
}

/** Whether so many corners of an angle inside turn once round. */
export function turnsRound(corners: number, angle: number): boolean {
  return Math.abs(corners * (180 - angle) - 360) <= ROUND_WITHIN;
}

/**
 * Where a closed outline turns: the corner it starts in, at nothing or at the whole
 * length, is there once; not given, it is there when the others need it to come round.
 */
export function outlineCorners({
  length,
  corners,
  angle,
}: Pick<StripInput, 'length' | 'corners' | 'angle'>): number[] {
  const given: number[] = corners.filter((at) => at > 0 && at < length);
  const inStart = given.length < corners.length;
  const needed = !turnsRound(given.length, angle) && turnsRound(given.length + 1, angle);
  return inStart || needed ? [0, ...given] : given;
}

/** The sides between the corners; of a closed outline the last one leads back to the first corner. */
export function sidesOf(input: StripInput): Side[] {
  if (isOutline(input)) {
    const corners = outlineCorners(input);
    const round = input.length + (corners[0] ?? 0);
    return corners.map((from, i) => {
      const long = (corners[i + 1] ?? round) - from;
      return { from, long, begins: true, ends: true };
    });
  }
  const edges = [0, ...input.corners, input.length];
  const last = input.corners.length;
  return edges.slice(1).map((to, i) => {
    const from = edges[i] ?? 0;
    return { from, long: to - from, begins: i > 0, ends: i < last };
  });
}
