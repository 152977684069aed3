import type { Outline } from '../../outline.ts';
import type { PieceProblem } from '../piece-problem.ts';

/**
 * Why a file gives no pieces, or not all of them, with its facts; its sentence is in the words.
 *
 * - `too-large`: more characters than are read.
 * - `damaged`: not what such a file is, from about this line on.
 * - `broken-off`: it ends before it says so; what it ends in the middle of isn't read.
 * - `hostile`: it names texts that stand for others, which a drawing needs none of.
 * - `too-deep`: parts within parts within parts, more than are followed.
 * - `no-units`: nothing in it says how long its units are; they are to be asked for.
 * - `other-units`: it says units that are no length, or that aren't known here.
 * - `too-many`: more shapes, or corners, than a lay can hold, more loose lines than are joined, or more parts of
 *   blocks than are followed.
 * - `nothing-closed`: not one closed outline; `open` lines there are that don't close.
 * - `no-number`: a number of the shape named is none, or is absurd.
 * - `unknown-curve`: the shape named is drawn by what can't be read here.
 * - `no-piece`: the outline named is none that can be laid.
 */
export type FileProblem =
  | { kind: 'too-large'; characters: number; most: number }
  | { kind: 'damaged'; line: number }
  | { kind: 'broken-off' }
  | { kind: 'hostile' }
  | { kind: 'too-deep'; most: number }
  | { kind: 'no-units' }
  | { kind: 'other-units'; said: string }
  | { kind: 'too-many'; what: 'shapes' | 'corners' | 'lines' | 'parts'; most: number }
  | { kind: 'nothing-closed'; open: number }
  | { kind: 'no-number'; name: string }
  | { kind: 'unknown-curve'; name: string; curve: string }
  | { kind: 'no-piece'; name: string; problem: PieceProblem };

/** A closed outline of a file, in mm, y upwards, with what it is called there. */
export interface FileShape {
  /** Its id or its layer; '' where it has none. */
  name: string;
  outline: Outline;
}

/** What a file gave: its outlines, and what of it couldn't be read. */
export type FileOutcome =
  | { ok: true; shapes: readonly FileShape[]; problems: readonly FileProblem[]; open: number }
  | { ok: false; problem: FileProblem };

export interface FileAsked {
  /** How long a unit of the file is, in mm, where it doesn't say so itself: asked of the maker. */
  unitMm?: number;
}

/** Read no more: a drawing of a garment's pieces is some hundred thousand characters. */
export const MOST_CHARACTERS = 20_000_000;
export const MOST_SHAPES = 300;
/** Lines that don't close by themselves, to be joined. */
export const MOST_LINES = 10_000;
/** Corners of all shapes of a file together. */
export const MOST_FILE_CORNERS = 60_000;

/** How far from a curve its corners may lie, in mm. */
export const CURVE_MM = 0.02;

/** What stops the reading of a whole file; caught where it began, and never let out. */
export class Unreadable extends Error {
  readonly problem: FileProblem;
  constructor(problem: FileProblem) {
    super(problem.kind);
    this.problem = problem;
  }
}
