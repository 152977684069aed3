import type { GreyImage } from '../picture/grey-image.ts';

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
