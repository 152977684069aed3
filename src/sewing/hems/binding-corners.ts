import { exactLength, type Length, settled } from '../../lengths/length.ts';
import { joinTakes } from '../cloth/bias.ts';
import type { Mark, Run } from '../run.ts';
import { type BoundEdge, cornerTakes } from './binding-length.ts';

/** What of an edge says where its corners lie along the strip. */
type Cornered = Omit<BoundEdge, 'outLong' | 'outRadius' | 'inLong' | 'inRadius'> &
  Pick<BoundEdge, 'outLong' | 'inLong'>;

/**
 * Where along the strip the pleat of each corner's mitre begins: after the straight parts before it, the
 * pleats of the corners before it, and what the end takes. A ring begins in the middle of its first straight part,
 * where its join lies. Derived here.
 *
 * @returns undefined where that isn't known: no corners, curves between them, or not one between each two
 * straight parts (of a ring, after each)
 */
export function cornerPleats(edge: Cornered): Run | undefined {
  const { straight, outLong, inLong, corners, inside, join, endTurn } = edge;
  const ring = join !== undefined;
  const between = ring ? straight.length : straight.length - 1;
  if (corners.length === 0 || corners.length !== between) return undefined;
  if (inside <= 0 || outLong.length + inLong.length > 0) return undefined;
  const end = ring ? joinTakes(join) / 2 : endTurn;
  let at = end - (ring ? (straight[0] ?? 0) / 2 : 0);
  let taken = 0;
  const marks = corners.map((angle, i): Mark => {
    at += straight[i] ?? 0;
    const mark: Mark = {
      at: exactLength(at + taken),
      taken: exactLength(taken),
      label: String(i + 1),
      kind: 'fold',
    };
    taken += cornerTakes(angle, inside);
    return mark;
  });
  const long = straight.reduce((sum, one) => sum + one, 0) + taken + 2 * end;
  return { datum: 'cut-end', length: Math.ceil(settled(exactLength(long))) as Length, marks };
}
