import type { Dimensioned } from './dimension.ts';
import type { LineStyle, Point } from './figure.ts';
import type { PaperShape, PaperSize, PaperWords } from './paper-job.ts';

/** A row of marks as a strip, in mm from its datum. */
export interface SheetStrip {
  /** Where it is measured from, in words. */
  datum: string;
  length: number;
  marks: readonly { at: number; label: string; made: boolean; ticked: boolean }[];
}

/** A mark with its number, to tick. */
export interface SheetTick {
  label: string;
  text: string;
  made: boolean;
}

/** Names, each with its number. */
export type SheetPairs = readonly (readonly [name: string, number: string])[];

/** A work with its numbers: on its drawing, where it has one, and under it what isn't on that. */
export interface SheetWork {
  name: string;
  drawn?: Dimensioned | undefined;
  pairs: SheetPairs;
}

/** A material, to tick when it is there. */
export interface SheetMaterial {
  there: boolean;
  name: string;
  amount: string;
  notes: readonly string[];
}

/** What stands on the sheet of a garment, in words, in order. */
export type SheetBlock =
  | { kind: 'heading'; text: string }
  /** `loud`: to be read before anything is made. */
  | { kind: 'note'; text: string; loud: boolean }
  | { kind: 'pairs'; pairs: SheetPairs }
  | { kind: 'materials'; materials: readonly SheetMaterial[] }
  | {
      kind: 'step';
      made: boolean;
      number: string;
      what: string;
      /** What is to be minded there, and where its number is still to come. */
      under: readonly string[];
      strip?: SheetStrip;
      ticks?: readonly SheetTick[];
    }
  | { kind: 'works'; works: readonly SheetWork[] };

export interface SheetJob {
  title: string;
  /** Under the title: the day, how much is made. */
  under: readonly string[];
  blocks: readonly SheetBlock[];
}

export interface SheetSetting {
  size: PaperSize;
  /** On all sides, in mm. */
  margin: number;
  /** A row longer than the page is wide: to scale on one line, or at true size in parts. */
  long: 'scale' | 'true';
}

/** What is written on the pages besides. */
export interface SheetWords
  extends Pick<PaperWords, 'actualSize' | 'bars' | 'pageOf' | 'join' | 'punch'> {
  lines: Readonly<Record<LineStyle, string>>;
  /** Under a strip. @param part of a row in parts: which of how many */
  trueSize(datum: string, part: readonly [number, number] | undefined): string;
  /** @param times how much longer it is than its strip */
  toScale(datum: string, times: number): string;
  /** Marks too near to each other for all to be drawn. */
  someDrawn: string;
  notToScale(name: string): string;
}

/** A part of a sheet that isn't broken over pages. */
export interface Piece {
  /** In mm. */
  high: number;
  /** It stays on the page of what follows it; `rather`: where that takes no page more. */
  keep?: true | 'rather';
  /** It is as wide as one of two columns. */
  narrow?: true;
  /** It is at true size, so that the page needs bars to check it by. */
  trueSize?: true;
  shapesAt(corner: Point): PaperShape[];
}
