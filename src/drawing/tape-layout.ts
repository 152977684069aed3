import { type ExactLength, UNITS_PER_MM } from '../lengths/length.ts';
import type { BenchUnit } from '../lengths/unit.ts';

/** Which piece of the tape is drawn, how large and with what lettering. */
export interface TapeView {
  /** Where the left end of the strip is, from the datum; may be negative. */
  start: ExactLength;
  /** The scale, above 0. A px is whatever the painter takes it for. */
  pxPerMm: number;
  /** Size of the strip in px. */
  width: number;
  height: number;
  /** Height of the lettering in px. */
  labelSize: number;
  /** Nearest two neighbouring ticks may come, in px. */
  tickGap: number;
  /** The units of the numbers on the upper and the lower edge. */
  edges: readonly [BenchUnit, BenchUnit];
  decimalMark: ',' | '.';
}

/** A view with the sums every part of the drawing needs. */
export interface TapeLayout extends TapeView {
  /** The right end of the strip, in 1/8000 mm from the datum. */
  end: number;
  /** px in one 1/8000 mm. */
  scale: number;
  /** Length of the longest ticks, in px. */
  tick: number;
  /** Place across the strip, in px to a thousandth. */
  x: (at: number) => number;
}

/** Height of a mark's head, in label heights: the current one is the larger. */
export const HEAD = 1.45;
export const HEAD_HERE = 1.75;

/**
 * Works out the scale and how the strip's height is shared out: ticks and
 * numbers along both edges, the heads of the marks between them.
 * @throws RangeError when the scale is not above 0.
 */
export function tapeLayout(view: TapeView): TapeLayout {
  const { start, pxPerMm, width, height, labelSize } = view;
  if (!(pxPerMm > 0 && pxPerMm < Infinity)) {
    throw new RangeError(`a tape's scale is above 0 px per mm, not ${pxPerMm}`);
  }
  const scale = pxPerMm / UNITS_PER_MM;
  const left = (height - labelSize * (HEAD_HERE + 2.2)) / 2;
  return {
    ...view,
    scale,
    end: start + width / scale,
    tick: Math.max(labelSize / 2, Math.min(left, labelSize * 1.5)),
    x: (at) => px((at - start) * scale),
  };
}

/** A number of px to a thousandth, without the tail of a binary fraction. */
export function px(value: number): number {
  return Math.round(value * 1000) / 1000;
}

/**
 * Widest that `text` may come out, in px: 0.64 of the lettering's height to a
 * character, which the digits of common sans-serif faces keep within (measured).
 */
export function textWidth(text: string, labelSize: number): number {
  return text.length * labelSize * 0.64;
}
