import { LONGEST } from '../../lengths/length.ts';
import { isOutline, type PieceOutline, type PieceSaid, pieceIn } from './piece-said.ts';
import type { Garment } from './record.ts';
import { isObject } from './sound-values.ts';

/**
 * What the maker says of laying the pieces on one cloth, and the lay that was found: beside what is
 * said of the material, under its id. All may be missing. Lengths are whole 1/8000 mm.
 */
export interface ClothLay {
  /** All pieces lie the same way: a pile, a print or a sheen has an up. */
  nap?: true;
  /** The least distance between two pieces. */
  gap?: number;
  /** Places that no piece may lie on. */
  flaws?: readonly Flaw[];
  /** How wide its pattern is until it comes again, across it. */
  repeatAcross?: number;
  /** By need (`Need.key`), what is said of laying its pieces: a `PieceSaid` as far as it can be read. */
  pieces?: Readonly<Record<string, unknown>>;
  /** Pieces the maker put where they are: they stay. */
  held?: readonly HeldPiece[];
  found?: FoundLay;
}

/** A rectangle of washed cloth laid open: from its cut end and its left selvedge on, and its size. */
export interface Flaw {
  along: number;
  across: number;
  long: number;
  wide: number;
}

/** The most flaws a cloth has: with more it is another cloth. */
export const MOST_FLAWS = 20;

/** Where a piece lies: the middle of its box, along the cloth and across it, and how it is turned. */
export interface PlacedPiece {
  id: string;
  /** In degrees. */
  turn: number;
  x: number;
  y: number;
}

/** A piece the maker put there. */
export interface HeldPiece extends PlacedPiece {
  /** The cloth was folded then; not said by what was kept before this was: it lay as the lay that was found. */
  folded?: boolean;
}

/** A lay that was found, with what it was found for. */
export interface FoundLay {
  length: number;
  laid: readonly PlacedPiece[];
  of: LaidOf;
}

/** What a lay is found for: with another of these it is another lay. */
export interface LaidOf {
  /** Usable and washed; still the whole of folded cloth. */
  width: number;
  folded: boolean;
  nap: boolean;
  gap: number;
  /** How long its pattern is until it comes again, where it does: open, each piece begins alike in it. */
  repeat?: number;
  /** Where there are some. */
  flaws?: readonly Flaw[];
  /** How wide it is until it comes again. */
  repeatAcross?: number;
  /** By id. */
  pieces: Readonly<Record<string, LaidSize>>;
}

/** A piece as it is cut; `across` is of the whole where it is on the fold. */
export interface LaidSize extends Omit<PieceSaid, 'outline'> {
  count: number;
  along: number;
  across: number;
  fold: boolean;
  /** In the place of the rectangle; what the garment's edges add is written out, side by side. */
  outline?: LaidOutline;
  /** The other of a pair. */
  mirrored?: true;
}

/** An outline with what is cut outside of each of its sides; nothing where that is the line that is cut. */
export interface LaidOutline extends Pick<PieceOutline, 'form'> {
  adds?: readonly number[];
}

/** The most pieces a lay holds: more are no garment. */
export const MOST_LAID = 500;
/** Lays lie within this, moved and turned by whom they may be. */
const FARTHEST = 2 * LONGEST;

const isWhole = (read: unknown, least: number, most: number) =>
  Number.isInteger(read) && (read as number) >= least && (read as number) <= most;
const isLength = (read: unknown) => isWhole(read, 1, LONGEST);
const isYes = (read: unknown) => typeof read === 'boolean';

function isPlaced(read: unknown): boolean {
  if (!isObject(read) || typeof read.id !== 'string') return false;
  const { turn, x, y } = read;
  return isWhole(turn, 0, 359) && [x, y].every((at) => isWhole(at, -FARTHEST, FARTHEST));
}

const arePlaced = (read: unknown) =>
  Array.isArray(read) && read.length <= MOST_LAID && read.every(isPlaced);

const areHeld = (read: unknown) =>
  arePlaced(read) &&
  (read as HeldPiece[]).every(({ folded }) => folded === undefined || isYes(folded));

function isFlaw(read: unknown): boolean {
  if (!isObject(read) || !isLength(read.long) || !isLength(read.wide)) return false;
  return [read.along, read.across].every((at) => isWhole(at, 0, LONGEST));
}

