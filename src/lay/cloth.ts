import { boxOf, mirrored, moved, type Outline, type Point, tidied } from './outline.ts';
import type { LayPiece, LayTask, Repeat } from './task.ts';

/** The cloth as the maker has it before her. Lengths in mm, shares from 0 to less than 1. */
export interface Cloth {
  /** Usable, less selvedges, above 0; of cloth that is folded, still the whole. */
  width: number;
  /** Folded along its length, right sides together. */
  folded: boolean;
  /** What it will lose, washed before it is cut: along the grain and across it. */
  shrinkAlong: number;
  shrinkAcross: number;
  /** Whether all pieces must lie the same way: a pile, a print or a sheen that has an up. */
  nap: boolean;
  /** Least distance between two pieces, 0 or more. */
  gap: number;
  /** How far the pattern repeats on the cloth as it is laid. */
  repeat?: Repeat;
  flaws?: readonly Outline[];
  /** What the shop sells by, above 0. */
  unit: number;
}

/** A piece as it is cut, allowances and all. Its grain lies along x. */
export interface CutPiece {
  id: string;
  /** Of a piece on the fold the half, with its fold edge at the lowest y. */
  outline: Outline;
  /** How many of it in all, 1 or more. */
  count: number;
  /** Left and right: every other one is its mirror image. */
  pair: boolean;
  onFold: boolean;
  /** Whether this one may lie end for end where the cloth lets it; it may unless said. */
  turns?: 'none' | 'end-for-end';
  /** By so many whole degrees it may lie off the grain, either way; never on the fold. */
  tilt?: number;
  /** A place of it that must fall on the start of a repeat. */
  match?: Point;
}

export type ClothProblem =
  /** Wider than the cloth, or than half of cloth that is folded; lengths in mm. */
  | { kind: 'wider-than-cloth'; id: string; width: number; room: number }
  | { kind: 'no-count'; id: string }
  | { kind: 'no-width' }
  /** On folded cloth there is no way to see that a pattern falls on the same place below. */
  | { kind: 'repeat-on-fold' }
  | { kind: 'too-many'; count: number; most: number };

export type ClothOutcome =
  | { ok: true; value: LayTask; wasted: readonly string[] }
  | { ok: false; problem: ClothProblem };

/** More pieces than this take longer to lay than anyone waits, and are no garment. */
export const MOST_PIECES = 500;

/** A mirror image's id is its piece's with this behind it. */
const MIRRORED = '~';

/** The piece that a laid one is of, and whether it is its mirror image. */
export function pieceOf(laidId: string): { id: string; isMirrored: boolean } {
  const isMirrored = laidId.endsWith(MIRRORED);
  return { id: isMirrored ? laidId.slice(0, -MIRRORED.length) : laidId, isMirrored };
}

/**
 * What is to be laid, on cloth that has been washed. Open: a piece on the fold is laid whole, and of
 * a pair half are mirror images. Folded: half the width; what lies on the fold once each, and all
 * else is cut in twos through both layers, so that an odd one wastes its twin (`wasted` names them).
 */
export function taskOf(pieces: readonly CutPiece[], cloth: Cloth): ClothOutcome {
  const problem = problemOfCloth(pieces, cloth);
  if (problem) return { ok: false, problem };
  const width = roomAcross(cloth);
  const laid = pieces.flatMap((piece) => (cloth.folded ? inTwos(piece) : opened(piece)));
  const all = laid.map(({ turn, tilt = 0, ...piece }): LayPiece => {
    const ends = turn !== 'none' && !cloth.nap ? [0, 180] : [0];
    const off = tilt > 0 ? [0, tilt, 360 - tilt] : [0];
    return { ...piece, turns: ends.flatMap((end) => off.map((by) => (end + by) % 360)) };
  });
  const wide = all.find(({ outline }) => across(outline) > width * (1 + 1e-9));
  if (wide) {
    const facts = { id: pieceOf(wide.id).id, width: across(wide.outline), room: width };
    return { ok: false, problem: { kind: 'wider-than-cloth', ...facts } };
  }
  const wasted = cloth.folded
    ? pieces.filter(({ onFold, count }) => !onFold && count % 2 === 1).map(({ id }) => id)
    : [];
  const { gap, repeat, flaws } = cloth;
  const task = { width, pieces: all, gap, ...(repeat && { repeat }), ...(flaws && { flaws }) };
  return { ok: true, value: task, wasted };
}

