import type { PageSymbol } from './characters/read-page.ts';
import type { GreyImage } from './picture/grey-image.ts';
import type { Point } from './picture/place.ts';
import type { TapeReading } from './scales/tape-reading.ts';
import type { Placed } from './touch/finger.ts';
import type { Touch, TouchFault } from './touch/touch.ts';

/*
 * What the page and the tape worker say to each other. Everything here survives
 * structured cloning.
 */

/** What touched graduations make: a scale, or why they make none. */
export type TouchedScale =
  | { readonly ok: true; readonly value: TapeReading }
  | { readonly ok: false; readonly reason: TouchFault };

/** One frame of the camera: what the tape held in it reads, or whether it was found and doubted. */
export type LiveReading =
  | { readonly held: true; readonly reading: TapeReading }
  | { readonly held: false; readonly asks: boolean };

/** What the worker is asked to do, each answered once under its own number. */
export type TapeJob =
  /** Read a photo, first where the maker points (`at`); it is also kept at hand for `snap` and `touch`. */
  | { readonly kind: 'read'; readonly image: GreyImage; readonly at?: Point }
  /** Keep a photo at hand that was read before, by a worker that is gone. */
  | { readonly kind: 'hold'; readonly image: GreyImage }
  | { readonly kind: 'frame'; readonly image: GreyImage }
  /** The graduation nearest to a place. */
  | { readonly kind: 'snap'; readonly at: Point }
  | { readonly kind: 'touch'; readonly touches: readonly Touch[] };

/** What each job gives. */
export interface TapeAnswers {
  read: TapeReading;
  hold: undefined;
  frame: LiveReading;
  snap: Placed;
  touch: TouchedScale;
}

export type ToTapeWorker =
  | { readonly kind: 'job'; readonly id: number; readonly job: TapeJob }
  /** What the engine saw on a page; undefined when it could not look. */
  | {
      readonly kind: 'symbols';
      readonly page: number;
      readonly symbols: readonly PageSymbol[] | undefined;
    };

export type FromTapeWorker =
  | { readonly kind: 'progress'; readonly id: number; readonly done: number }
  /** A page of cut-out numbers as a picture file, for the engine. */
  | { readonly kind: 'page'; readonly page: number; readonly bytes: Uint8Array }
  | { readonly kind: 'done'; readonly id: number; readonly answer: TapeAnswers[TapeJob['kind']] }
  | { readonly kind: 'failed'; readonly id: number; readonly message: string };
