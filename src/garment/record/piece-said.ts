import { LONGEST } from '../../lengths/length.ts';
import { isObject } from './sound-values.ts';

/** A place of a piece: down along the grain from its top, and across from its left; in 1/8000 mm. */
export type PiecePlace = readonly [down: number, across: number];

/**
 * The shape of a piece as its maker entered it; of a piece on the fold the half, with the fold on its
 * left. `bows` says how far each side bows out from the straight way between its ends, below 0 in.
 */
export type PieceForm =
  | {
      /** Its sides are the left, the bottom, the right and the top, in this order. */
      kind: 'four';
      long: number;
      top: number;
      bottom: number;
      /** Both long sides slant alike, or the left one runs along the grain. */
      slant: 'both' | 'right';
      bows?: readonly number[];
    }
  /** Each side goes from the point of its number to the next. */
  | { kind: 'points'; points: readonly PiecePlace[]; bows?: readonly number[] };

/** An outline of a piece's own, in the place of the rectangle it is cut from. */
export interface PieceOutline {
  form: PieceForm;
  /**
   * What is cut outside of it: what its edges take in the garment, or so much all round. Where
   * nothing is said it is the line that is cut.
   */
  adds?: 'edges' | number;
}

/** What the maker says of laying the pieces of a need; all may be missing. */
export interface PieceSaid {
  outline?: PieceOutline;
  /** It may not be turned end for end, though the cloth lets it. */
  oneWay?: true;
  /** By so many degrees it may lie off the grain, either way. */
  tilt?: number;
  /** Left and right: every other one is the mirror image. */
  pair?: true;
  /** The place that must fall where the pattern of the cloth begins anew. */
  match?: PiecePlace;
}

/** With more the grain is lost. Common practice, no source. */
export const MOST_TILT = 5;
/** As many corners as a curve drawn by hand has; a file's are simplified to far fewer. */
export const MOST_PIECE_CORNERS = 200;
/** Wider than any hem. */
export const MOST_ADDED = 4_000_000;
/** One is typed after another: with fewer than three it is said that it is no outline yet. */
const LEAST_CORNERS = 1;

const isWhole = (read: unknown, least: number, most: number): read is number =>
  Number.isInteger(read) && (read as number) >= least && (read as number) <= most;
const isPlaced = (read: unknown) => isWhole(read, -LONGEST, LONGEST);
const isWide = (read: unknown) => isWhole(read, 0, LONGEST);

const isPlace = (read: unknown) => Array.isArray(read) && read.length === 2 && read.every(isPlaced);

const areBows = (read: unknown, most: number) =>
  read === undefined || (Array.isArray(read) && read.length <= most && read.every(isPlaced));

function isForm(read: unknown): boolean {
  if (!isObject(read)) return false;
  const { kind, long, top, bottom, slant, points, bows } = read;
  if (kind === 'four') {
    const sizes = isWide(long) && isWide(top) && isWide(bottom);
    return sizes && (slant === 'both' || slant === 'right') && areBows(bows, 4);
  }
  if (kind !== 'points' || !Array.isArray(points)) return false;
  const count = isWhole(points.length, LEAST_CORNERS, MOST_PIECE_CORNERS);
  return count && points.every(isPlace) && areBows(bows, points.length);
}

export function isOutline(read: unknown): boolean {
  if (!isObject(read) || !isForm(read.form)) return false;
  return read.adds === undefined || read.adds === 'edges' || isWhole(read.adds, 1, MOST_ADDED);
}

const CHECKS: Readonly<Record<keyof PieceSaid, (read: unknown) => boolean>> = {
  outline: isOutline,
  oneWay: (read) => read === true,
  tilt: (read) => isWhole(read, 1, MOST_TILT),
  pair: (read) => read === true,
  match: isPlace,
};

/** What can be worked with of what is said of a piece; what can't be read is as if it weren't said. */
export function pieceIn(read: unknown): PieceSaid {
  if (!isObject(read)) return {};
  const sound = Object.entries(CHECKS).filter(([key, is]) => is(read[key]));
  return Object.fromEntries(sound.map(([key]) => [key, read[key]]));
}

/** Whether all that is to be said can be kept. */
export const isPieceSaid = (said: object): boolean =>
  Object.entries(said).every(
    ([key, read]) =>
      read === undefined || (Object.hasOwn(CHECKS, key) && CHECKS[key as keyof PieceSaid](read)),
  );

/** The ends of the sides of a form, in turn. */
export function endsOf(form: PieceForm): readonly PiecePlace[] {
  if (form.kind === 'points') return form.points;
  const { long, top, bottom, slant } = form;
  const from = (wide: number) => (slant === 'both' ? (Math.max(top, bottom) - wide) / 2 : 0);
  return [
    [0, from(top)],
    [long, from(bottom)],
    [long, from(bottom) + bottom],
    [0, from(top) + top],
  ];
}

/**
 * No less cloth than a form takes: the area between its ends, less what its sides bow in. It is
 * for telling a length that can't be, and not for a lay.
 */
export function leastArea(form: PieceForm): number {
  const ends = endsOf(form);
  const next = (i: number) => ends[(i + 1) % ends.length] as PiecePlace;
  const twice = ends.reduce((sum, [x, y], i) => {
    const [u, v] = next(i);
    return sum + x * v - u * y;
  }, 0);
  const bowed = ends.reduce((sum, [x, y], i) => {
    const [u, v] = next(i);
    // A bow lies within the rectangle over its chord.
    return sum + Math.max(0, -(form.bows?.[i] ?? 0)) * Math.hypot(u - x, v - y);
  }, 0);
  return Math.max(0, Math.abs(twice) / 2 - bowed);
}

/** No less than it is long: as far as its ends lie apart along the grain. */
export function leastLong(form: PieceForm): number {
  const down = endsOf(form).map(([at]) => at);
  return Math.max(...down) - Math.min(...down);
}
