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