/** The width there is to lay on, once it is washed and as it is folded. */
const roomAcross = ({ width, folded, shrinkAcross }: Cloth): number =>
  (width * (1 - shrinkAcross)) / (folded ? 2 : 1);

/**
 * What to buy for a length that is laid: what shrinks to it, up to what the shop sells by.
 * Source: buying L/(1 − s) and not L(1 + s) follows from what shrinkage is (ISO 5077).
 */
export function toBuy(length: number, { shrinkAlong, unit }: Cloth): number {
  // A lay is known to a millionth of the width: that doesn't make a unit more.
  return Math.ceil((length / (1 - shrinkAlong) / unit) * (1 - 1e-6)) * unit;
}

function problemOfCloth(pieces: readonly CutPiece[], cloth: Cloth): ClothProblem | undefined {
  if (!(roomAcross(cloth) > 0)) return { kind: 'no-width' };
  const none = pieces.find(({ count }) => !(Number.isInteger(count) && count > 0));
  if (none) return { kind: 'no-count', id: none.id };
  const count = pieces.reduce((sum, piece) => sum + piece.count, 0);
  if (count > MOST_PIECES) return { kind: 'too-many', count, most: MOST_PIECES };
  const matched = pieces.some(({ match }) => match);
  return cloth.folded && matched && cloth.repeat ? { kind: 'repeat-on-fold' } : undefined;
}

type Turned = Omit<LayPiece, 'turns'> & { turn: CutPiece['turns']; tilt?: number | undefined };

function opened({ id, outline, count, pair, onFold, turns, tilt, match }: CutPiece): Turned[] {
  const whole = onFold ? unfolded(outline) : outline;
  const off = onFold ? 0 : tilt;
  const one = { id, outline: whole, turn: turns, tilt: off, ...(match && { match }) };
  // A piece on the fold is its own mirror image.
  const images = pair && !onFold ? Math.floor(count / 2) : 0;
  if (images === 0) return [{ ...one, count }];
  const image = {
    ...{ id: id + MIRRORED, outline: mirrored(outline), turn: turns, tilt, count: images },
    ...(match && { match: [match[0], -match[1]] as const }),
  };
  return [{ ...one, count: count - images }, image];
}

function inTwos({ id, outline, count, onFold, turns, tilt, match }: CutPiece): Turned[] {
  const one = { id, outline, turn: turns, ...(match && { match }) };
  if (onFold) return [{ ...one, count, onFold: true }];
  return [{ ...one, tilt, count: Math.ceil(count / 2) }];
}

/** A half that lies on the fold, opened: itself and its mirror image over its lowest edge. */
export function unfolded(half: Outline): Outline {
  const { y0, y1 } = boxOf(half);
  const onFold = moved(tidied(half), 0, -y0);
  const least = 1e-9 * (y1 - y0);
  // From where it leaves the fold round to where it comes back to it, then back mirrored.
  const leaves = onFold.findIndex(([, y], i) => {
    const [, next] = onFold[(i + 1) % onFold.length]!;
    return Math.abs(y) <= least && next > least;
  });
  const round = onFold.map((_, i) => onFold[(leaves + i) % onFold.length]!);
  const back = [...round].reverse().map(([x, y]): Point => [x, -y]);
  return tidied([...round, ...back]);
}

function across(outline: Outline): number {
  const { y0, y1 } = boxOf(outline);
  return y1 - y0;
}
