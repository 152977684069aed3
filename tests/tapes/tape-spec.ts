import type { InkSheet } from './ink-sheet.ts';
import type { ScaleSpec } from './scale-spec.ts';

/** How the tape lies on the bench. */
export interface Lay {
  /** Where the middle line of the tape is at `s = 0`, mm on the bench, and its direction there. */
  readonly x: number;
  readonly y: number;
  readonly angle: number;
  /** Bend in the plane of the bench, 1/mm, at a distance along the tape. */
  readonly bend?: (s: number) => number;
  /** Height of the middle line above the bench, mm. */
  readonly lift?: (s: number) => number;
  /** Height of the edges above the middle line, mm: a steel tape is hollow. */
  readonly hollow?: number;
  /** Turn about the tape's own length, radians. */
  readonly twist?: (s: number) => number;
}

/** What the tape is made of, as the camera sees it; grey 0 to 255. */
export interface Surface {
  readonly base: number;
  readonly ink: number;
  /** 1 hides what is below, 0 is clear. */
  readonly opacity: number;
  /** Share by which fine texture lightens and darkens it. */
  readonly grain: number;
  /** Texture drawn out along the tape, as on brushed steel. */
  readonly brushed: boolean;
  /** Grey added at a place on the tape: bands of glare, decades in another colour. */
  readonly sheen?: (s: number, across: number) => number;
  /** Share of the print rubbed off, in patches. */
  readonly worn: number;
  /** Darkness of the shadow at its edge. */
  readonly shadow: number;
}

export interface TapeSpec {
  readonly width: number;
  /** Its ends along its own length, mm. */
  readonly from: number;
  readonly to: number;
  readonly lay: Lay;
  readonly surface: Surface;
  readonly scales: readonly ScaleSpec[];
  /** Printed like scales, but no true ones: nothing may be read on them. */
  readonly unread?: readonly ScaleSpec[];
  /** Stretches covered by metal (a hook, an end piece) and how light it is. */
  readonly caps?: readonly { from: number; to: number; grey: number }[];
  /** Print besides the scales. */
  readonly decorate?: (sheet: InkSheet) => void;
}
