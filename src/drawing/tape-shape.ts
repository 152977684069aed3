/**
 * What a drawn strip of tape is made of. A role says what a shape stands for;
 * its colour and line style belong to whoever paints it, on a screen or on paper.
 */
export type TapeRole =
  | 'beyond' // past either edge of the cloth
  | 'marks'
  | 'mark-here'
  | 'cloth-edge'
  | 'ticks'
  | 'number'
  | 'head'
  | 'head-sewn'
  | 'head-here'
  | 'head-label'
  | 'head-label-here';

/** Lengths in px from the strip's upper left corner. */
export type TapeShape =
  /** `d` is an SVG path of straight lines. */
  | { shape: 'path'; role: TapeRole; d: string }
  /** Text centred on `x`, standing on `y`. */
  | { shape: 'text'; role: TapeRole; x: number; y: number; text: string }
  /** A round-ended box, centred on `x` and `y`; as wide as high, it is a circle. */
  | { shape: 'pill'; role: TapeRole; x: number; y: number; width: number; height: number };
