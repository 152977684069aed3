import type { Sheet } from '../graduations/sheet.ts';
import type { Component } from './components.ts';
import { MOST_DIGITS, THIN } from './limits.ts';

/** What is taken for one printed number: patches of ink beside each other on a sheet. */
export interface NumberCell {
  readonly components: readonly Component[];
  /** Its outermost pixels on the sheet. */
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
  /** Its left edge, right edge and middle along the tape, counted in graduations. */
  readonly left: number;
  readonly right: number;
  readonly middle: number;
  /** A digit was wiped with a graduation and could not be put back: not to be read. */
  readonly gap?: boolean;
}

/** Numbers of like height that stand in one row along the tape. */
export interface NumberRow {
  /** From left to right on the sheet. */
  readonly cells: readonly NumberCell[];
  /** Height of its digits in sheet pixels. */
  readonly height: number;
  /** Where the middle of its digits stands on the sheet, in pixels from its upper edge. */
  readonly middle: number;
  /** The numbers run across the tape, each turned by a quarter against the row. */
  readonly turned: boolean;
  /** How evenly the numbers stand, 1 being perfectly; given only for words found without a pattern. */
  readonly regularity?: number;
  /** Where the row runs beside the row of graduations, in graduations; negative above it. */
  readonly across: number;
}

/** Rows of numbers, and the sheet and ink they were found in. */
export interface NumberRows {
  readonly sheet: Sheet;
  /** For each pixel of the sheet the id of its patch of ink. */
  readonly labels: Int32Array;
  /** How bright the ground is around each pixel, in the sheet's own measure. */
  readonly ground: Float32Array;
  readonly rows: readonly NumberRow[];
}

/** A number as the character reader saw it. */
export interface NumberRead {
  readonly cell: NumberCell;
  readonly value: number;
  /** The digits as read, leading zeros and all. */
  readonly text: string;
  /** 0 to 100: the mean of what the engine gave the digits. */
  readonly confidence: number;
}

/** The box of patches of ink on a sheet: their common edges and where these are in graduations. */
export function cellOf(
  components: readonly Component[],
  { fromTick, perTick }: Pick<Sheet, 'fromTick' | 'perTick'>,
): NumberCell {
  const x0 = Math.min(...components.map((part) => part.x0));
  const x1 = Math.max(...components.map((part) => part.x1));
  const y0 = Math.min(...components.map((part) => part.y0));
  const y1 = Math.max(...components.map((part) => part.y1));
  const tickAt = (x: number) => fromTick + x / perTick;
  return {
    components,
    x0,
    x1,
    y0,
    y1,
    left: tickAt(x0),
    right: tickAt(x1),
    middle: fromTick + (x0 + x1) / 2 / perTick,
  };
}

/** Whether a row looks like numbers rather than what is left of its lines: strokes and nothing but strokes. */
export function looksLikeNumbers({ cells, height }: NumberRow): boolean {
  const numbers = cells.filter(
    ({ components }) =>
      components.length <= MOST_DIGITS && components.some(({ width }) => width > THIN * height),
  );
  return numbers.length >= 0.5 * cells.length;
}