const areFlaws = (read: unknown) =>
  Array.isArray(read) && read.length <= MOST_FLAWS && read.every(isFlaw);

function isSize(read: unknown): boolean {
  if (!isObject(read) || !isYes(read.fold) || !isWhole(read.count, 1, MOST_LAID)) return false;
  const { along, across, outline, mirrored, count: _, fold: _fold, ...rest } = read;
  if (outline !== undefined && !isLaidOutline(outline)) return false;
  const said = PIECE_PARTS.every((key) => rest[key] === undefined || key in pieceIn(rest));
  return (
    said && (mirrored === undefined || mirrored === true) && isLength(along) && isLength(across)
  );
}

const PIECE_PARTS = [
  'oneWay',
  'tilt',
  'pair',
  'match',
] as const satisfies readonly (keyof PieceSaid)[];

function isLaidOutline(read: unknown): boolean {
  if (!isObject(read) || !isOutline({ form: read.form })) return false;
  const { adds } = read;
  return (
    adds === undefined || (Array.isArray(adds) && adds.every((wide) => isWhole(wide, 0, LONGEST)))
  );
}

function isLaidOf(read: unknown): boolean {
  if (!isObject(read) || !isLength(read.width) || !isWhole(read.gap, 0, LONGEST)) return false;
  const { folded, nap, flaws, repeat, repeatAcross, pieces } = read;
  if ([repeat, repeatAcross].some((each) => each !== undefined && !isLength(each))) return false;
  if (flaws !== undefined && !areFlaws(flaws)) return false;
  return isYes(folded) && isYes(nap) && isObject(pieces) && Object.values(pieces).every(isSize);
}

const isFound = (read: unknown) =>
  isObject(read) && isLength(read.length) && arePlaced(read.laid) && isLaidOf(read.of);

const CHECKS: Readonly<Record<keyof ClothLay, (read: unknown) => boolean>> = {
  nap: (read) => read === true,
  gap: (read) => isWhole(read, 1, LONGEST),
  flaws: areFlaws,
  repeatAcross: (read) => isWhole(read, 1, LONGEST),
  pieces: isObject,
  held: areHeld,
  found: isFound,
};

/**
 * What is said of laying a cloth, as far as it can be worked with: what can't be read of it stays in
 * the record, and is found or said again.
 */
export function layIn({ lays }: Pick<Garment, 'lays'>, id: string): ClothLay {
  const read = lays && Object.hasOwn(lays, id) ? lays[id] : undefined;
  if (!isObject(read)) return {};
  const sound = Object.entries(CHECKS).filter(([key, is]) => is(read[key]));
  return Object.fromEntries(sound.map(([key]) => [key, read[key]]));
}

/** What is said of laying the pieces of a need. */
export function saidOfPiece({ pieces }: Pick<ClothLay, 'pieces'>, need: string): PieceSaid {
  return pieceIn(pieces && Object.hasOwn(pieces, need) ? pieces[need] : undefined);
}

/** The piece a laid one is of: the engine's own mark of a mirror image is no part of its id. */
export function idOfLaid({ id }: Pick<PlacedPiece, 'id'>): string {
  return id.replace(/~$/, '');
}

/** Two places no further apart than this are one: a hundredth of a millimetre. */
const APART = 80;

/** What the maker put where it is, on the cloth folded or laid open: the places of the one are none of the other. */
export function heldOn({ held = [], found }: ClothLay, folded: boolean): readonly HeldPiece[] {
  const then = found?.of.folded ?? folded;
  return held.filter((one) => (one.folded ?? then) === folded);
}

/** All that is held, each with how the cloth lay. */
export function heldAsSaid({ held = [], found }: ClothLay): readonly HeldPiece[] {
  return held.map((one) => ({ ...(found && { folded: found.of.folded }), ...one }));
}

/** Whether a lay leaves all that is held where it is. */
export function keepsHeld({ laid }: FoundLay, held: readonly PlacedPiece[]): boolean {
  const left = [...laid];
  return held.every((one) => {
    const at = left.findIndex((other) => isSamePlace(one, other));
    if (at < 0) return false;
    left.splice(at, 1);
    return true;
  });
}

export function isSamePlace(one: PlacedPiece, other: PlacedPiece): boolean {
  const near = Math.hypot(one.x - other.x, one.y - other.y) <= APART;
  return one.id === other.id && one.turn === other.turn && near;
}
