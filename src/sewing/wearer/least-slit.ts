import { type ExactLength, exactLength } from '../../lengths/length.ts';

/** A level of a garment that is opened from an edge. */
export interface SlitLevel {
  /** From the open edge. */
  from: ExactLength;
  /** The garment round there, closed. */
  garment: ExactLength;
  /** What has to pass there. */
  needs: ExactLength;
}

/** The least slit, and what decides it; or that none is long enough. */
export type LeastSlit =
  | { slit: ExactLength; by: 'closed' | 'edges' | 'width' }
  /** Even where the garment is known last it is too narrow. */
  | { slit: undefined; by: 'never' };

/**
 * The least slit from an edge through which something passes. Below its end the garment is wide enough by
 * itself, G(y) ≥ N(y); at every level above that, both edges of the slit give way: G(y) + 2(s − y) ≥ N(y).
 * Between two levels girths go straight; where only the edge is known, that is all that is asked (derived
 * here).
 *
 * @param levels from the open edge on, at least one
 */
export function leastSlit(levels: readonly SlitLevel[]): LeastSlit {
  const short = levels.map(({ garment, needs }) => needs - garment);
  const last = short.at(-1) ?? 0;
  if (levels.length > 1 && last > 0) return { slit: undefined, by: 'never' };
  const edges = Math.max(
    0,
    ...levels.flatMap(({ from }, i) => ((short[i] ?? 0) > 0 ? [from + (short[i] ?? 0) / 2] : [])),
  );
  const width = Math.max(0, ...levels.map((_, i) => wideFrom(levels, short, i)));
  if (edges === 0) return { slit: exactLength(0), by: 'closed' };
  return { slit: exactLength(Math.max(edges, width)), by: width > edges ? 'width' : 'edges' };
}

/** Where the garment gets wide enough between a level and the next one; 0 where it doesn't there. */
function wideFrom(levels: readonly SlitLevel[], short: readonly number[], i: number): number {
  const [from, to] = [levels[i]?.from, levels[i + 1]?.from];
  const [here, next] = [short[i] ?? 0, short[i + 1] ?? 0];
  if (from === undefined || to === undefined || here <= 0 || next > 0) return 0;
  return from + ((to - from) * here) / (here - next);
}
