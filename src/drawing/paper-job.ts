import type { Figure, LineStyle, Point } from './figure.ts';

/** A row of marks on a strip, in mm from the datum. */
export interface PaperRow {
  /** From the upper edge of the strip. */
  across: number;
  marks: readonly { at: number; label: string }[];
}

/** What lies along one line on the work: a strip with its rows, or a bare run of marks. */
export interface PaperStrip {
  name: string;
  /** Where it is measured from, in words. */
  datum: string;
  length: number;
  /** Undefined for a bare run. */
  width: number | undefined;
  /** Diameter of the holes; undefined where marks are lines across. */
  hole: number | undefined;
  rows: readonly PaperRow[];
}

/** A bare run is drawn this wide, in mm: its marks are lines across. */
const BARE_WIDTH = 12;

/** How wide a strip or a bare run is drawn, in mm. */
export function widthOf({ width }: PaperStrip): number {
  return width ?? BARE_WIDTH;
}

/** A drawing in mm, put on paper as it is. */
export interface PaperDrawing {
  name: string;
  figure: Figure;
}

export interface PaperJob {
  /** What it is for: the garment, and the name it is kept under. */
  title: string;
  strips: readonly PaperStrip[];
  drawings: readonly PaperDrawing[];
}

export type PaperSize = 'a4' | 'letter';

/** Paper lying on its long side, in mm. A4: ISO 216; Letter: ANSI/ASME Y14.1, 8.5 × 11 in. */
export const PAPER: Readonly<Record<PaperSize, { width: number; height: number }>> = {
  a4: { width: 297, height: 210 },
  letter: { width: 279.4, height: 215.9 },
};

export interface PaperSetting {
  size: PaperSize;
  /** On all sides, in mm. */
  margin: number;
}

/** What is written on the pages. */
export interface PaperWords {
  actualSize: string;
  /** Of the two bars. */
  bars: readonly [string, string];
  pageOf(page: number, pages: number): string;
  /** @param strip whose stretch it is; from and to in mm */
  bandOf(strip: PaperStrip, from: number, to: number): string;
  tileOf(
    name: string,
    place: { column: number; columns: number; row: number; rows: number },
    turned: boolean,
  ): string;
  /** What part of a drawing a page shows. @param across and down, in mm as it lies on the page */
  partOf(across: Extent, down: Extent): string;
  /** Of the kinds of line, and of a hole that is to be made. */
  lines: Readonly<Record<LineStyle, string>>;
  punch: string;
  join(letter: string): string;
}

interface Extent {
  from: number;
  to: number;
}

export type PaperShape =
  | { kind: 'line'; from: Point; to: Point; weight: number }
  | { kind: 'circle'; at: Point; radius: number; weight: number }
  | { kind: 'path'; points: readonly Point[]; weight: number; dash: readonly number[] }
  /** `at` is where the lettering begins, on its foot line; `size` is the height of its capitals in mm. */
  | { kind: 'text'; at: Point; text: string; size: number; bold?: true };

/** One page, in mm from its upper left corner. */
export interface PaperPage {
  width: number;
  height: number;
  shapes: readonly PaperShape[];
}

/**
 * Why there are no pages.
 * - `nothing`: no marks and no drawing to put on paper.
 * - `too-long`: longer than is ever printed.
 * - `too-many`: more pages than anyone joins.
 * - `too-wide`: a strip wider than the room there is on a page.
 * - `no-room`: the margins leave too little of the paper.
 */
export type PaperProblem =
  | { kind: 'nothing' }
  | { kind: 'too-long'; length: number; most: number }
  | { kind: 'too-many'; pages: number; most: number }
  | { kind: 'too-wide'; width: number; most: number }
  | { kind: 'no-room'; most: number };

export type PaperOutcome = { ok: true; pages: PaperPage[] } | { ok: false; problem: PaperProblem };
