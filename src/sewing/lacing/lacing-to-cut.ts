import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { type LacingKind, PUBLISHED } from './lacing-kinds.ts';

/** The way of a lace by geometry, and what it is along. */
export interface Way {
  kind: LacingKind;
  /** All of it, without the tails. */
  way: ExactLength;
  /** Through the first hole, which a factor for the edge leaves out. */
  through: Length;
  /** First to last hole. */
  edge: Length;
  /** Both tails. */
  tails: Length;
}

/** How much lace is cut, and what says so. */
export interface ToCut {
  /** By geometry, with the tails. */
  geometry: ExactLength;
  /** By geometry, for each length of edge, without the tails and the first hole. */
  factor: number;
  /** By the least and by the most that is published, with the tails; undefined where nothing is. */
  published: readonly [ExactLength, ExactLength] | undefined;
  /** All that is cut. */
  total: ExactLength;
  /**
   * What it is cut by: the least `published`, where `geometry` is less; else geometry,
   * that lies `within` what is published, over it, or `alone`.
   */
  by: 'published' | 'within' | 'geometry' | 'alone';
  /** How far geometry is off the nearer end of what is published, in parts of it: nothing within. */
  off: number | undefined;
}

/**
 * Lace that is cut too short is lost: the greater of geometry and the least published
 * factor is cut. Geometry takes the lace as drawn tight from place to place; a factor
 * knows neither pitch nor margin nor thickness. Sources: `sources/lacing.ts`.
 */
export function toCut({ kind, way, through, edge, tails }: Way): ToCut {
  const geometry = exactLength(way + tails);
  const factor = (way - through) / edge;
  const range = PUBLISHED[kind]?.value;
  if (!range) {
    return { geometry, factor, published: undefined, total: geometry, by: 'alone', off: undefined };
  }
  const [least, most] = range;
  const published = [least, most].map((times) => exactLength(times * edge + through + tails));
  const [shortest = geometry, longest = geometry] = published;
  const both = [shortest, longest] as const;
  if (geometry < shortest) {
    const off = (least - factor) / least;
    return { geometry, factor, published: both, total: shortest, by: 'published', off };
  }
  const over = geometry > longest;
  const off = over ? (factor - most) / most : 0;
  const by = over ? 'geometry' : 'within';
  return { geometry, factor, published: both, total: geometry, by, off };
}
