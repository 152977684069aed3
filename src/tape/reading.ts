/** A grey picture the right way up: 0 is black, 255 white, row after row. */
export interface GreyImage {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array;
}

/** A picture worked on: grey or log-grey samples, row after row; NaN where the picture ends. */
export interface Field {
  readonly width: number;
  readonly height: number;
  readonly values: Float32Array;
}

/** What a printed scale counts in. Tenths or sixteenths of an inch are subdivisions of 'inch'. */
export type TapeUnit = 'cm' | 'mm' | 'inch';

export const mmPerUnit: Readonly<Record<TapeUnit, number>> = { cm: 10, mm: 1, inch: 25.4 };

/** One character the engine saw on a page of cut-out numbers, in that page's pixels. */
export interface PageSymbol {
  readonly text: string;
  /** 0 to 100, as the engine gives it. */
  readonly confidence: number;
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** The character reader: a page of dark numbers on white goes in, what it saw comes back. */
export type ReadPage = (page: GreyImage) => Promise<readonly PageSymbol[]>;

/** A place in the upright picture, in its pixels; the middle of the first pixel is 0, 0. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A place set by a finger, and how far it may be from the line that was meant, in px (1 sigma). */
export interface Placed extends Point {
  readonly spread: number;
}

/** A printed number that was read, and where its middle stands. */
export interface ReadNumber extends Point {
  readonly value: number;
}

/** Why a picture gives no reading. */
export type CannotReason =
  | 'no-tape'
  | 'no-graduations'
  | 'no-numbers'
  | 'few-numbers'
  | 'numbers-disagree'
  | 'unit-unknown'
  | 'too-small'
  | 'too-blurred'
  | 'too-dark';

/** Why one place gives no reading though the picture does. */
export type PointReason =
  | 'off-the-scale'
  | 'beyond-the-numbers'
  | 'below-zero'
  | 'another-scale'
  | 'not-sure-yet'
  | 'lines-unclear'
  | 'nothing-read';

/** What the maker is asked before a scale counts as read. */
export type TapeQuestion =
  /** Is the line at this place the one with this value? */
  | (Point & {
      readonly kind: 'line';
      readonly scale: number;
      readonly value: number;
      readonly unit: TapeUnit;
    })
  /** What does the number at this place count? */
  | (Point & {
      readonly kind: 'unit';
      readonly scale: number;
      readonly value: number;
      readonly choices: readonly TapeUnit[];
    });

export type TapeOutcome = 'read' | 'ask' | 'cannot';
